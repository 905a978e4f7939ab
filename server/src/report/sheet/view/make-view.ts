/** Makes the sheet of one craft with one pack: asks the card, the plans and the checks, and puts their answers under a builder's questions. */
import type { Analysis } from '../../../analysis';
import type { Craft, Pack } from '../../../build/craft';
import type { Variation } from '../../../plan/vary';
import { worked } from '../../../plan/worked';
import { positionAt } from '../../../text/lines';
import { money } from '../../../text/notation/money';
import { assemblyReport } from '../../assembly-report';
import { type Card, type CardGroup, cardOf, mainPack } from '../../card';
import type { LevelTable } from '../../card-levels';
import { basisWords, checksLine } from '../../card-text';
import { figureText, rangeText, valueText } from '../../figure-text';
import { moveLines, pairRows } from '../../harness-report';
import { portRows, railRows } from '../../ports-table';
import type { Rows } from '../../table';
import { fitView } from './fit-view';
import { asItIs, asTried, type Flown } from './flown';
import { flyPlots } from './fly-view';
import { massBars, massRows } from './mass-view';
import type { PlotView } from './plot-view';
import { railBars } from './power-view';
import type { Block, FindingRow, Section, SectionId, SheetView, Slider, StepRow } from './sheet-view';
import { collectSpots, type Spots } from './spots';
import { timePlots } from './time-view';
import { harnessView, portView } from './wires-view';

export interface SheetAsked {
  /** Name of the pack; the build's own choice when not said. */
  readonly pack?: string;
  readonly today?: string;
  /** The craft with a value that is tried. */
  readonly trial?: Variation;
  readonly sliders?: readonly (Slider & { readonly section: SectionId })[];
}

export function sheetOf(craft: Craft, analysis: Analysis, asked: SheetAsked = {}): SheetView {
  const pack = craft.packs.find(({ name }) => name === asked.pack) ?? mainPack(craft);
  const spots = collectSpots(craft.file);
  const trial = asked.trial && asTried(asked.trial);
  const card = cardOf(craft, analysis, pack?.name);
  // The card of the pack that was asked for comes first.
  const base = asItIs(craft, pack, card.packs[0]!);
  const sheet: Sheet = { craft, pack, analysis, card, base, trial, spots };
  const sections = makers.flatMap(([id, question, make]): Section[] => {
    const own = make(sheet);
    const sliders = own.length === 0 ? [] : (asked.sliders ?? []).filter(({ section }) => section === id);
    const blocks = [...sliders.map((slider): Block => ({ is: 'slider', slider })), ...own];
    return blocks.length > 0 ? [{ id, question, blocks }] : [];
  });
  const count = (severity: string): number =>
    analysis.findings.filter((finding) => finding.severity === severity).length;
  return {
    name: card.name,
    craft: card.craft,
    pack: pack?.name,
    headline: base.card.headline,
    found: { error: count('error'), warning: count('warning'), information: count('information') },
    checks: checksLine(card),
    flown: card.flown,
    caution: card.caution,
    drawn: asked.today,
    file: craft.file.split('/').at(-1) ?? '',
    tried: asked.trial?.label,
    sections,
    places: spots.places,
  };
}

interface Sheet {
  readonly craft: Craft;
  readonly pack: Pack | undefined;
  readonly analysis: Analysis;
  readonly card: Card;
  readonly base: Flown;
  readonly trial: Flown | undefined;
  readonly spots: Spots;
}

const makers: readonly (readonly [id: SectionId, question: string, make: (sheet: Sheet) => readonly Block[]])[] = [
  ['fit', 'Does it fit?', fit],
  ['mass', 'What does it weigh?', mass],
  ['fly', 'How does it fly?', fly],
  ['time', 'How long does it fly?', time],
  ['power', 'What feeds what?', power],
  ['wires', 'Which wire goes where?', wires],
  ['wrong', 'What is wrong?', wrong],
  ['work', 'What comes next?', work],
];

const words = (lines: readonly string[], kind: 'plain' | 'caution' | 'good' | 'bad' = 'plain'): readonly Block[] =>
  lines.length > 0 ? [{ is: 'words', lines, kind }] : [];

function fit({ craft, pack, analysis, spots }: Sheet): readonly Block[] {
  const view = fitView(craft, pack, analysis, spots);
  const gaps: Rows = {
    heads: ['between', 'axes', 'tips'],
    rows: view.gaps.map(({ a, b, axes, gap }) => [
      `${view.motors[a]!.where} and ${view.motors[b]!.where}`,
      `${axes.toFixed(1)} mm`,
      gap < 0 ? `overlap ${(-gap).toFixed(1)} mm` : `${gap.toFixed(1)} mm apart`,
    ]),
  };
  const drawn = view.motors.length + view.boxes.length > 0;
  const boards = view.patterns.length + view.boxes.length > 1;
  const said = view.clashes.map(
    ({ title, message }, i) => `${String.fromCharCode(65 + (i % 26))} ${title}: ${message}`,
  );
  return [
    ...(drawn
      ? [{ is: 'picture', picture: { draw: 'plan', view }, table: gaps.rows.length > 0 ? gaps : undefined } as const]
      : []),
    ...(boards ? [{ is: 'picture', picture: { draw: 'stack', view }, table: boardRows(view) } as const] : []),
    ...words(view.wanting),
    ...(said.length > 0 ? words(said, 'bad') : drawn ? words(['Nothing that was compared clashes.'], 'good') : []),
  ];
}

const boardRows = ({ patterns, boxes }: ReturnType<typeof fitView>): Rows => ({
  heads: ['thing', 'along', 'across'],
  rows: [
    ...boxes.flatMap(({ words: name, length, width }) =>
      length === undefined || width === undefined ? [] : [[name, `${length.toFixed(1)} mm`, `${width.toFixed(1)} mm`]],
    ),
    ...patterns.map(({ words: name, length, width }) => [name, `${length.toFixed(1)} mm`, `${width.toFixed(1)} mm`]),
  ],
});

function mass({ craft, pack, base, trial, spots }: Sheet): readonly Block[] {
  const view = massBars(craft, pack, base.card.parts, spots);
  if (view.length === 0) return [];
  return [
    { is: 'picture', picture: { draw: 'mass', view }, table: massRows(base.card.parts) },
    ...groupBlocks(base, trial, ['What does it weigh?']),
  ];
}

const plots = (views: readonly PlotView[]): readonly Block[] =>
  views.map((view): Block => ({ is: 'picture', picture: { draw: 'plot', view }, table: view.table }));

function fly({ card, base, trial, spots }: Sheet): readonly Block[] {
  const levels = base.card.levels;
  const own = groupBlocks(base, trial, ['Does it lift?', 'How far does it reach?', 'How sure is this?']);
  if (own.length === 0) return [];
  return [
    ...plots(flyPlots(base, trial, spots)),
    ...own,
    ...(levels ? [{ is: 'table', caption: levels.question, rows: levelRows(levels) } as const] : []),
    ...words([card.flown]),
  ];
}

const levelRows = ({ columns, rows }: LevelTable): Rows => ({
  heads: ['', ...columns],
  rows: rows.map(({ title, cells }) => [title, ...cells.map((figure) => (figure ? valueText(figure) : '-'))]),
});

function time({ base, trial, spots }: Sheet): readonly Block[] {
  return [...plots(timePlots(base, trial, spots)), ...groupBlocks(base, trial, ['How long does it fly?'])];
}

function power({ craft, base, trial, spots }: Sheet): readonly Block[] {
  const rails = worked(craft, undefined, 'worked.rails')?.value;
  const hot = groupBlocks(base, trial, ['Does anything run hot?']);
  if (!rails)
    return craft.roles['flight-controller']
      ? [
          ...words(['Write the `regulators` of the flight controller to see what each rail feeds and what is left.']),
          ...hot,
        ]
      : hot;
  const view = railBars(craft, rails, spots);
  return [
    ...(view.length > 0 ? [{ is: 'picture', picture: { draw: 'rails', view }, table: railRows(rails) } as const] : []),
    ...words(
      rails.onBattery.map(
        ({ device, watts }) => `On the battery itself: ${device.replaceAll('-', ' ')}, ${watts.toFixed(1)} W.`,
      ),
    ),
    ...words(
      rails.lost.map(({ device, said }) => `No rail gives ${said.text} for the ${device.replaceAll('-', ' ')}.`),
      'bad',
    ),
    ...hot,
  ];
}

function wires({ craft, spots }: Sheet): readonly Block[] {
  const plan = worked(craft, undefined, 'worked.ports')?.value;
  const harness = worked(craft, undefined, 'worked.harness')?.value;
  const blocks: Block[] = [];
  if (plan)
    blocks.push({
      is: 'picture',
      picture: { draw: 'ports', view: portView(craft, plan, spots) },
      table: portRows(plan),
    });
  if (harness) {
    const view = harnessView(craft, harness, spots);
    const { report } = view;
    blocks.push({ is: 'picture', picture: { draw: 'harness', view }, table: pairRows(report) });
    blocks.push(...words([report.verdict, ...moveLines(report)], report.danger === 0 ? 'good' : 'bad'));
  } else if (craft.boards === 'all-in-one')
    blocks.push(...words(['ESC and flight controller are one board: there is no cable between them.']));
  else if (craft.roles.esc && craft.roles['flight-controller'])
    blocks.push(
      ...words([
        'Write the `pins` of both sockets, of the ESC and of the flight controller, to see the cable between them wire by wire.',
      ]),
    );
  return blocks;
}

function wrong({ analysis, spots }: Sheet): readonly Block[] {
  const rows = analysis.findings.map((finding): FindingRow => {
    const { file, span, path } = finding.at;
    const here = file === analysis.file.uri;
    const [first, second] = path.split('.');
    return {
      severity: finding.severity,
      danger: finding.danger,
      check: finding.check,
      message: finding.message,
      accepted: finding.accepted,
      where: here ? `line ${positionAt(analysis.file.lines, span.start).line + 1}` : (file.split('/').at(-1) ?? ''),
      spot: spots.place(
        finding.at,
        (first === 'parts' || first === 'packs') && second ? `${first}.${second}` : undefined,
      ),
    };
  });
  return rows.length > 0 ? [{ is: 'findings', findings: rows }] : words(['Nothing was found.'], 'good');
}

function work({ craft, analysis }: Sheet): readonly Block[] {
  const report = assemblyReport(craft);
  const states = new Map(report.gates.map((gate) => [gate.gate, gate]));
  const steps = report.steps.map((step): StepRow => {
    const state = step.gate && states.get(step.gate.name);
    return {
      title: step.title,
      todo: step.todo,
      cautions: step.cautions,
      gate: step.gate && {
        name: step.gate.name,
        state:
          state === undefined || state.is === 'open'
            ? 'open'
            : `${state.is === 'void' ? 'void, changed since' : 'passed'} ${state.date ?? ''}`.trim(),
        passed: state?.is === 'passed' || state?.is === 'unbound',
        see: step.gate.see.join(' '),
      },
    };
  });
  const toBuy = [...report.tools, ...report.consumables].filter(({ owned }) => owned === false).map(({ name }) => name);
  return [
    ...orderBlocks(craft, analysis),
    ...words([
      `${report.jointCount} joints, about ${(report.minutes / 60).toFixed(1)} h at the bench; a first build takes twice that.`,
      ...(toBuy.length > 0 ? [`Not on the bench yet: ${toBuy.join(', ')}.`] : []),
    ]),
    { is: 'steps', steps },
  ];
}

/** What can be said of the order without a search; the proved one is a command of its own. */
function orderBlocks(craft: Craft, analysis: Analysis): readonly Block[] {
  const order = worked(craft, undefined, 'worked.order')?.value;
  if (!order || order.order.lines.length === 0) return [];
  const { currency } = order.order;
  const name = analysis.file.uri.split('/').at(-1);
  const proved = `\`dryfit order ${name}\` proves the cheapest split over the shops.`;
  const priced = order.said?.priced;
  if (!priced) return words([`Its goods cannot be had below ${money(order.least, currency)}. ${proved}`]);
  const shops = order.order.problem.shops;
  return [
    {
      is: 'table',
      caption: 'The order as the build says it',
      rows: {
        heads: ['parcel', 'goods', 'weighs'],
        rows: [
          ...priced.parcels.map((parcel) => [
            `${shops[parcel.shop]!.id}${parcel.batteries ? ', packs' : ''}`,
            money(parcel.goods, currency),
            `${(parcel.mass / 10).toFixed(0)} g`,
          ]),
          ['shipping', money(priced.shipping, currency), ''],
          ...(priced.taxes > 0 ? [['duty and tax', money(priced.taxes, currency), '']] : []),
          ['in all', money(priced.total, currency), ''],
        ],
      },
    },
    ...words([proved]),
  ];
}

/** Groups of the card as tables, with the remarks below; in a trial with a column more. */
function groupBlocks(base: Flown, trial: Flown | undefined, questions: readonly string[]): readonly Block[] {
  return base.card.groups
    .filter(({ question }) => questions.includes(question))
    .flatMap((group): Block[] => {
      const tried = trial?.card.groups.find(({ question }) => question === group.question);
      return [
        ...(group.figures.length > 0
          ? [{ is: 'figures', caption: group.question, rows: figureRows(group, tried) } as const]
          : []),
        ...words(group.remarks),
      ];
    });
}

const figureRows = (group: CardGroup, tried: CardGroup | undefined) =>
  group.figures.map((figure) => {
    const other = tried?.figures.find(({ name }) => name === figure.name);
    return {
      title: figure.title,
      value: valueText(figure),
      range: rangeText(figure),
      basis: basisWords[figure.basis],
      tried: tried && (other ? figureText(other) : 'cannot be'),
    };
  });
