/** What a plot shows: curves with their ranges, marks, limits, and the table behind it. Data in the units it is read in; draws nothing. */
import type { Rows } from '../../table';
import type { Spot } from './spots';

export interface PlotView {
  readonly id: string;
  readonly title: string;
  readonly description: string;
  readonly across: Axis;
  readonly up: Axis;
  readonly series: readonly Series[];
  readonly marks: readonly Mark[];
  readonly limits: readonly { readonly y: number; readonly words: string }[];
  readonly table: Rows;
}

export interface Axis {
  readonly words: string;
  readonly unit: string;
  /** Starts at nothing, whatever the values. */
  readonly fromZero: boolean;
}

export interface Series {
  readonly words: string;
  readonly points: readonly PlotPoint[];
  /** What a value that is tried would give. */
  readonly trial: boolean;
}

export interface PlotPoint {
  readonly x: number;
  readonly y: number;
  /** Ends of the typical range, where it was worked out. */
  readonly low?: number;
  readonly high?: number;
}

/** A line up at a place, with dots where figures of the card lie. */
export interface Mark {
  readonly x: number;
  readonly dots: readonly number[];
  readonly words: string;
  readonly trial: boolean;
  readonly spot: Spot | undefined;
}
