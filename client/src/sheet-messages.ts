/** What the extension and the sheet's panel say to each other, and the answer of the server in between. Types, and one question about places. */
interface Position {
  readonly line: number;
  readonly character: number;
}

export interface SpotPlace {
  readonly go: { readonly uri: string; readonly range: { readonly start: Position; readonly end: Position } };
  readonly lit: readonly { readonly uri: string; readonly from: number; readonly to: number }[];
}

/** What differs from the answer that was named in the question. */
export interface Answer {
  readonly serial: number;
  readonly name: string;
  readonly ids: readonly string[];
  readonly changed: readonly Section[];
  /** Nothing when they are the same. */
  readonly spots?: Spots;
}

export type Spots = Readonly<Record<string, SpotPlace>>;

export interface Section {
  readonly id: string;
  readonly markup: string;
}

export type ToPanel =
  /** All sections by their ids, in order, and the markup of those that differ from what was sent last. */
  | {
      readonly is: 'sheet';
      readonly uri: string;
      readonly ids: readonly string[];
      readonly changed: readonly Section[];
    }
  | { readonly is: 'lit'; readonly spots: readonly string[] }
  | { readonly is: 'nothing'; readonly words: string };

/** What the panel keeps for a window that is loaded again. */
export interface Kept {
  readonly uri: string;
}

export type FromPanel =
  | { readonly is: 'ready' }
  | { readonly is: 'drawn'; readonly sections: readonly string[] }
  | { readonly is: 'go'; readonly spot: string }
  | { readonly is: 'try'; readonly field: string; readonly value: number }
  | { readonly is: 'write' | 'forget'; readonly field: string };

export const isAt = ({ lit }: SpotPlace, uri: string, line: number): boolean =>
  lit.some((lines) => lines.uri === uri && line >= lines.from && line <= lines.to);
