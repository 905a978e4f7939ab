/**
 * What battery plugs carry: as their makers rate them and as the trade flies them. Sources: JST PH series, 2 A a contact (maker's
 * catalogue); XT60 30 A rated and 60 A instantaneous in one report of the maker's sheet, 60 A continuous and about 100 A
 * for half a minute in another; XT90 90 A and about 140 A; XT150 150 A and 250 A peak; the rest from memory and common practice.
 */
export interface PlugLimits {
  /** A by the maker, as reported */
  readonly rated: number;
  /** A that the trade flies all the time */
  readonly continuous: number;
  /** A for some seconds */
  readonly short: number;
  /** Ω of both contacts together, new and clean; from memory, worn ones have twice as much. */
  readonly contact: number;
  /** The next larger one. */
  readonly next: string;
}

const table: Readonly<Record<string, PlugLimits>> = {
  'PH2.0': { rated: 2, continuous: 5, short: 9, contact: 20e-3, next: 'a high-current 1S plug' },
  A30: { rated: 9, continuous: 15, short: 30, contact: 3e-3, next: 'XT30' },
  XT30: { rated: 15, continuous: 30, short: 45, contact: 1.4e-3, next: 'XT60' },
  XT60: { rated: 30, continuous: 60, short: 110, contact: 0.9e-3, next: 'XT90' },
  XT60H: { rated: 30, continuous: 60, short: 110, contact: 0.9e-3, next: 'XT90' },
  XT90: { rated: 45, continuous: 90, short: 150, contact: 0.6e-3, next: 'a 150 A plug' },
  'XT90-S': { rated: 45, continuous: 90, short: 150, contact: 0.6e-3, next: 'a 150 A plug' },
  XT150: { rated: 70, continuous: 150, short: 250, contact: 0.4e-3, next: 'two packs side by side' },
  AS150: { rated: 70, continuous: 150, short: 250, contact: 0.4e-3, next: 'two packs side by side' },
};

export const plugLimits = (plug: string | undefined): PlugLimits | undefined =>
  plug === undefined ? undefined : table[plug];

/** Plugs that mate though their names differ. */
const plain = (plug: string): string => plug.replace(/^XT60H$/, 'XT60').replace(/^XT90-S$/, 'XT90');

export const samePlug = (a: string, b: string): boolean => plain(a) === plain(b);
