/** The card's answer to "what does it weigh?": all-up, dry, by part, where its centre lies, and the pack's energy for air travel. */
import type { Craft, Pack } from '../build/craft';
import { type Balance, balanceOf } from '../plan/balance';
import { packEnergy } from '../plan/pack-energy';
import type { Weight, WeightRow } from '../plan/weight';
import { type CardBasis, type CardFigure, type CardGroup, exactly, ranged } from './card-figure';

export interface PartShare {
  readonly part: string;
  readonly count: number;
  readonly mass: CardFigure;
  /** Of the craft ready to fly, 0 … 1. */
  readonly share: number;
}

/** Heaviest first. */
export function partShares(weight: Weight): readonly PartShare[] {
  const rows = [...weight.rows, ...(weight.packRow ? [weight.packRow] : [])];
  const total = sum(rows);
  return rows
    .filter((row) => row.mass.value > 0)
    .sort((a, b) => b.mass.value - a.mass.value)
    .map((row) => ({
      part: row === weight.packRow ? `pack ${row.part}` : row.part,
      count: row.count,
      mass: ranged(row.part, row.part, row.mass, 'kg', row.basis === 'weighed' ? 'measured' : row.basis),
      share: row.mass.value / total,
    }));
}

const sum = (rows: readonly WeightRow[]): number => rows.reduce((total, row) => total + row.mass.value, 0);

/** Shares below this are told together. */
const SMALL = 0.02;

export function weightGroup(craft: Craft, pack: Pack | undefined, weight: Weight): CardGroup {
  const shares = partShares(weight);
  if (shares.length === 0) return { question: 'What does it weigh?', word: 'weighs', figures: [], remarks: [] };
  const guessed = weight.rows.filter(
    (row) => row.basis === 'estimate' && row.fact === undefined && !row.part.includes(' '),
  );
  const basis: CardBasis = weight.weighed ? 'measured' : sum(guessed) > 0.05 * sum(weight.rows) ? 'estimate' : 'said';
  const figures: CardFigure[] = [
    {
      ...ranged('weight-ready', weight.packRow ? 'ready to fly' : 'without a pack', weight.ready, 'kg', basis),
      glance: true,
    },
    ranged('weight-dry', 'without the pack', weight.dry, 'kg', basis === 'measured' ? 'said' : basis),
  ];
  const said = (name: string): string => name.replaceAll('-', ' ');
  const large = shares.filter(({ share }) => share >= SMALL);
  const rest = shares.filter(({ share }) => share < SMALL).reduce((total, { share }) => total + share, 0);
  const words = large.map(({ part, mass, share }) => `${said(part)} ${grams(mass.value)} (${percent(share)})`);
  const remarks = [`Heaviest first: ${words.join(', ')}${rest > 0 ? `, all else ${percent(rest)}` : ''}.`];
  if (guessed.length > 0)
    remarks.push(
      `Usual weight taken for ${guessed.map((row) => said(row.part)).join(', ')}; weigh ${guessed.length === 1 ? 'it' : 'them'}.`,
    );
  const whole = weight.weighed ? sum([...weight.rows, ...(weight.packRow ? [weight.packRow] : [])]) : 0;
  if (weight.weighed && Math.abs(whole - weight.ready.value) > 0.03 * weight.ready.value)
    remarks.push(`The scale says ${grams(weight.ready.value)}, the parts add up to ${grams(whole)}.`);
  const balance = balanceOf(craft, pack);
  if (balance) {
    figures.push(...balanceFigures(balance));
    remarks.push(balanceWords(balance));
  }
  const energy = energyOf(pack);
  if (energy) figures.push(energy);
  return { question: 'What does it weigh?', word: 'weighs', figures, remarks };
}

function balanceFigures(balance: Balance): CardFigure[] {
  const title = `centre of mass ahead of the middle${balance.withPack ? '' : ', without the pack'}`;
  const basis: CardBasis = balance.unplaced > 0.05 ? 'estimate' : 'said';
  const centre = ranged(
    'centre-of-mass',
    title,
    { value: balance.centre, low: balance.low, high: balance.high },
    'm',
    basis,
  );
  return balance.packAt === undefined
    ? [centre]
    : [centre, exactly('pack-place', 'where the pack balances it, ahead of the middle', balance.packAt, 'm', basis)];
}

function balanceWords(balance: Balance): string {
  const { packAt, unplaced } = balance;
  const side = (metres: number): string =>
    `${Math.abs(metres * 1000).toFixed(0)} mm ${metres >= 0 ? 'ahead of' : 'behind'}`;
  const unknown =
    unplaced > 0.01 ? ` No place is said for ${percent(unplaced)} of the mass; it counts as in the middle.` : '';
  return packAt === undefined
    ? `Its centre of mass is ${side(balance.centre)} the middle of the motors.${unknown}`
    : `It balances with the middle of the pack ${side(packAt)} the middle of the motors.${unknown}`;
}

/** As counted for air travel: what is printed on the pack, else nominal voltage times capacity. */
function energyOf(pack: Pack | undefined): CardFigure | undefined {
  const { energy, cells, capacity, chemistry } = pack?.facts ?? {};
  const title = 'energy of the pack, for air travel';
  if (energy) return exactly('pack-energy', title, energy.value / 3600, 'W·h', 'said');
  if (!cells || !capacity) return undefined;
  return exactly('pack-energy', title, packEnergy(cells.value, capacity.value, chemistry?.value), 'W·h', 'said');
}

const grams = (kilograms: number): string => `${(kilograms * 1000).toFixed(kilograms < 0.02 ? 1 : 0)} g`;
const percent = (share: number): string => `${(share * 100).toFixed(share < 0.01 ? 1 : 0)} %`;
