/** The main job on the samples, in the terminal (`npm run demo`): what is wrong with a faulty build, and the card of a sound one. Must fail when either says something else. */
import { spawnSync } from 'node:child_process';
import path from 'node:path';

const root = path.resolve(import.meta.dirname, '../..');

show('A build with mistakes', ['check', 'samples/faulty/first-five.dryfit.yaml'], 1);
show('A sound build', ['check', 'samples/builds/ossel-5.dryfit.yaml'], 0);
show('What it weighs, draws and flies', ['card', 'samples/builds/ossel-5.dryfit.yaml'], 0);

function show(title, args, wanted) {
  console.log(`\n${title}:  dryfit ${args.join(' ')}\n`);
  const { status } = spawnSync(process.execPath, ['dist/cli.cjs', ...args], {
    cwd: root,
    stdio: 'inherit',
    timeout: 60_000,
  });
  if (status === wanted) return;
  console.error(`\nThe demo expected this command to end with ${wanted}; it ended with ${status}.`);
  process.exit(1);
}
