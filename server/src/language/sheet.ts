/** The build sheet as an editor's panel needs it: drawn sections, and for each thing on them where it is written. Draws by what it is given. */
import type { Location, TextEdit } from 'vscode-languageserver-types';
import type { Analysis } from '../analysis';
import type { Craft } from '../build/craft';
import { kidOf, type Slot } from '../build/slot';
import { documentAt } from '../build/source-file';
import { mainPack } from '../report/card';
import type * as Draw from '../report/sheet/draw/index';
import { sheetOf } from '../report/sheet/view/make-view';
import type { SheetView } from '../report/sheet/view/sheet-view';
import { positionAt } from '../text/lines';
import { type Files, locationOf, rangeOf } from './protocol';
import { slidersOf, type Tries, trialEdit, trialOf } from './sheet-trial';

export interface SheetAsked {
  readonly pack?: string;
  readonly tries?: Tries;
  /** The line of the caret, which chooses among several builds of one file. */
  readonly line?: number;
  /** Serial of the answer that the asker has. */
  readonly since?: number;
}

export interface Lines {
  readonly uri: string;
  readonly from: number;
  readonly to: number;
}

export interface WholeSheet {
  readonly name: string;
  readonly sections: readonly { readonly id: string; readonly markup: string }[];
  readonly spots: Readonly<Record<string, { readonly go: Location; readonly lit: readonly Lines[] }>>;
}

/** What differs from an earlier answer. */
export interface SheetAnswer {
  /** To name this answer in the next question. */
  readonly serial: number;
  readonly name: string;
  /** All sections in order. */
  readonly ids: readonly string[];
  readonly changed: WholeSheet['sections'];
  /** Nothing when all places are where they were. */
  readonly spots: WholeSheet['spots'] | undefined;
}

export interface Answered {
  readonly serial: number;
  readonly markups: ReadonlyMap<string, string>;
  readonly spots: string;
}

/** The answer to somebody who has an earlier one, and what to remember of it. */
export function sheetSince(
  { name, sections, spots }: WholeSheet,
  serial: number,
  before: Answered | undefined,
): { readonly answer: SheetAnswer; readonly answered: Answered } {
  const places = JSON.stringify(spots);
  return {
    answer: {
      serial,
      name,
      ids: sections.map(({ id }) => id),
      changed: sections.filter(({ id, markup }) => before?.markups.get(id) !== markup),
      spots: places === before?.spots ? undefined : spots,
    },
    answered: { serial, markups: new Map(sections.map(({ id, markup }) => [id, markup])), spots: places },
  };
}

/** What is drawn, before it is drawn; two steps, so that a newer question can come between them. */
export function sheetView(
  analysis: Analysis,
  asked: SheetAsked,
  today: string,
): { view: SheetView; craft: Craft } | undefined {
  const craft = craftAt(analysis, asked.line);
  if (!craft) return undefined;
  const pack = craft.packs.find(({ name }) => name === asked.pack) ?? mainPack(craft);
  const tries = asked.tries ?? {};
  const view = sheetOf(craft, analysis, {
    pack: pack?.name,
    today,
    trial: pack && trialOf(craft, pack, tries),
    sliders: pack && slidersOf(craft, pack, tries),
  });
  return { view, craft };
}

export function wholeSheet(
  { view, craft }: { view: SheetView; craft: Craft },
  analysis: Analysis,
  files: Files,
  draw: Pick<typeof Draw, 'drawSections'>,
  before?: Draw.Drawn,
): WholeSheet {
  const blockOf = blocksOf(analysis, craft);
  const spots = [...view.places].map(([key, { go, part }]) => {
    const location = locationOf(files, go);
    const block = part === undefined ? undefined : blockOf(part);
    const own: Lines = { uri: location.uri, from: location.range.start.line, to: location.range.end.line };
    return [
      key,
      { go: location, lit: block ? [own, { ...block, uri: files.spelled(analysis.file.uri) }] : [own] },
    ] as const;
  });
  return { name: view.name, sections: draw.drawSections(view, true, before), spots: Object.fromEntries(spots) };
}

/** The edit that writes a value that was tried. */
export function sheetEdit(
  analysis: Analysis,
  files: Files,
  asked: SheetAsked,
  field: string,
  value: number,
): { readonly uri: string; readonly edit: TextEdit } | undefined {
  const craft = craftAt(analysis, asked.line);
  const pack = craft && (craft.packs.find(({ name }) => name === asked.pack) ?? mainPack(craft));
  const edit = craft && pack && trialEdit(analysis.file, craft, pack, field, value);
  return (
    edit && { uri: files.spelled(edit.file), edit: { range: rangeOf(analysis.file, edit.span), newText: edit.text } }
  );
}

/** The build around a line, else the first. */
function craftAt({ crafts, file }: Analysis, line: number | undefined): Craft | undefined {
  const lineOf = (craft: Craft): number => positionAt(file.lines, craft.where.span.start).line;
  return line === undefined
    ? crafts[0]
    : ([...crafts].reverse().find((craft) => lineOf(craft) <= line + 1) ?? crafts[0]);
}

/** Lines of a part of the build, from its key to its last word. */
function blocksOf({ file }: Analysis, craft: Craft): (part: string) => Omit<Lines, 'uri'> | undefined {
  const document = documentAt(file, craft.where.span.start);
  return (part) => {
    let slot: Slot | undefined = document?.slot;
    for (const key of part.split('.')) slot = kidOf(slot, key);
    if (!slot?.keySpan || slot.node.via) return undefined;
    const end = file.text.slice(0, slot.node.span.end).trimEnd().length;
    return { from: positionAt(file.lines, slot.keySpan.start).line, to: positionAt(file.lines, end).line };
  };
}
