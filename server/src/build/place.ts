/** Where something is written: a file, the value's span and its key's. Made for findings to point at; positions are counted elsewhere. */
import type { Span } from '../text/span';

export interface Place {
  /** The file's URI, as the workspace spells it. */
  readonly file: string;
  /** What to underline for the thing itself: a value, or the key when there is no value to show. */
  readonly span: Span;
  readonly key?: Span;
  /** Dotted path in its file, as in `parts.motors.kv`; for fingerprints and words, not for looking things up. */
  readonly path: string;
}

export const isSamePlace = (a: Place, b: Place): boolean =>
  a.span.start === b.span.start &&
  a.span.end === b.span.end &&
  a.key?.start === b.key?.start &&
  a.key?.end === b.key?.end &&
  a.path === b.path &&
  a.file === b.file;
