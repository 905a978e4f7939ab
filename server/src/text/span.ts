/** A stretch of a file's text, in UTF-16 offsets; knows nothing of lines, files or meaning. */
export interface Span {
  readonly start: number;
  readonly end: number;
}

export const span = (start: number, end: number): Span => ({ start, end });

export const covers = (outer: Span, offset: number): boolean => outer.start <= offset && offset <= outer.end;
