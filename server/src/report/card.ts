/** The card of a craft: its figures grouped by what a builder asks, each with its range and what it rests on. Data only; faces lay it out. */
import type { Analysis } from '../analysis';
import type { Craft, Pack } from '../build/craft';
import type { CraftFigures } from '../physics';
import { type FlightLevels, flightLevels } from '../plan/flight-levels';
import { type Measured, measuredOf } from '../plan/measured';
import { chosenPack, type Weight, weightOf } from '../plan/weight';
import { figuresFor, inputFor } from '../plan/worked';
import type { ThrustLevel } from '../text/notation/thrust-level';
import type { CardFigure, CardGroup } from './card-figure';
import { heatGroup } from './card-heat';
import { type LevelTable, levelTable } from './card-levels';
import { liftGroup } from './card-lift';
import { reachGroup } from './card-reach';
import { sureGroup } from './card-sure';
import { timeGroup } from './card-time';
import { type PartShare, partShares, weightGroup } from './card-weight';
import { valueText } from './figure-text';
import { briefWhyNot } from './figure-words';

export type { CardFigure, CardGroup } from './card-figure';

export interface PackCard {
  readonly pack: string;
  /** The decisive figures in one line. */
  readonly headline: string;
  readonly groups: readonly CardGroup[];
  readonly levels: LevelTable | undefined;
  readonly parts: readonly PartShare[];
  readonly measured: readonly Measured[];
}

export interface Card {
  readonly name: string;
  readonly craft: string | undefined;
  readonly packs: readonly PackCard[];
  readonly checks: { readonly ran: number; readonly found: number; readonly notChecked: number };
  /** How the flight was assumed to be flown, in words and as data. */
  readonly flown: string;
  readonly levels: FlightLevels;
  readonly caution: string;
}

/** @param first name of the pack to put first, when it is not the builder's own choice */
export function cardOf(craft: Craft, analysis: Analysis, first?: string): Card {
  const found = new Set(analysis.findings.map((finding) => finding.check)).size;
  const packs: readonly (Pack | undefined)[] = craft.packs.length > 0 ? chosenFirst(craft, first) : [undefined];
  const levels = flightLevels(craft);
  return {
    name: craft.said.name?.value ?? 'Unnamed craft',
    craft: craft.said.craft?.value,
    packs: packs.map((pack) => packCard(craft, pack)),
    checks: { ran: analysis.ran.length, found, notChecked: analysis.notChecked.length },
    flown: flownWords(craft, levels),
    levels,
    caution:
      'Figures are predictions with typical ranges. Check them with care, propellers off, before you trust a craft in the air.',
  };
}

function chosenFirst(craft: Craft, first: string | undefined): readonly Pack[] {
  const chosen = craft.packs.find((pack) => pack.name === first) ?? chosenPack(craft);
  return [...craft.packs].sort((a, b) => Number(b === chosen) - Number(a === chosen));
}

/** The pack that the figures are for when only one can be shown. */
export const mainPack = chosenPack;

/** @param given figures and weight worked out elsewhere, for a craft that is being varied */
export function packCard(
  craft: Craft,
  pack: Pack | undefined,
  given?: { readonly figures: CraftFigures | undefined; readonly weight: Weight },
): PackCard {
  const weight = given?.weight ?? weightOf(craft, pack);
  const figures = given ? given.figures : pack && figuresFor(craft, pack);
  const groups = [
    liftGroup(craft, figures, wantingWords(craft, pack)),
    timeGroup(craft, pack, figures),
    heatGroup(craft, figures),
    weightGroup(craft, pack, weight),
    reachGroup(craft),
    sureGroup(craft, pack, figures),
  ].filter((group) => group.figures.length > 0 || group.remarks.length > 0);
  return {
    pack: pack?.name ?? '',
    headline: headline(groups, figures),
    groups,
    levels: levelTable(figures),
    parts: partShares(weight),
    measured: measuredOf(craft, pack),
  };
}

/** Every figure of a pack's card by its name, those of the table included. */
export function figuresByName(card: PackCard): ReadonlyMap<string, CardFigure> {
  const cells = card.levels?.rows.flatMap((row) => row.cells.filter((cell) => cell !== undefined)) ?? [];
  const all = [...card.groups.flatMap((group) => group.figures), ...cells];
  return new Map([...all].reverse().map((figure) => [figure.name, figure]));
}

function wantingWords(craft: Craft, pack: Pack | undefined): readonly string[] {
  if (!pack) return ['For these figures, add a pack under `packs:`.'];
  const input = inputFor(craft, pack);
  return input.ok ? [] : [`For these figures, add ${input.missing.map((path) => `\`${path}\``).join(', ')}.`];
}

function headline(groups: readonly CardGroup[], figures: CraftFigures | undefined): string {
  const all = groups.flatMap((group) => group.figures);
  const words = (name: string, after: string): string[] => {
    const figure = all.find((one) => one.name === name);
    return figure ? [`${valueText(figure)} ${after}`] : [];
  };
  const parts = [
    ...words('weight-ready', all.find((one) => one.name === 'weight-ready')?.title ?? ''),
    ...words('hover-current', 'hovering'),
    ...words('time-as-flown', 'as you fly it'),
  ];
  if (figures && !figures.hover.ok) parts.push(briefWhyNot(figures.hover));
  else if (figures && !figures.asFlown.ok) parts.push(briefWhyNot(figures.asFlown));
  return parts.join(' · ');
}

const origins: Readonly<Record<FlightLevels['from'], (craft: string | undefined) => string>> = {
  file: () => 'as the file says',
  part: (craft) => `as the file says, the rest usual for ${craft ?? 'such craft'}`,
  class: (craft) => `usual for ${craft}`,
  usual: () => 'a usual mix',
};

function flownWords(craft: Craft, levels: FlightLevels): string {
  const share = (value: number): string => `${Math.round(value * 100)} %`;
  const level = ({ of, ratio }: ThrustLevel): string =>
    of === 'weight' ? `${ratio} x weight` : `${share(ratio)} of full thrust`;
  const { hover, cruise, punch, cruiseThrust, punchThrust, reserve, from } = levels;
  return `Flown ${share(hover)} hovering, ${share(cruise)} cruising at ${level(cruiseThrust)}, ${share(punch)} at ${level(punchThrust)}, ${share(reserve)} left in the pack (${origins[from](craft.said.craft?.value)}).`;
}
