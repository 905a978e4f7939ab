/** What an order is made of, in whole cents of one currency and tenths of a gram. Holds data; reads no file and solves nothing. */

/** What a shop takes for sending, and what comes on top of it at the border. */
export interface OrderShop {
  readonly id: string;
  /** Cents for each parcel, whatever its weight. */
  readonly flat: number;
  /** By weight, lightest first; a last one without limit reaches any weight. */
  readonly tiers: readonly { readonly upTo: number | undefined; readonly cost: number }[];
  readonly perPiece: number;
  /** Cents for each different part. */
  readonly perLine: number;
  /** Goods value from which the parcels cost nothing. */
  readonly freeOver: number | undefined;
  /** Least goods value it takes an order for. */
  readonly minimum: number;
  readonly sendsBatteries: boolean;
  readonly batteriesApart: boolean;
  /** Cents more for a parcel with packs; never waived. */
  readonly batterySurcharge: number;
  readonly border: Border;
}

export interface Border {
  /** Hundredths of a percent of the goods. */
  readonly duty: number;
  /** Hundredths of a percent of goods, shipping and duty. */
  readonly tax: number;
  /** Cents for each parcel. */
  readonly handling: number;
  /** Cents for each different part. */
  readonly perLine: number;
}

export interface OrderLine {
  readonly part: string;
  /** Pieces to buy; at least 1. */
  readonly need: number;
  /** Tenths of a gram of one piece. */
  readonly mass: number;
  readonly battery: boolean;
  /** All pieces come from one shop. */
  readonly whole: boolean;
}

export interface OrderOffer {
  /** Index of the line and of the shop. */
  readonly line: number;
  readonly shop: number;
  /** Pieces in one pack. */
  readonly pack: number;
  /** Cents for one pack. */
  readonly price: number;
  /** Packs in stock; unknown counts as enough. */
  readonly stock: number | undefined;
}

export interface OrderProblem {
  readonly lines: readonly OrderLine[];
  readonly shops: readonly OrderShop[];
  readonly offers: readonly OrderOffer[];
  readonly shopsAtMost?: number;
}

/** So many packs of one offer. */
export interface Purchase {
  /** Index of the offer. */
  readonly offer: number;
  readonly packs: number;
}

/** Packs of an offer that cover a need by themselves. */
export const packsFor = (need: number, offer: Pick<OrderOffer, 'pack'>): number => Math.ceil(need / offer.pack);
