/** The main job on the samples, in the terminal: the findings of a faulty build, then the card of a sound one. Fails when either does not do as it should. */
import { spawnSync } from 'node:child_process';
import path from 'node:path';

const root = path.resolve(import.meta.dirname, '../..');

function dryfit(expected, ...args) {
  console.log(`\n$ dryfit ${args.join(' ')}\n`);
  const { status } = spawnSync(process.execPath, ['dist/cli.cjs', ...args], { cwd: root, stdio: 'inherit' });
  if (status !== expected) {
    console.error(`dryfit ${args.join(' ')} ended with ${status}, not ${expected}.`);
    process.exit(1);
  }
}

dryfit(1, 'check', 'samples/faulty/first-five.dryfit.yaml');
dryfit(0, 'check', 'samples/builds', '--fail-on', 'warning');
dryfit(0, 'card', 'samples/builds/ossel-5.dryfit.yaml');
