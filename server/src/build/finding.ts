/** A finding: what doesn't fit, where, why and what to do. Points at places, never at lines; knows no editor. */
import type { Span } from '../text/span';
import type { Place } from './place';

/** Gravest first. */
export const severities = ['error', 'warning', 'information'] as const;
export type Severity = (typeof severities)[number];
export type Danger = 'fire' | 'burns' | 'blades' | 'radio';

export interface Related {
  readonly place: Place;
  readonly message: string;
}

export interface Edit {
  readonly file: string;
  readonly span: Span;
  readonly text: string;
}

export interface Fix {
  readonly title: string;
  readonly edits: readonly Edit[];
}

export interface Finding {
  /** Id of the check, the same for ever. */
  readonly check: string;
  readonly severity: Severity;
  readonly danger?: Danger;
  readonly message: string;
  readonly at: Place;
  readonly related: readonly Related[];
  readonly fixes: readonly Fix[];
  /** The reason somebody gave for keeping it. */
  readonly accepted?: string;
  /** Tells findings apart for one file whatever lines move: check, path and what sets one of several apart. */
  readonly fingerprint: string;
}

export const fingerprintOf = (check: string, at: Place, apart = ''): string =>
  [check, at.path, apart].filter(Boolean).join('@');

/** Smaller is graver. */
export const gravity = (severity: Severity): number => severities.indexOf(severity);

export const isAtLeast = (severity: Severity, threshold: Severity): boolean => gravity(severity) <= gravity(threshold);

/** Gravest first, then in the order of the file. */
export const bySeverity = (a: Finding, b: Finding): number =>
  gravity(a.severity) - gravity(b.severity) || a.at.span.start - b.at.span.start;
