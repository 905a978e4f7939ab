/** `npm run benchmark`: bundles the benchmark and runs it in a process of its own; must not decide whether a figure is good enough. */
import { spawnSync } from 'node:child_process';
import path from 'node:path';
import { build } from 'esbuild';

const root = path.resolve(import.meta.dirname, '../..');
await build({
  absWorkingDir: root,
  entryPoints: ['tests/bench/main.ts'],
  outfile: 'out/benchmark.cjs',
  bundle: true,
  platform: 'node',
  format: 'cjs',
  target: 'node20',
  logLevel: 'warning',
  // The samples are found from the folder of the source file.
  define: { 'import.meta.dirname': JSON.stringify(path.join(root, 'tests/support')) },
});
process.exitCode = spawnSync(process.execPath, ['out/benchmark.cjs'], { cwd: root, stdio: 'inherit' }).status ?? 1;
