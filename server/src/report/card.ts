/** The card of a craft: its figures grouped by what a builder asks, each with its range and what it rests on. Data only; faces lay it out. */
import type { Analysis } from '../analysis';
import type { Craft, Pack } from '../build/craft';
import type { CraftFigures, FlightFigures, Impossible, PointFigures } from '../physics';
import { cellVoltage } from '../plan/cell-voltage';
import { habitOf } from '../plan/class-habits';
import { mixOf } from '../plan/flight-input';
import { type Weight, weightOf } from '../plan/weight';
import { figuresFor, inputFor } from '../plan/worked';
import { measurementWords, noticeWords, whyNot } from './figure-words';

export interface CardFigure {
  /** Stable name, the key in JSON. */
  readonly name: string;
  readonly title: string;
  readonly value: number;
  readonly low: number;
  readonly high: number;
  /** SI or accepted beside SI, as named in JSON. */
  readonly unit: 'kg' | 'N' | 'A' | 'V' | 'W' | 's' | '1' | 'm/s' | '1/s' | 'N/W' | 'N/m²' | 'A·h' | 'W·h';
  readonly basis: 'measured' | 'calibrated' | 'modelled' | 'said' | 'estimate';
}

export interface CardGroup {
  readonly question: string;
  readonly figures: readonly CardFigure[];
  readonly remarks: readonly string[];
}

export interface PackCard {
  readonly pack: string;
  readonly groups: readonly CardGroup[];
}

export interface Card {
  readonly name: string;
  readonly craft: string | undefined;
  readonly packs: readonly PackCard[];
  readonly checks: { readonly ran: number; readonly found: number; readonly notChecked: number };
  /** How the flight was assumed to be flown, in words. */
  readonly flown: string;
  readonly caution: string;
}

export function cardOf(craft: Craft, analysis: Analysis): Card {
  const packs: readonly (Pack | undefined)[] = craft.packs.length > 0 ? chosenFirst(craft) : [undefined];
  const found = new Set(analysis.findings.map((finding) => finding.check)).size;
  return {
    name: craft.said.name?.value ?? 'Unnamed craft',
    craft: craft.said.craft?.value,
    packs: packs.map((pack) => packCard(craft, pack)),
    checks: { ran: analysis.ran.length, found, notChecked: analysis.notChecked.length },
    flown: flownWords(craft),
    caution:
      'Figures are predictions with typical ranges. Check them with care, propellers off, before you trust a craft in the air.',
  };
}

function chosenFirst(craft: Craft): readonly Pack[] {
  const chosen = craft.said.flight?.pack?.value;
  return [...craft.packs].sort((a, b) => Number(b.name === chosen) - Number(a.name === chosen));
}

/** The pack that the figures are for when only one can be shown. */
export const mainPack = (craft: Craft): Pack | undefined => chosenFirst(craft)[0];

function packCard(craft: Craft, pack: Pack | undefined): PackCard {
  const weight = weightOf(craft, pack);
  const input = pack && inputFor(craft, pack);
  const figures = pack && figuresFor(craft, pack);
  const wanting =
    input && !input.ok
      ? [`For these figures, add ${input.missing.map((path) => `\`${path}\``).join(', ')}.`]
      : pack
        ? []
        : ['For these figures, add a pack under `packs:`.'];
  return {
    pack: pack?.name ?? '',
    groups: [
      liftGroup(figures, wanting),
      timeGroup(craft, pack, figures, wanting),
      heatGroup(figures),
      weightGroup(weight),
      sureGroup(figures),
    ].filter((group) => group.figures.length > 0 || group.remarks.length > 0),
  };
}

function liftGroup(figures: CraftFigures | undefined, wanting: readonly string[]): CardGroup {
  const rows: CardFigure[] = [];
  const remarks: string[] = [...wanting];
  if (figures) {
    const { full, fullSagged, hover } = figures;
    if (full.ok) rows.push(point(full.value, 'thrustToWeight', 'thrust-to-weight', 'thrust to weight, full pack'));
    else remarks.push(whyNot(full));
    if (fullSagged.ok)
      rows.push(
        point(fullSagged.value, 'thrustToWeight', 'thrust-to-weight-at-landing', 'thrust to weight, end of the pack'),
      );
    if (full.ok) rows.push(point(full.value, 'thrust', 'full-thrust', 'thrust of all motors'));
    if (hover.ok) rows.push(point(hover.value, 'throttle', 'hover-throttle', 'throttle while hovering'));
    else if (!same(hover, full)) remarks.push(whyNot(hover));
  }
  return { question: 'Does it lift?', figures: rows, remarks };
}

const same = (a: { ok: boolean }, b: { ok: boolean }): boolean =>
  !a.ok && !b.ok && (a as Impossible).why === (b as Impossible).why;

function timeGroup(
  craft: Craft,
  pack: Pack | undefined,
  figures: CraftFigures | undefined,
  wanting: readonly string[],
): CardGroup {
  const rows: CardFigure[] = [];
  const remarks: string[] = [];
  if (figures && pack && wanting.length === 0) {
    const { asFlown, hovering, hover } = figures;
    if (asFlown.ok) rows.push(flight(asFlown.value, 'minutes', 'time-as-flown', 'as you fly it', 60, 's'));
    if (hovering.ok) rows.push(flight(hovering.value, 'minutes', 'time-hovering', 'hovering', 60, 's'));
    if (hover.ok) rows.push(point(hover.value, 'packCurrent', 'hover-current', 'current while hovering'));
    if (asFlown.ok) {
      rows.push(flight(asFlown.value, 'meanCurrent', 'mean-current', 'mean current as you fly it', 1, 'A'));
      rows.push(flight(asFlown.value, 'usedMah', 'charge-used', 'used from the pack', 1e-3, 'A·h'));
      rows.push(
        flight(asFlown.value, 'landingCellVoltage', 'landing-cell-voltage', 'a cell under load at landing', 1, 'V'),
      );
      const landing = pack.facts['landing-voltage'];
      const chemistry = pack.facts.chemistry?.value ?? 'LiPo';
      remarks.push(
        `Lands at ${(landing?.value ?? cellVoltage(chemistry).landing).toFixed(2)} V a cell under load (${landing ? 'as its maker says' : `usual for ${chemistry}`}) or with the reserve left, whichever comes first.`,
      );
    } else if (hovering.ok) remarks.push(whyNot(asFlown));
  }
  return { question: 'How long does it fly?', figures: rows, remarks: craft.packs.length === 0 ? [] : remarks };
}

function heatGroup(figures: CraftFigures | undefined): CardGroup {
  const rows: CardFigure[] = [];
  if (figures?.full.ok) {
    rows.push(point(figures.full.value, 'escCurrent', 'full-current-each', 'one ESC channel at full throttle'));
    rows.push(point(figures.full.value, 'packCurrent', 'full-current', 'whole craft at full throttle'));
    rows.push(point(figures.full.value, 'cellVoltage', 'full-cell-voltage', 'a cell under that load'));
    rows.push(point(figures.full.value, 'tipMach', 'tip-mach', 'propeller tips, share of the speed of sound'));
  }
  return { question: 'Does anything run hot?', figures: rows, remarks: [] };
}

function weightGroup(weight: Weight): CardGroup {
  const basis = weight.weighed
    ? 'measured'
    : weight.rows.every((row) => row.basis !== 'estimate' || row.fact === undefined)
      ? 'said'
      : 'estimate';
  const rows: CardFigure[] = [
    {
      name: 'weight-ready',
      title: weight.packRow ? 'ready to fly' : 'without a pack',
      ...weight.ready,
      unit: 'kg',
      basis,
    },
    {
      name: 'weight-dry',
      title: 'without the pack',
      ...weight.dry,
      unit: 'kg',
      basis: basis === 'measured' ? 'said' : basis,
    },
  ];
  const guessed = weight.rows.filter(
    (row) => row.basis === 'estimate' && row.fact === undefined && !row.part.includes(' '),
  );
  const heavy = [...weight.rows, ...(weight.packRow ? [weight.packRow] : [])]
    .sort((a, b) => b.mass.value - a.mass.value)
    .slice(0, 4);
  const total = weight.rows.reduce((sum, row) => sum + row.mass.value, weight.packRow?.mass.value ?? 0);
  const remarks =
    total > 0
      ? [
          `Heaviest: ${heavy.map((row) => `${row.part.replaceAll('-', ' ')} ${Math.round((row.mass.value / total) * 100)} %`).join(', ')}.`,
        ]
      : [];
  if (guessed.length > 0)
    remarks.push(
      `Usual weight taken for ${guessed.map((row) => row.part.replaceAll('-', ' ')).join(', ')}; weigh ${guessed.length === 1 ? 'it' : 'them'}.`,
    );
  return { question: 'What does it weigh?', figures: total > 0 ? rows : [], remarks };
}

function sureGroup(figures: CraftFigures | undefined): CardGroup {
  if (!figures) return { question: 'How sure is this?', figures: [], remarks: [] };
  const remarks: string[] = [];
  const time = figures.narrows.flightTime.map((one) => measurementWords(one.measure));
  const thrust = figures.narrows.thrust.map((one) => measurementWords(one.measure));
  if (time.length > 0) remarks.push(`Flight time gets surer if you ${time.join(' and ')}.`);
  if (thrust.length > 0) remarks.push(`Thrust gets surer if you ${thrust.join(' and ')}.`);
  remarks.push(...new Set(figures.notices.map(noticeWords)));
  return { question: 'How sure is this?', figures: [], remarks };
}

function flownWords(craft: Craft): string {
  const flight = craft.said.flight;
  const mix = mixOf(craft);
  const share = (value: number): string => `${Math.round(value * 100)} %`;
  const said = flight?.hover || flight?.cruise || flight?.punch;
  const from = said
    ? 'as the file says'
    : craft.said.craft && habitOf(craft.said.craft.value)
      ? `usual for ${craft.said.craft.value}`
      : 'a usual mix';
  return `Flown ${share(mix.hover)} hovering, ${share(mix.cruise)} cruising at ${mix.cruiseThrust} x weight, ${share(mix.punch)} at ${share(mix.punchThrust)} of full thrust, ${share(mix.reserve)} left in the pack (${from}).`;
}

const pointUnits: Readonly<Partial<Record<keyof PointFigures, CardFigure['unit']>>> = {
  thrustToWeight: '1',
  throttle: '1',
  thrust: 'N',
  packCurrent: 'A',
  escCurrent: 'A',
  motorCurrent: 'A',
  cellVoltage: 'V',
  tipMach: '1',
};

function point(values: PointFigures, key: keyof PointFigures, name: string, title: string): CardFigure {
  const figure = values[key];
  return {
    name,
    title,
    value: figure.value,
    low: figure.low,
    high: figure.high,
    unit: pointUnits[key] ?? '1',
    basis: figure.basis,
  };
}

function flight(
  values: FlightFigures,
  key: keyof FlightFigures,
  name: string,
  title: string,
  factor: number,
  unit: CardFigure['unit'],
): CardFigure {
  const figure = values[key];
  return {
    name,
    title,
    value: figure.value * factor,
    low: figure.low * factor,
    high: figure.high * factor,
    unit,
    basis: figure.basis,
  };
}
