/** The validation report as text. */
import type { StandCase, StaticCase } from './cases';
import { coverage, levelWithout, logError, type Spread, standErrors } from './stands';
import { type Outlines, staticErrors } from './statics';

const percent = (x: number): string => `${(100 * x).toFixed(1)} %`;
const pair = (median: number, p90: number): string => `${percent(median)} / ${percent(p90)}`;
const spread = (s: Spread): string => `${pair(s.median, s.p90)}  (${s.count})`;

function table(rows: readonly (readonly string[])[]): string {
  const width = rows[0]!.map((_, i) => Math.max(...rows.map((r) => r[i]!.length)));
  return rows
    .map((r) =>
      r
        .map((cell, i) => cell.padEnd(width[i]!))
        .join('   ')
        .trimEnd(),
    )
    .join('\n');
}

function staticsReport(cases: readonly StaticCase[]): string {
  const kinds: Outlines[] = ['none', 'by trade name', 'and research families by their others'];
  const errors = kinds.map((k) => staticErrors(cases, k));
  const head = [
    'outline given',
    'thrust at speed, rows',
    'by propeller',
    'below 4 in',
    'power at thrust, rows',
    'by propeller',
    'below 4 in',
  ];
  const lines = errors.map(({ outlines, thrust, power }) => [
    outlines,
    pair(thrust.median, thrust.p90),
    pair(thrust.medianByPropeller, thrust.p90ByPropeller),
    percent(thrust.medianBelowFour),
    pair(power.median, power.p90),
    pair(power.medianByPropeller, power.p90ByPropeller),
    percent(power.medianBelowFour),
  ]);
  const last = errors[errors.length - 1]!;
  const numbers = (v: readonly number[]): string => v.map((x) => x.toFixed(3)).join(', ');
  return [
    `Static tests of ${cases.length} propellers, each left out of the fit in turn: error median / 90th percentile`,
    table([head, ...lines]),
    '',
    'Coefficients fitted on all of them (level, pitch, curve, blades, wide, narrow)',
    `ln CT  ${numbers(last.ct)}`,
    `ln K   ${numbers(last.loading)}`,
  ].join('\n');
}

function standsReport(cases: readonly StandCase[]): string {
  const shipped = standErrors(cases);
  const left = cases.length > 2 ? standErrors(cases, (c) => levelWithout(cases, c)) : undefined;
  const line = (label: string, key: keyof typeof shipped): string[] => [
    label,
    spread(shipped[key]),
    left && !key.startsWith('others') ? spread(left[key]) : '',
  ];
  const errors = table([
    ['', 'as shipped', 'level set without that motor'],
    line('full throttle, thrust', 'fullThrust'),
    line('full throttle, current', 'fullCurrent'),
    line('full throttle, current at its thrust', 'fullCurrentAtThrust'),
    line('10-60 % thrust, current at that thrust', 'partCurrent'),
    line('top row given, current of the others', 'othersWithTopRow'),
    line('middle row given, current of the others', 'othersWithMiddleRow'),
  ]);
  const signed = (x: number | undefined): string => (x === undefined ? '' : `${(100 * (Math.exp(x) - 1)).toFixed(0)}`);
  const series = table([
    ['series', 'full thrust %', 'full current %', 'current at thrust %, lowest row to highest'],
    ...cases.map((c) => {
      const top = c.rows.reduce((a, b) => (b.thrust > a.thrust ? b : a));
      return [
        c.name,
        signed(logError('thrust at throttle', c, top)),
        signed(logError('current at throttle', c, top)),
        c.rows.map((r) => signed(logError('current at thrust', c, r))).join(' '),
      ];
    }),
  ]);
  const inside = coverage(cases);
  const total = inside.reduce((s, c) => ({ inside: s.inside + c.inside, count: s.count + c.count }), {
    inside: 0,
    count: 0,
  });
  const covered = table([
    ['typical range, level set without that motor', 'inside'],
    ...[...inside, { quantity: 'all', ...total }].map((c) => [
      c.quantity,
      c.count > 0 ? `${percent(c.inside / c.count)}  (${c.inside} of ${c.count})` : '',
    ]),
  ]);
  return [
    `Thrust stands, ${cases.length} series, from stator, Kv and propeller size: error median / 90th percentile (rows)`,
    errors,
    '',
    series,
    '',
    covered,
  ].join('\n');
}

export const report = (statics: readonly StaticCase[], stands: readonly StandCase[]): string =>
  [
    statics.length > 0 ? staticsReport(statics) : 'No static tests.',
    stands.length > 0 ? standsReport(stands) : 'No thrust stands.',
  ].join('\n\n');
