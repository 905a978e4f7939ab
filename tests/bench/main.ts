/** Medians of what an editor waits for: the figures of a craft and of one operating point. A benchmark to read, never a test that fails. */
import { cpus } from 'node:os';
import { craftsOf } from '../../server/src/analysis';
import { whatIfLenses } from '../../server/src/language/what-if';
import { figures, operatingPoint, pointValues, values } from '../../server/src/physics';
import { flightInput } from '../../server/src/plan/flight-input';
import { packCard } from '../../server/src/report/card';
import { numbersIn } from '../support/numbers-in';
import { sampleUri, sampleWorkspace } from '../support/samples';
import { offsetTimes } from './offsets';

/** Median time of one run in µs, over rounds that each last some milliseconds. */
function median(run: () => unknown): number {
  for (let i = 0; i < 200; i++) run();
  const started = performance.now();
  run();
  const batch = Math.max(1, Math.min(2000, Math.round(4 / Math.max(1e-4, performance.now() - started))));
  const times = Array.from({ length: 51 }, () => {
    const before = performance.now();
    for (let i = 0; i < batch; i++) run();
    return ((performance.now() - before) * 1000) / batch;
  });
  return times.sort((a, b) => a - b)[25]!;
}

const workspace = sampleWorkspace();
const file = workspace.get(sampleUri('builds/ossel-5.dryfit.yaml'))!;
const craft = craftsOf(workspace, file)[0]!;
const pack = craft.packs[0]!;
const made = flightInput(craft, pack);
if (!made.ok) throw new Error('the sample has no figures');
const { input } = made;
const calibrated = {
  ...input,
  thrustTable: [
    { throttle: 0.5, thrust: 4.7, voltage: 24, current: 5.3 },
    { throttle: 1, thrust: 14.5, voltage: 24, current: 27 },
  ],
  log: { flown: 'as-flown' as const, duration: 270, used: 1.05 },
};
const stand = { motor: input.motors, propeller: input.propeller, voltage: 22.2, at: { throttle: 0.6 } };
const onThrust = { ...stand, at: { thrust: 4 } };

// Figures are worked out when they are looked at; a fair time looks at all of them.
const rows: readonly (readonly [name: string, limit: number | undefined, run: () => unknown])[] = [
  ["card's values", 800, () => numbersIn(values(input))],
  ['with typical ranges', 2000, () => numbersIn(figures(input))],
  ['with ranges, two stand rows and a logged flight', 2000, () => numbersIn(figures(calibrated))],
  ['one operating point at a throttle', 20, () => pointValues(stand)],
  ['one operating point at a thrust', 20, () => pointValues(onThrust)],
  ['one operating point with ranges', 20, () => operatingPoint(stand)],
  ['from the build file to the physics', undefined, () => flightInput(craft, pack)],
  ['whole card of one pack', undefined, () => packCard({ ...craft }, pack)],
  ['code lenses of one build', undefined, () => whatIfLenses(file, [craft])],
];

const yardstick = median(() => {
  let sum = 0;
  for (let i = 1; i < 10_000; i++) sum += Math.sqrt(i) / i;
  return sum;
});

console.log(
  `${new Date().toISOString().slice(0, 10)}, ${cpus()[0]?.model.trim() ?? 'unknown processor'}, Node ${process.versions.node}`,
);
console.log(`yardstick: 10,000 square roots and divisions in ${yardstick.toFixed(1)} µs\n`);
console.log(`${''.padEnd(50)}${'median µs'.padStart(10)}${'of limit'.padStart(10)}${'yardsticks'.padStart(12)}`);
for (const [name, limit, run] of rows) {
  const time = median(run);
  const share = limit === undefined ? '' : `${((time / limit) * 100).toFixed(0)} %`;
  console.log(
    `${name.padEnd(50)}${time.toFixed(1).padStart(10)}${share.padStart(10)}${(time / yardstick).toFixed(2).padStart(12)}`,
  );
}

console.log('\nAnswers at every third offset of every sample, ms\n');
console.log('| | median | p95 | longest |\n|---|---|---|---|');
for (const { name, median: middle, p95, most } of offsetTimes())
  console.log(`| ${name} | ${middle.toFixed(2)} | ${p95.toFixed(2)} | ${most.toFixed(1)} |`);
