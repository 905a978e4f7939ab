/** What one step up and one step down would do to weight, thrust and flight time: lines for a hover, titles for code lenses. Changes no text. */
import type { Craft, Pack } from '../build/craft';
import { kidOf, type Slot } from '../build/slot';
import { documentAt, type SourceFile } from '../build/source-file';
import { values } from '../physics';
import { neighbourCapacities, neighbourValues } from '../plan/nice-steps';
import { once } from '../plan/once';
import { type Change, type Variation, valueChanges, vary } from '../plan/vary';
import { factAt, type NumberField, numberField, unitSaid, withValue } from '../plan/vary-field';
import { chosenPack } from '../plan/weight';
import type { PropellerSize } from '../text/notation/propeller-size';
import type { Span } from '../text/span';

export interface Lens {
  readonly span: Span;
  readonly title: string;
}

/** One lens on each pack, on the motors and on the propellers of every build in the file. */
export function whatIfLenses(file: SourceFile, crafts: readonly Craft[]): readonly Lens[] {
  return crafts.flatMap((craft) => {
    const document = documentAt(file, craft.where.span.start);
    const parts = kidOf(document?.slot, 'parts');
    const packs = kidOf(document?.slot, 'packs');
    const main = chosenPack(craft);
    const lens = (slot: Slot | undefined, changes: readonly Change[], pack: Pack | undefined): Lens[] => {
      if (!slot?.keySpan || !pack) return [];
      const said = effects(craft, pack, changes);
      return said.length > 0
        ? [{ span: slot.keySpan, title: said.map(({ label, words }) => `${label}: ${words.join(', ')}`).join('  |  ') }]
        : [];
    };
    return [
      ...lens(kidOf(parts, 'motors'), main ? numberSteps(craft, 'motors.kv', main) : [], main),
      ...lens(kidOf(parts, 'propellers'), propellerSteps(craft), main),
      ...craft.packs.flatMap((pack) =>
        lens(kidOf(packs, pack.name), numberSteps(craft, `packs.${pack.name}.capacity`, pack), pack),
      ),
    ];
  });
}

/** Lines of Markdown under a number of the build; none where the figures don't depend on it. @param path keys from the root down */
export function whatIfLines(craft: Craft, path: readonly string[]): readonly string[] {
  const words = path.join('.');
  const own = path[0] === 'packs' ? craft.packs.find((pack) => pack.name === path[1]) : chosenPack(craft);
  if (!own) return [];
  // A pointer that moves within a value asks again and again.
  return once(craft, `what if ${words}`, () => {
    const changes = words === 'parts.propellers.size' ? propellerSteps(craft) : numberSteps(craft, words, own);
    return effects(craft, own, changes).map(({ label, words: said }) => `- at **${label}**: ${said.join(', ')}`);
  });
}

function numberSteps(craft: Craft, words: string, pack: Pack): readonly Change[] {
  const found = numberField(craft, words, pack);
  if (!found.ok) return [];
  const fact = factAt({ craft, pack: found.field.pack }, found.field);
  if (!fact) return [];
  return valueChanges(
    found.field,
    steps(found.field, fact.value).map((value) => ({ value, label: written(found.field, fact.text, value) })),
  );
}

/** Smaller first. What has no step of its own moves by about a twentieth. */
function steps({ path, field }: NumberField, value: number): readonly number[] {
  if (path === 'pack.capacity') return neighbourCapacities(value);
  if (path === 'flight.altitude') return [value >= 500 ? value - 500 : 0, value + 500].filter((one) => one !== value);
  if (field.is === 'notation' && field.notation === 'count') return [value - 1, value + 1].filter((one) => one > 0);
  if (field.is === 'quantity' && field.dimension === 'temperature') return [value - 10, value + 10];
  if (field.is === 'quantity' && field.dimension === 'share')
    return [value - 0.05, value + 0.05].filter((one) => one >= 0 && one <= 1);
  return value > 0 ? neighbourValues(value) : [];
}

/** In the unit that the builder wrote. */
function written(at: NumberField, text: string, value: number): string {
  const { field } = at;
  const { unit: said, factor } = unitSaid(at, text);
  const unit = said || (field.is === 'quantity' && field.dimension === 'motor-constant' ? 'Kv' : '');
  return `${Number((value / factor).toPrecision(6))}${unit ? ` ${unit}` : ''}`;
}

/** Pitch in steps of a third of an inch; the diameter is the frame's to decide. A size without pitch has no step. */
function propellerSteps(craft: Craft): readonly Change[] {
  const size = craft.roles.propellers?.size;
  const pitch = size?.value.pitch;
  if (!size || pitch === undefined) return [];
  const inches = pitch / 0.0254;
  const step = inches < 2 ? 0.2 : 0.3;
  return [inches - step, inches + step].map((other) => {
    const value: PropellerSize = { ...size.value, pitch: other * 0.0254 };
    const label = size.text.includes('mm')
      ? `${(other * 25.4).toFixed(0)} mm pitch`
      : size.text.replace(/^([^x×]*[x×]\s*)[\d.]+/, `$1${Number(other.toFixed(2))}`);
    return {
      label,
      keepsLog: false,
      apply: (setting) => withValue(setting, { of: 'propellers', key: 'size' }, value, label),
    };
  });
}

interface Effect {
  readonly label: string;
  readonly words: readonly string[];
}

/** What is left out did not change. A change that does nothing to all three is not told. */
function effects(craft: Craft, pack: Pack, changes: readonly Change[]): readonly Effect[] {
  if (changes.length === 0) return [];
  const { base, rows } = vary({ craft, pack }, changes);
  const before = keyFigures(base);
  if (!before) return [];
  return rows.flatMap((row) => {
    const words = differences(before, keyFigures(row));
    return words.length > 0 ? [{ label: row.label, words }] : [];
  });
}

interface KeyFigures {
  readonly grams: number;
  readonly thrustToWeight: number | undefined;
  readonly minutes: number | undefined;
}

function keyFigures({ input, weight }: Variation): KeyFigures | undefined {
  if (!input) return undefined;
  const { full, asFlown } = values(input);
  return {
    grams: weight.ready.value * 1000,
    thrustToWeight: full.ok ? full.value.thrustToWeight : undefined,
    minutes: asFlown.ok ? asFlown.value.minutes : undefined,
  };
}

function differences(before: KeyFigures, after: KeyFigures | undefined): readonly string[] {
  if (!after) return [];
  const signed = (change: number, digits: number): string =>
    `${change >= 0 ? '+' : '−'}${Math.abs(change).toFixed(digits)}`;
  const words: string[] = [];
  const grams = after.grams - before.grams;
  const fine = before.grams < 100 ? 1 : 0;
  if (Math.abs(grams) >= 0.5 * 10 ** -fine) words.push(`${signed(grams, fine)} g`);
  const moved = (was: number | undefined, is: number | undefined, unit: string, lost: string): void => {
    if (was === undefined) return;
    if (is === undefined) words.push(lost);
    else if (Math.abs(is - was) >= 0.05) words.push(`${signed(is - was, 1)}${unit}`);
  };
  moved(before.thrustToWeight, after.thrustToWeight, ' thrust to weight', 'no thrust');
  moved(before.minutes, after.minutes, ' min', 'no flight');
  return words;
}
