/** `npm run test:long`: the runs on chance input at a night's length, a million damaged texts by default, from a seed that is printed first; fails as its tests do. */
import { spawnSync } from 'node:child_process';
import { readdirSync } from 'node:fs';
import path from 'node:path';
import { parseArgs } from 'node:util';

const root = path.resolve(import.meta.dirname, '..');
const { values } = parseArgs({
  options: { seed: { type: 'string' }, inputs: { type: 'string', default: '1000000' } },
});
const seed = values.seed ?? String(Math.floor(Date.now() / 1000));
const samples = readdirSync(path.join(root, 'samples'), { recursive: true }).filter((name) => name.endsWith('.yaml'));
const each = Math.ceil(Number(values.inputs) / samples.length);
const again = `npm run test:long -- --seed ${seed} --inputs ${values.inputs}`;
console.log(`Seed ${seed}: ${each} damaged texts of each of ${samples.length} samples. The same again: ${again}`);

const { status } = spawnSync(
  process.execPath,
  [
    path.join(root, 'node_modules/vitest/vitest.mjs'),
    'run',
    '--dir',
    'tests',
    '--maxWorkers=100%',
    `--testTimeout=${Math.max(600_000, each * 500)}`,
    'robustness/mutations',
    'text/plain-yaml',
    'lsp/edit-sequences',
    'lsp/soak',
    'report/random-builds',
  ],
  {
    cwd: root,
    stdio: 'inherit',
    env: {
      ...process.env,
      DRYFIT_SEED: seed,
      DRYFIT_MUTATIONS: String(each),
      DRYFIT_SOAK: '10000',
      DRYFIT_BUILDS: '20000',
    },
  },
);
console.log(status === 0 ? `Nothing broke with seed ${seed}.` : `Something broke with seed ${seed}: ${again}`);
process.exitCode = status ?? 1;
