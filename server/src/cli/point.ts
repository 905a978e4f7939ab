/** `dryfit point`: one operating point as on a thrust stand, from the words of the command line. Reads and writes; computes nothing. */
import { operatingPoint } from '../physics';
import { whyNotOnStand } from '../report/figure-words';
import { pointAsJson, pointAsText } from '../report/point-report';
import { readPropellerSize } from '../text/notation/propeller-size';
import { readStator } from '../text/notation/stator';
import { type Read, readQuantity } from '../text/quantity';
import type { Dimension } from '../text/units';
import { CannotRun, type Console } from './console';
import { asJson, flag, oneOf, text, wordsOf } from './words';

export function point(args: readonly string[], console: Console): number {
  const said = wordsOf(args, options, false).values;
  const format = oneOf('format', said.format ?? 'text', ['text', 'json']);
  const missing = (['stator', 'kv', 'propeller', 'volts'] as const).filter((option) => said[option] === undefined);
  if (missing.length > 0)
    throw new CannotRun(
      `Say ${missing.map((option) => `--${option}`).join(', ')}, as in \`dryfit point --stator 2207 --kv 1750 --propeller 5.1x3.6x3 --volts 22.2 --throttle 60%\`.`,
    );
  if ((said.throttle === undefined) === (said.thrust === undefined))
    throw new CannotRun('Say either --throttle or --thrust.');
  const stator = taken('stator', readStator(said.stator!));
  const size = taken('propeller', readPropellerSize(said.propeller!));
  const number = (option: Option, dimension: Dimension, bare = ''): number | undefined => {
    const text = said[option];
    return text === undefined ? undefined : taken(option, readQuantity(withUnit(text, bare), dimension));
  };
  const throttle = number('throttle', 'share');
  if (throttle !== undefined && !(throttle > 0 && throttle <= 1))
    throw new CannotRun('--throttle is above 0 % and at most 100 %.');
  const resistance = number('resistance', 'resistance');
  const noLoad = number('no-load', 'current', 'A');
  const temperature = number('temperature', 'temperature', 'C');
  const outcome = operatingPoint({
    motor: {
      statorDiameterMm: stator.diameter * 1000,
      statorHeightMm: stator.height * 1000,
      kv: number('kv', 'motor-constant')!,
      resistance: resistance === undefined ? undefined : { value: resistance, trust: 'measured' },
      noLoadCurrent: noLoad === undefined ? undefined : { value: noLoad, trust: 'measured' },
    },
    propeller: {
      diameter: size.diameter,
      pitch: size.pitch ?? size.diameter * 0.7,
      blades: size.blades,
      ducted: said.duct,
    },
    voltage: number('volts', 'voltage', 'V')!,
    at: throttle === undefined ? { thrust: number('thrust', 'force')! } : { throttle },
    air: {
      altitude: number('altitude', 'length', 'm'),
      temperature: temperature === undefined ? undefined : temperature + 273.15,
    },
  });
  if (!outcome.ok) {
    const sentence = whyNotOnStand(outcome);
    console.out(format === 'json' ? asJson({ impossible: outcome.why, sentence }) : `${sentence}\n`);
    return 1;
  }
  console.out(format === 'json' ? asJson(pointAsJson(outcome.value)) : pointAsText(outcome.value));
  return 0;
}

const options = {
  stator: text,
  kv: text,
  propeller: text,
  volts: text,
  throttle: text,
  thrust: text,
  resistance: text,
  'no-load': text,
  altitude: text,
  temperature: text,
  format: text,
  duct: flag,
} as const;
type Option = Exclude<keyof typeof options, 'duct'>;

/** On a command line the unit that everybody means may be left out. */
const withUnit = (text: string, unit: string): string =>
  unit && /^[+-]?\d*\.?\d+$/.test(text.trim()) ? `${text} ${unit}` : text;

function taken<T>(option: string, read: Read<T>): T {
  if (read.ok) return read.value;
  throw new CannotRun(`--${option}: ${read.why}${read.better?.[0] ? ` (${read.better.join(' or ')}?)` : ''}.`);
}
