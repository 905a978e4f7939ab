/** The sheet as data: sections by what a builder asks, each a row of blocks. Everything on it is worked out elsewhere; nothing is drawn here. */
import type { Severity } from '../../../build/finding';
import type { Rows } from '../../table';
import type { FitView } from './fit-view';
import type { MassBar } from './mass-view';
import type { PlotView } from './plot-view';
import type { RailBar } from './power-view';
import type { Spot, SpotPlace } from './spots';
import type { HarnessView, PortView } from './wires-view';

export interface SheetView {
  readonly name: string;
  readonly craft: string | undefined;
  readonly pack: string | undefined;
  readonly headline: string;
  /** How many findings of each severity. */
  readonly found: Readonly<Record<Severity, number>>;
  readonly checks: string;
  readonly flown: string;
  readonly caution: string;
  /** YYYY-MM-DD, given by whoever has a clock. */
  readonly drawn: string | undefined;
  readonly file: string;
  /** What is tried instead of what the file says. */
  readonly tried: string | undefined;
  readonly sections: readonly Section[];
  readonly places: ReadonlyMap<Spot, SpotPlace>;
}

export interface Section {
  readonly id: SectionId;
  readonly question: string;
  readonly blocks: readonly Block[];
}

export const sectionIds = ['fit', 'mass', 'fly', 'time', 'power', 'wires', 'wrong', 'work'] as const;
export type SectionId = (typeof sectionIds)[number];

export type Block =
  | { readonly is: 'picture'; readonly picture: PictureView; readonly table: Rows | undefined }
  | { readonly is: 'figures'; readonly caption: string; readonly rows: readonly FigureRow[] }
  | { readonly is: 'table'; readonly caption: string; readonly rows: Rows }
  | { readonly is: 'words'; readonly lines: readonly string[]; readonly kind: 'plain' | 'caution' | 'good' | 'bad' }
  | { readonly is: 'findings'; readonly findings: readonly FindingRow[] }
  | { readonly is: 'steps'; readonly steps: readonly StepRow[] }
  | { readonly is: 'slider'; readonly slider: Slider };

export type PictureView =
  | { readonly draw: 'plan' | 'stack'; readonly view: FitView }
  | { readonly draw: 'plot'; readonly view: PlotView }
  | { readonly draw: 'mass'; readonly view: readonly MassBar[] }
  | { readonly draw: 'rails'; readonly view: readonly RailBar[] }
  | { readonly draw: 'ports'; readonly view: PortView }
  | { readonly draw: 'harness'; readonly view: HarnessView };

export interface FigureRow {
  readonly title: string;
  readonly value: string;
  readonly range: string;
  readonly basis: string;
  /** The same with the value that is tried. */
  readonly tried: string | undefined;
}

export interface FindingRow {
  readonly severity: Severity;
  readonly danger: string | undefined;
  readonly check: string;
  readonly message: string;
  readonly accepted: string | undefined;
  /** `line 12`, or the name of another file. */
  readonly where: string;
  readonly spot: Spot | undefined;
}

export interface StepRow {
  readonly title: string;
  readonly todo: readonly string[];
  readonly cautions: readonly string[];
  readonly gate:
    | { readonly name: string; readonly state: string; readonly passed: boolean; readonly see: string }
    | undefined;
}

/** A value that can be tried without writing it. */
export interface Slider {
  /** As in `packs.main.capacity`. */
  readonly field: string;
  readonly words: string;
  /** What else changes with it while it is tried. */
  readonly follows?: string | undefined;
  readonly least: number;
  readonly most: number;
  readonly step: number;
  /** Where the slider stands, and what the file says, in the unit that the builder wrote. */
  readonly value: number;
  readonly own: number;
  readonly unit: string;
}
