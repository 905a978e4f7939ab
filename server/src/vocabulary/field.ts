/** The shape of the field tables that are made from schemas/: what a field holds and what is said about it. Holds no field itself. */
import type { Notation } from '../text/notation';
import type { Dimension } from '../text/units';

export interface About {
  readonly description: string;
  readonly examples?: readonly string[];
  /** Least and most that the trade uses; outside is unusual, not wrong. */
  readonly usual?: readonly [string, string] | readonly string[];
  readonly source?: string;
}

export interface Term {
  readonly term: string;
  readonly explained: string;
}

export interface MapField {
  readonly is: 'map';
  readonly about: About;
  readonly required: readonly string[];
  readonly fields: Readonly<Record<string, Field>>;
}

/** A map whose keys are names the builder chooses, or one of a few. */
export interface TableField {
  readonly is: 'table';
  readonly about: About;
  readonly keyExample: string;
  readonly keys?: readonly string[];
  readonly keyPattern?: string;
  readonly of: Field;
}

export interface ListField {
  readonly is: 'list';
  readonly about: About;
  /** May be written as one text with commas. */
  readonly commaList: boolean;
  readonly of: Field;
}

/** A map whose `kind` decides its fields. */
export interface KindField {
  readonly is: 'by-kind';
  readonly about: About;
  readonly kinds: Readonly<Record<string, MapField>>;
}

export interface QuantityField {
  readonly is: 'quantity';
  readonly about: About;
  readonly dimension: Dimension;
}

export interface NotationField {
  readonly is: 'notation';
  readonly about: About;
  readonly notation: Notation;
}

export interface TermField {
  readonly is: 'term';
  readonly about: About;
  readonly terms: readonly Term[];
}

export interface TextField {
  readonly is: 'text';
  readonly about: About;
  /** Free words that must be the same at both ends, such as the family of a radio link. */
  readonly family?: string;
  readonly reference?: string;
}

export type LeafField = QuantityField | NotationField | TermField | TextField;
export type Field = MapField | TableField | ListField | KindField | LeafField;

export const isLeaf = (field: Field): field is LeafField =>
  field.is === 'quantity' || field.is === 'notation' || field.is === 'term' || field.is === 'text';

/** `thread-depth` as it is spoken: thread depth. */
export const spoken = (key: string): string => key.replaceAll('-', ' ');
