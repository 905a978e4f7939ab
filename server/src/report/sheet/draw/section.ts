/** Sections of the sheet as markup, the same in the panel and on an exported page. Lays out blocks; words nothing but their frame. */
import type { Rows } from '../../table';
import type { Block, FindingRow, Section, SheetView, Slider, StepRow } from '../view/sheet-view';
import { linkedTo, pictureMarkup } from './picture';
import { drawn } from './pictures';
import { el, type Markup, together } from './svg';

export interface DrawnSection {
  readonly id: string;
  readonly markup: string;
}

/** Sections as they were drawn last, by what they were drawn from. */
export type Drawn = Map<string, { readonly from: string; readonly markup: string }>;

/**
 * @param linked things lead to their place in a file: in the panel, not on paper
 * @param before what is the same as there is not drawn again; brought up to date
 */
export function drawSections(sheet: SheetView, linked: boolean, before?: Drawn): readonly DrawnSection[] {
  return [
    { id: 'head', markup: headOf(sheet, linked).markup },
    ...sheet.sections.map((section) => {
      const from = before && JSON.stringify([section, sheet.tried]);
      const known = before?.get(section.id);
      if (known && known.from === from) return { id: section.id, markup: known.markup };
      const { markup } = sectionOf(section, sheet, linked);
      if (from !== undefined) before?.set(section.id, { from, markup });
      return { id: section.id, markup };
    }),
    {
      id: 'foot',
      markup: together(el('p', { class: 'q' }, sheet.checks, ' ', sheet.caution), el('p', { class: 'q' }, cautions))
        .markup,
    },
  ];
}

const cautions =
  'Packs burn, propellers cut, irons burn: propellers off at the bench, first power through a current limiter, radio power and flying by your local rules.';

function headOf(sheet: SheetView, linked: boolean): Markup {
  const { error, warning } = sheet.found;
  const count = (n: number, word: string): string => `${n} ${word}${n === 1 ? '' : 's'}`;
  const cell = (kind: string | undefined, key: string, ...kids: Parameters<typeof el>[2][]): Markup =>
    el('div', { class: kind }, el('span', { class: 'k' }, key), ...kids);
  return together(
    el(
      'div',
      { class: 'block' },
      cell('first', 'Build sheet', el('h1', {}, sheet.name)),
      cell(undefined, 'class', sheet.craft ?? 'not said'),
      cell(undefined, 'pack', sheet.pack ?? 'none'),
      el('div', { class: 'wide headline' }, sheet.headline || 'No figures yet.'),
      sheet.tried === undefined
        ? undefined
        : el('div', { class: 'wide' }, el('strong', {}, 'Tried, not written: '), sheet.tried),
      cell('first', 'file', sheet.file),
      cell(
        undefined,
        'found',
        el(
          'a',
          { href: '#wrong', class: error > 0 ? 'bad-text' : undefined },
          `${count(error, 'error')}, ${count(warning, 'warning')}`,
        ),
      ),
      cell(undefined, linked ? 'follows' : 'drawn', linked ? 'each edit' : (sheet.drawn ?? 'undated')),
    ),
  );
}

function sectionOf({ question, blocks }: Section, sheet: SheetView, linked: boolean): Markup {
  const grouped: Markup[] = [];
  let pictures: Markup[] = [];
  const flush = (): void => {
    if (pictures.length > 0) grouped.push(el('div', { class: 'pictures' }, ...pictures));
    pictures = [];
  };
  for (const block of blocks) {
    if (block.is === 'picture') {
      const figure = figureOf(block.picture, block.table, linked);
      if (figure) pictures.push(figure);
      continue;
    }
    flush();
    grouped.push(blockOf(block, question, sheet, linked));
  }
  flush();
  return together(el('h2', {}, question), ...grouped);
}

function figureOf(
  picture: Extract<Block, { is: 'picture' }>['picture'],
  table: Rows | undefined,
  linked: boolean,
): Markup | undefined {
  const shown = drawn(picture, linked);
  if (!shown) return undefined;
  return el(
    'figure',
    { class: shown.kind === 'plan' ? 'drawing' : undefined },
    el('figcaption', {}, shown.title),
    pictureMarkup(shown),
    table &&
      el(
        'details',
        { id: `${shown.id}-numbers` },
        el('summary', {}, 'The numbers behind it'),
        tableOf(table, shown.title),
      ),
  );
}

function blockOf(
  block: Exclude<Block, { is: 'picture' }>,
  question: string,
  sheet: SheetView,
  linked: boolean,
): Markup {
  switch (block.is) {
    case 'words':
      return block.lines.length === 1
        ? el('p', { class: kindClass(block.kind) }, spoken(block.lines[0]!))
        : el('ul', { class: kindClass(block.kind) }, ...block.lines.map((line) => el('li', {}, spoken(line))));
    case 'table':
      return together(el('h3', {}, block.caption), tableOf(block.rows, block.caption));
    case 'figures': {
      const tried = sheet.tried !== undefined && block.rows.some((row) => row.tried !== undefined);
      return together(
        block.caption === question ? undefined : el('h3', {}, block.caption),
        tableOf(
          {
            heads: ['figure', 'value', 'typically', ...(tried ? [`with ${sheet.tried}`] : []), 'from'],
            rows: block.rows.map((row) => [
              row.title,
              row.value,
              row.range,
              ...(tried ? [row.tried ?? ''] : []),
              row.basis,
            ]),
          },
          block.caption,
        ),
      );
    }
    case 'findings':
      return el('div', { class: 'findings' }, ...block.findings.map((finding) => findingOf(finding, linked)));
    case 'steps':
      return el('ol', { class: 'steps' }, ...block.steps.map(stepOf));
    case 'slider':
      return sliderOf(block.slider);
  }
}

const kindClass = (kind: 'plain' | 'caution' | 'good' | 'bad'): string | undefined =>
  ({ plain: undefined, caution: 'caution', good: 'good-text', bad: 'bad-text' })[kind];

/** What stands between backticks is code. */
const spoken = (text: string): Markup =>
  together(...text.split('`').map((piece, i) => (i % 2 === 1 ? el('code', {}, piece) : piece)));

const isNumber = (cell: string): boolean => /^[-−]?\d[\d.,]*(?: ?[A-Za-z%°/²·]+(?:\/[A-Za-z²]+)?)?$/.test(cell);

/** Columns of nothing but numbers are set to the right. */
function tableOf(table: Rows, caption: string): Markup {
  const { heads, rows } = withoutEmpty(table);
  const right = heads.map(
    (_, i) =>
      rows.length > 0 &&
      rows.every((row) => row[i] === undefined || row[i] === '' || row[i] === '-' || isNumber(row[i]!)),
  );
  const cell = (name: 'th' | 'td', text: string, i: number): Markup =>
    el(name, { class: right[i] ? 'n' : undefined, scope: name === 'th' ? 'col' : undefined }, text);
  return el(
    'div',
    // What scrolls must be reachable by key.
    { class: 'scroll', tabindex: 0, role: 'region', 'aria-label': caption },
    el(
      'table',
      {},
      el('thead', {}, el('tr', {}, ...heads.map((head, i) => (head === '' ? el('td', {}, '') : cell('th', head, i))))),
      el('tbody', {}, ...rows.map((row) => el('tr', {}, ...row.map((text, i) => cell('td', text, i))))),
    ),
  );
}

/** A column that says nothing takes room for nothing. */
function withoutEmpty({ heads, rows }: Rows): Rows {
  const kept = heads.map((_, i) => rows.some((row) => (row[i] ?? '') !== ''));
  const filtered = (cells: readonly string[]): readonly string[] => cells.filter((_, i) => kept[i]);
  return { heads: filtered(heads), rows: rows.map((row) => filtered(heads.map((_, i) => row[i] ?? ''))) };
}

function findingOf({ severity, danger, check, message, accepted, where, spot }: FindingRow, linked: boolean): Markup {
  return el(
    'div',
    { class: `finding ${severity}`, ...linkedTo(spot, undefined, linked) },
    el('span', { class: 'sev' }, danger ? `${severity}, danger: ${danger}` : severity),
    ` ${where}, `,
    el('span', { class: 'q' }, check),
    el('p', {}, spoken(message)),
    accepted === undefined ? undefined : el('p', { class: 'q' }, `Accepted: ${accepted}`),
  );
}

function stepOf({ title, todo, cautions: warned, gate }: StepRow): Markup {
  return el(
    'li',
    { class: 'step' },
    el('strong', {}, title),
    ...warned.map((line) => el('p', { class: 'caution' }, line)),
    el('ul', {}, ...todo.map((line) => el('li', {}, spoken(line)))),
    gate &&
      el(
        'p',
        { class: gate.passed ? 'good-text' : undefined },
        `${gate.passed ? '☑' : '☐'} Gate ${gate.name} (${gate.state}): ${gate.see}`,
      ),
  );
}

function sliderOf({ field, words, follows, least, most, step, value, own, unit }: Slider): Markup {
  const id = `try-${field}`;
  const shown = `${value}${unit ? ` ${unit}` : ''}`;
  const changed = value !== own;
  return el(
    'div',
    { class: 'try' },
    el(
      'label',
      { for: id },
      `What if: ${words} `,
      el('output', { for: id, id: `${id}-value` }, shown),
      ` (the file says ${own}${unit ? ` ${unit}` : ''})`,
    ),
    follows && el('p', { class: 'q' }, follows),
    el('input', {
      id,
      type: 'range',
      min: least,
      max: most,
      step,
      value,
      'data-try': field,
      'data-unit': unit,
      'aria-valuetext': shown,
    }),
    el(
      'div',
      {},
      el('button', { type: 'button', 'data-write': field, disabled: !changed }, 'Write it to the file'),
      ' ',
      el('button', { type: 'button', 'data-forget': field, disabled: !changed }, 'Back to the file'),
    ),
  );
}
