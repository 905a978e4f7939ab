/** Which key turns which screw and which driver holds which nut. Tables of standards with their sources; sizes that no standard has are marked as trade habit. */
import type { Screw, ScrewHead } from '../text/notation/screw';

export interface KeySize {
  /** mm across flats */
  readonly size: number;
  /** From a standard, or what the trade sells. */
  readonly basis: 'standard' | 'trade';
}

const standard = (size: number): KeySize => ({ size, basis: 'standard' });
const trade = (size: number): KeySize => ({ size, basis: 'trade' });

/** Sockets by head and thread. cap: ISO 4762; button: ISO 7380-1, which starts at M3; countersunk: ISO 10642, which starts at M3; below that and pan heads: trade habit. */
const sockets: Readonly<Record<ScrewHead, Readonly<Record<string, KeySize>>>> = {
  cap: {
    '1.4': trade(1.3),
    '1.6': standard(1.5),
    '2': standard(1.5),
    '2.5': standard(2),
    '3': standard(2.5),
    '4': standard(3),
    '5': standard(4),
  },
  button: {
    '2': trade(1.3),
    '2.5': trade(1.5),
    '3': standard(2),
    '4': standard(2.5),
    '5': standard(3),
  },
  countersunk: {
    '2': trade(1.3),
    '2.5': trade(1.5),
    '3': standard(2),
    '4': standard(2.5),
    '5': standard(3),
  },
  pan: { '1.4': trade(0.9), '1.6': trade(0.9), '2': trade(1.3) },
};

/** Nothing for a screw of unknown head or size. */
export const keyFor = ({ thread, head }: Screw): KeySize | undefined =>
  head ? sockets[head][String(thread)] : undefined;

/** mm across flats. ISO 4032 plain nuts from M1.6; ISO 10511 thin nylon-insert nuts from M3, with the same widths. */
const nuts: Readonly<Record<string, number>> = { '1.6': 3.2, '2': 4, '2.5': 5, '3': 5.5, '4': 7, '5': 8 };

export const nutFor = (thread: number): number | undefined => nuts[String(thread)];
