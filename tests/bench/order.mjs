/** `node tests/bench/order.mjs`: bundles the benchmark of orders and runs it in a process of its own; must not decide whether a figure is good enough. */
import { spawnSync } from 'node:child_process';
import path from 'node:path';
import { build } from 'esbuild';

const root = path.resolve(import.meta.dirname, '../..');
await build({
  absWorkingDir: root,
  entryPoints: ['tests/bench/order.ts'],
  outfile: 'out/benchmark-order.mjs',
  bundle: true,
  platform: 'node',
  format: 'esm',
  target: 'node20',
  external: ['highs'],
  logLevel: 'warning',
});
process.exitCode =
  spawnSync(process.execPath, ['out/benchmark-order.mjs'], { cwd: root, stdio: 'inherit' }).status ?? 1;
