/** `dryfit vary`: what a field or a part of a build changes, as a table and a plot. Reads words and writes the answer; computes nothing. */
import { evenRow, niceStep } from '../plan/nice-steps';
import { type Change, partChanges, vary as tryChanges, valueChanges } from '../plan/vary';
import { factAt, type NumberField, numberField } from '../plan/vary-field';
import { partsToTry } from '../plan/vary-parts';
import { chosenPack } from '../plan/weight';
import { figureNames, usualFigures, type VaryRequest, varyAsJson, varyAsText, varyReport } from '../report/vary-report';
import { varyAsSvg } from '../report/vary-svg';
import { readers } from '../text/notation';
import { readQuantity } from '../text/quantity';
import { factorOf } from '../text/units';
import { CannotRun, type Console } from './console';
import { craftIn, openOne } from './one-build';
import { asJson, oneOf, text, wordsOf } from './words';
import { writeFile } from './write';

export function vary(args: readonly string[], console: Console): number {
  const { values: said, positionals } = wordsOf(args, {
    field: text,
    from: text,
    to: text,
    step: text,
    parts: text,
    hold: text,
    show: text,
    pack: text,
    format: text,
    svg: text,
    bench: text,
    workspace: text,
  });
  const format = oneOf('format', said.format ?? 'text', ['text', 'json', 'svg']);
  const build = openOne(console, 'vary', positionals, said);
  if (said.field === undefined)
    throw new CannotRun('Say what to vary, as in `--field battery.capacity --from "850 mAh" --to "1800 mAh"`.');
  if (said.hold !== undefined) oneOf('hold', said.hold, ['weight']);
  const { workspace, name } = build;
  const craft = craftIn(build);
  const pack = craft.packs.find((one) => one.name === said.pack) ?? chosenPack(craft);
  if (!pack || (said.pack !== undefined && pack.name !== said.pack))
    throw new CannotRun(
      `${name} has no pack${said.pack === undefined ? '' : ` \`${said.pack}\``}, so there is nothing to compare.`,
    );
  const byParts = said.parts !== undefined;
  const plan = byParts ? partsPlan() : valuesPlan();

  function partsPlan(): Plan {
    const ids = said
      .parts!.split(',')
      .map((id) => id.trim())
      .filter(Boolean);
    const found = partsToTry(workspace, craft, said.field!, ids);
    if (!found.ok) throw new CannotRun(found.why);
    const own = craft.packs.find((one) => `packs.${one.name}` === said.field) ?? pack!;
    return {
      changes: partChanges(found.of, found.parts),
      pack: own,
      request: { field: found.of, unit: '', scale: 1, packFollows: false },
    };
  }

  function valuesPlan(): Plan {
    const found = numberField(craft, said.field!, pack);
    if (!found.ok) throw new CannotRun(found.why);
    if (said.from === undefined || said.to === undefined)
      throw new CannotRun('Say --from and --to with their units, or --parts with ids of parts.');
    const from = quantity('from', said.from, found.field);
    const to = quantity('to', said.to, found.field);
    const step = said.step === undefined ? undefined : quantity('step', said.step, found.field);
    const row = evenRow(
      from.written,
      to.value / from.factor,
      step === undefined
        ? usualStep(found.field, from.written, to.value / from.factor)
        : Math.abs(step.value / from.factor),
    );
    if (!row) throw new CannotRun('--step must be above zero and give at most 200 rows.');
    const written = row.map((value) => ({
      value: value * from.factor,
      label: `${Number(value.toPrecision(8))}${from.unit ? ` ${from.unit}` : ''}`,
    }));
    return {
      changes: valueChanges(found.field, written),
      pack: found.field.pack,
      own: factAt({ craft: craft, pack: found.field.pack }, found.field)?.value,
      request: {
        field: found.field.path,
        unit: from.unit,
        scale: 1 / from.factor,
        packFollows: found.field.path === 'pack.capacity',
      },
    };
  }

  const held = said.hold === 'weight';
  const varied = tryChanges({ craft, pack: plan.pack }, plan.changes, held);
  const base = { ...varied, base: { ...varied.base, value: plan.own } };
  const shown = said.show
    ?.split(',')
    .map((one) => one.trim())
    .filter(Boolean) ?? [...usualFigures];
  const report = varyReport(base, { ...plan.request, shown, weightHeld: held });
  const known = new Set([...figureNames(report), ...report.rows.flatMap((row) => [...row.figures.keys()])]);
  for (const one of shown)
    if (!known.has(one) && !(usualFigures as readonly string[]).includes(one))
      throw new CannotRun(`There is no figure \`${one}\` to show. Known here: ${[...known].sort().join(', ')}.`);
  if (said.svg !== undefined) writeFile(console, said.svg, varyAsSvg(report));
  const forms = {
    json: () => asJson(varyAsJson(report)),
    svg: () => varyAsSvg(report),
    text: () => varyAsText(report),
  };
  console.out(forms[format]());
  return 0;
}

interface Plan {
  readonly changes: readonly Change[];
  readonly pack: NonNullable<ReturnType<typeof chosenPack>>;
  readonly own?: number;
  readonly request: Omit<VaryRequest, 'shown' | 'weightHeld'>;
}

interface Said {
  /** In the engine's unit. */
  readonly value: number;
  readonly written: number;
  readonly unit: string;
  /** Engine units for one as written. */
  readonly factor: number;
}

function quantity(option: string, text: string, { field, path: where }: NumberField): Said {
  const example = field.about.examples?.[0];
  const read =
    field.is === 'quantity'
      ? readQuantity(text, field.dimension, example)
      : readers[field.notation as 'number' | 'count'](text);
  if (!read.ok) throw new CannotRun(`--${option}: ${read.why}${read.better?.[0] ? ` (${read.better[0]}?)` : ''}.`);
  const unit = /^[+-]?[\d.]+(?:e[+-]?\d+)?\s*([^\s(]*)/i.exec(text.trim())?.[1] ?? '';
  const factor = (field.is === 'quantity' && unit !== '' && factorOf(field.dimension, unit)) || 1;
  if (!Number.isFinite(read.value)) throw new CannotRun(`--${option}: no number for \`${where}\`.`);
  return { value: read.value, written: read.value / factor, unit, factor };
}

/** About eight rows at round values; whole numbers stay whole. */
function usualStep(field: NumberField, from: number, to: number): number {
  const step = niceStep(Math.max(1e-9, Math.abs(to - from) / 7));
  return field.field.is === 'notation' && field.field.notation === 'count' ? Math.max(1, Math.round(step)) : step;
}
