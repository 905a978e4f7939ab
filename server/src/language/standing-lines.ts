/** Where the values at a place lie among the reference craft of their class, as lines of Markdown. Compares nothing itself. */
import type { Craft } from '../build/craft';
import { type Pointable, shownAt } from '../build/fact';
import type { Slot } from '../build/slot';
import { standings } from '../plan/consensus-craft';
import { standingLine } from '../report/consensus-report';
import type { Span } from '../text/span';

const touches = (craft: Craft, at: Pointable, { start, end }: Span): boolean => {
  const { file, span } = shownAt(at);
  return file === craft.file && span.start < end && start < span.end;
};

/** For one value that the build itself says. */
export const valueStandings = (craft: Craft, { node }: Slot): readonly string[] =>
  standings(craft)
    .filter(({ at }) => at.through === undefined && touches(craft, at, node.span))
    .map(standingLine);

/** For a part with all its values, those of the library included, each under its name. */
export const partStandings = (craft: Craft, { node }: Slot): readonly string[] =>
  standings(craft)
    .filter(({ at }) => touches(craft, at, node.span))
    .map((standing) => `- ${inSentence(standing.of.title)}: ${standingLine(standing)}`);

const inSentence = (title: string): string =>
  /^[A-Z][a-z]/.test(title) ? title[0]!.toLowerCase() + title.slice(1) : title;
