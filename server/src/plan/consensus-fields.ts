/** What ready-made craft of one class are compared in: which fact, in which unit, and whether the cell count decides over it. Compares nothing. */
import type { Craft } from '../build/craft';
import type { Fact, Pointable } from '../build/fact';
import { chosenPack } from './weight';

export interface ComparedNumber {
  readonly is: 'number';
  /** Path of the field in a build. */
  readonly field: string;
  readonly title: string;
  readonly unit: string;
  /** In the unit above. */
  readonly read: (craft: Craft) => { readonly value: number; readonly at: Pointable } | undefined;
  /** Compared only among craft of the same cell count. */
  readonly byCells: boolean;
  readonly digits: number;
}

export interface ComparedTerm {
  readonly is: 'term';
  readonly field: string;
  readonly title: string;
  readonly read: (craft: Craft) => { readonly term: string; readonly at: Pointable } | undefined;
}

export type Compared = ComparedNumber | ComparedTerm;

const number = (
  field: string,
  title: string,
  unit: string,
  factor: number,
  fact: (craft: Craft) => Fact<number> | undefined,
  { byCells = false, digits = 0 } = {},
): ComparedNumber => ({
  is: 'number',
  field,
  title,
  unit,
  byCells,
  digits,
  read: (craft) => {
    const said = fact(craft);
    return said && { value: Number((said.value * factor).toPrecision(12)), at: said };
  },
});

const term = <T>(
  field: string,
  title: string,
  fact: (craft: Craft) => Fact<T> | undefined,
  word: (value: T, text: string) => string = (_, text) => text,
): ComparedTerm => ({
  is: 'term',
  field,
  title,
  read: (craft) => {
    const said = fact(craft);
    return said && { term: word(said.value, said.text), at: said };
  },
});

export const cellsOfCraft = (craft: Craft): number | undefined => chosenPack(craft)?.facts.cells?.value.series;

/** The field in which packs stand is the chosen pack's. */
export const compared: readonly Compared[] = [
  term('parts.motors.stator', 'Motor size', (craft) => craft.roles.motors?.stator),
  number('parts.motors.kv', 'Motor speed', 'Kv', 1, (craft) => craft.roles.motors?.kv, { byCells: true }),
  term(
    'packs.cells',
    'Cells',
    (craft) => chosenPack(craft)?.facts.cells,
    (cells) => `${cells.series}S`,
  ),
  number('packs.capacity', 'Capacity', 'mAh', 1000, (craft) => chosenPack(craft)?.facts.capacity, { byCells: true }),
  number('parts.esc.current', 'ESC current', 'A', 1, (craft) => craft.roles.esc?.current),
  term(
    'parts.flight-controller.mcu',
    'Flight controller',
    (craft) => craft.roles['flight-controller']?.mcu,
    chipFamily,
  ),
  term(
    'parts.flight-controller.mount',
    'Board pattern',
    (craft) => craft.roles['flight-controller']?.mount,
    (_, text) => text.replace(/\s+M\S+$/, ''),
  ),
  {
    is: 'number',
    field: 'parts.propellers.size',
    title: 'Propeller diameter',
    unit: 'in',
    byCells: false,
    digits: 1,
    read: (craft) => {
      const size = craft.roles.propellers?.size;
      return size && { value: Number((size.value.diameter / 0.0254).toFixed(3)), at: size };
    },
  },
  term('parts.propellers.size', 'Propeller', (craft) => craft.roles.propellers?.size),
  number('parts.frame.wheelbase', 'Wheelbase', 'mm', 1000, (craft) => craft.roles.frame?.wheelbase),
  number('parts.frame.weight', 'Frame', 'g', 1000, (craft) => craft.roles.frame?.weight),
  term('parts.video-transmitter.system', 'Video', (craft) => craft.roles['video-transmitter']?.system),
  number(
    'parts.video-transmitter.level',
    'Video power',
    'mW',
    1000,
    (craft) => craft.roles['video-transmitter']?.level,
  ),
  term('parts.receiver.link', 'Radio link', (craft) => craft.roles.receiver?.link),
  term('parts.battery-lead.plug', 'Battery plug', (craft) => craft.roles['battery-lead']?.plug),
  number('flight.weighed', 'Ready to fly', 'g', 1000, (craft) => craft.said.flight?.weighed),
];

/** `F7` of `F722`: the trade speaks of families. */
function chipFamily(chip: string): string {
  return /^(?:F4|F7|G4|H7|AT32)/.exec(chip)?.[0] ?? chip;
}
