/** Values of the build that the sheet lets one try, the craft with those tried, and the edit that writes one down. Draws nothing. */
import type { Craft, Pack } from '../build/craft';
import type { Edit } from '../build/finding';
import type { SourceFile } from '../build/source-file';
import { niceStep } from '../plan/nice-steps';
import { holderOf, roadOf, valueEdit } from '../plan/value-edit';
import { type Change, type Variation, valueChanges, vary } from '../plan/vary';
import { factAt, type NumberField, numberField, unitSaid } from '../plan/vary-field';
import type { SectionId, Slider } from '../report/sheet/view/sheet-view';

/** Values by field, in the unit that the builder wrote. */
export type Tries = Readonly<Record<string, number>>;

interface Triable {
  readonly field: string;
  readonly words: string;
  /** What else changes with it while it is tried. */
  readonly follows?: string;
  readonly section: SectionId;
}

const triables = (pack: Pack): readonly Triable[] => [
  { field: 'motors.kv', words: 'Kv of the motors', section: 'fly' },
  { field: 'flight.altitude', words: 'altitude of the field', section: 'fly' },
  ...(pack.name.includes('.')
    ? []
    : [
        {
          field: `packs.${pack.name}.capacity`,
          words: `capacity of the pack ${pack.name}`,
          follows:
            'Its weight follows, at as many Wh to the kilogram as now. The button writes the capacity alone: write the weight of the pack you mean beside it.',
          section: 'time' as const,
        },
      ]),
];

export function slidersOf(
  craft: Craft,
  pack: Pack,
  tries: Tries,
): readonly (Slider & { readonly section: SectionId })[] {
  return triables(pack).flatMap(({ field, words, follows, section }) => {
    const said = saidValue(craft, pack, field);
    if (!said || !(said.own > 0)) return [];
    const { own, unit, factor } = said;
    const step = field === 'flight.altitude' ? Math.max(1, Math.round(50 / factor)) : niceStep(own * 0.016);
    const [low, high] = field === 'flight.altitude' ? [0, own + 4000 / factor] : [own * 0.5, own * 2];
    // The file's own value is one of the steps.
    const least = tidy(own - Math.floor((own - low) / step + 1e-9) * step);
    const most = tidy(own + Math.floor((high - own) / step) * step);
    const value = Math.min(most, Math.max(least, tries[field] ?? own));
    return [{ field, words, follows, section, least, most, step: tidy(step), value, own, unit }];
  });
}

/** The craft with everything that is tried; nothing when that is what the file says. */
export function trialOf(craft: Craft, pack: Pack, tries: Tries): Variation | undefined {
  const changes = triables(pack).flatMap(({ field }): Change[] => {
    const said = saidValue(craft, pack, field);
    const tried = tries[field];
    if (!said || tried === undefined || !Number.isFinite(tried) || tried <= 0 || tried === said.own) return [];
    return valueChanges(said.found, [{ value: tried * said.factor, label: written(tried, said.unit || 'Kv') }]);
  });
  if (changes.length === 0) return undefined;
  const all: Change = {
    label: changes.map(({ label }) => label).join(', '),
    keepsLog: changes.every(({ keepsLog }) => keepsLog),
    apply: (setting) => changes.reduce((before, change) => change.apply(before), setting),
  };
  return vary({ craft, pack }, [all]).rows[0];
}

/** Nothing when the field is none that can be tried. */
export function trialEdit(file: SourceFile, craft: Craft, pack: Pack, field: string, value: number): Edit | undefined {
  const said = triables(pack).some((one) => one.field === field) ? saidValue(craft, pack, field) : undefined;
  const road = roadOf(field);
  const holder = said && holderOf(file, craft, road);
  return said && holder && Number.isFinite(value) && value > 0
    ? valueEdit(file, holder, road.at(-1)!, written(value, said.unit))
    : undefined;
}

interface SaidValue {
  readonly found: NumberField;
  /** In the unit that the builder wrote. */
  readonly own: number;
  readonly unit: string;
  /** The engine's unit for one of the builder's. */
  readonly factor: number;
}

function saidValue(craft: Craft, pack: Pack, field: string): SaidValue | undefined {
  const found = numberField(craft, field, pack);
  const fact = found.ok ? factAt({ craft, pack }, found.field) : undefined;
  if (!found.ok || !fact) return undefined;
  const { unit, factor } = unitSaid(found.field, fact.text);
  return { found: found.field, own: tidy(fact.value / factor), unit, factor };
}

const tidy = (value: number): number => Number(value.toPrecision(6));
const written = (value: number, unit: string): string => `${tidy(value)}${unit ? ` ${unit}` : ''}`;
