/** One picture of the sheet: an SVG with title and description, as part of a page or a file of its own. Knows nothing of what is drawn. */
import type { Spot } from '../view/spots';
import { el, type Markup, short } from './svg';

export interface Picture {
  readonly id: string;
  readonly title: string;
  readonly description: string;
  /** What kind of drawing it is, for its looks. */
  readonly kind: 'plan' | 'plot' | 'bars' | 'wires';
  /** Left, top, width, height in units of the drawing. */
  readonly box: readonly [number, number, number, number];
  /** Height of its letters. */
  readonly em: number;
  /** `mm` when a unit of the drawing is a millimetre of the craft. */
  readonly unit: 'mm' | 'px';
  /** Things in it can be clicked. */
  readonly linked: boolean;
  readonly body: readonly (Markup | undefined)[];
}

/** @param more attributes of the outermost element, such as its place on a larger sheet */
export function pictureMarkup(picture: Picture, more: Readonly<Record<string, string | number>> = {}): Markup {
  const { id, kind, title, description, box, em, unit, linked, body } = picture;
  return el(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      class: `picture ${kind}`,
      viewBox: box.map(short).join(' '),
      'font-size': em,
      // What can be clicked must stay reachable for a screen reader, so a picture with such things is a group.
      role: linked ? 'group' : 'img',
      'aria-labelledby': `${id}-title ${id}-description`,
      'data-unit': unit,
      ...more,
    },
    el('title', { id: `${id}-title` }, title),
    el('desc', { id: `${id}-description` }, description),
    ...body,
  );
}

/** Attributes of a thing that leads to a place in a file; none on paper. @param words where its own words don't tell it */
export const linkedTo = (
  spot: Spot | undefined,
  words: string | undefined,
  linked: boolean,
): Readonly<Record<string, string>> =>
  linked && spot !== undefined
    ? { 'data-spot': spot, role: 'button', tabindex: '0', ...(words === undefined ? {} : { 'aria-label': words }) }
    : {};
