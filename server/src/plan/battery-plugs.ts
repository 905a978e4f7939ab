/** What battery plugs carry: as their makers rate them and as the trade flies them. Common practice where makers differ. */
export interface PlugLimits {
  /** A by the maker, as reported */
  readonly rated: number;
  /** A that the trade flies all the time */
  readonly continuous: number;
  /** A for some seconds */
  readonly short: number;
  /** The next larger one. */
  readonly next: string;
}

const table: Readonly<Record<string, PlugLimits>> = {
  'PH2.0': { rated: 4, continuous: 5, short: 9, next: 'a high-current 1S plug' },
  A30: { rated: 9, continuous: 15, short: 30, next: 'XT30' },
  XT30: { rated: 15, continuous: 30, short: 45, next: 'XT60' },
  XT60: { rated: 30, continuous: 60, short: 110, next: 'XT90' },
  XT60H: { rated: 30, continuous: 60, short: 110, next: 'XT90' },
  XT90: { rated: 45, continuous: 90, short: 150, next: 'a 150 A plug' },
  'XT90-S': { rated: 45, continuous: 90, short: 150, next: 'a 150 A plug' },
  XT150: { rated: 70, continuous: 150, short: 250, next: 'two packs side by side' },
  AS150: { rated: 70, continuous: 150, short: 250, next: 'two packs side by side' },
};

export const plugLimits = (plug: string | undefined): PlugLimits | undefined =>
  plug === undefined ? undefined : table[plug];

/** Plugs that mate though their names differ. */
const plain = (plug: string): string => plug.replace(/^XT60H$/, 'XT60').replace(/^XT90-S$/, 'XT90');

export const samePlug = (a: string, b: string): boolean => plain(a) === plain(b);
