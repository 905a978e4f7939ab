/** Bundles the extension, the server, the command line, the editor tests and the validation; must not check types, which `npm run check` does. */
import { spawnSync } from 'node:child_process';
import { copyFileSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { build } from 'esbuild';
import { lend } from './lend.mjs';
import { writeNotices } from './notices.mjs';

const root = path.resolve(import.meta.dirname, '../..');

// CommonJS: an ESM bundle of the language server dies at run time on its dynamic requires.
const common = {
  absWorkingDir: root,
  bundle: true,
  platform: 'node',
  format: 'cjs',
  target: 'node20',
  mainFields: ['module', 'main'],
  logLevel: 'warning',
  legalComments: 'none',
  // The names of modules are part of what is built; where a linked folder really lies must not be.
  preserveSymlinks: true,
  // The same package as modules, of which only what is used is taken.
  alias: { yaml: './node_modules/yaml/browser/dist/index.js', highs: './node_modules/highs/build/highs.js' },
};

const browser = { platform: 'browser', target: 'es2022' };

// Names stay, so that a crash report can be read.
const small = { minifySyntax: true, minifyWhitespace: true };

const generated = spawnSync(process.execPath, ['server/build/vocabulary.mjs'], { cwd: root, stdio: 'inherit' });
if (generated.status !== 0) process.exit(1);

// A suite whose source is gone must not run again.
rmSync(path.join(root, 'out/editor-suite'), { recursive: true, force: true });

const bundles = [
  { entryPoints: ['client/src/extension.ts'], outfile: 'dist/client.cjs', external: ['vscode'], ...small },
  {
    entryPoints: ['client/src/browser.ts'],
    outfile: 'dist/client.browser.js',
    external: ['vscode'],
    ...small,
    ...browser,
  },
  {
    entryPoints: ['server/src/lsp/browser.ts'],
    outfile: 'dist/server.worker.js',
    ...small,
    ...browser,
    format: 'iife',
  },
  {
    entryPoints: ['server/src/cli/main.ts'],
    outfile: 'dist/cli.cjs',
    external: ['./server.cjs', './solver.cjs', './sheet.cjs'],
    ...small,
    banner: { js: '#!/usr/bin/env node' },
  },
  // Loaded only for an order. In its CommonJS form, which finds its WebAssembly beside itself.
  {
    entryPoints: ['server/src/solver/load.ts'],
    outfile: 'dist/solver.cjs',
    ...small,
  },
  {
    entryPoints: ['server/src/solver/thread.ts'],
    outfile: 'dist/solver-thread.cjs',
    external: ['./solver.cjs'],
    ...small,
  },
  {
    entryPoints: ['server/src/solver/worker.ts'],
    outfile: 'dist/solver.worker.js',
    // Its branch for Node is never taken there.
    external: ['node:*'],
    ...small,
    ...browser,
    format: 'iife',
  },
  // What draws the build sheet, loaded when one is asked for.
  { entryPoints: ['server/src/report/sheet/draw/index.ts'], outfile: 'dist/sheet.cjs', ...small },
  {
    entryPoints: ['client/src/sheet-panel/main.ts'],
    outfile: 'dist/sheet-panel.js',
    ...small,
    ...browser,
    format: 'iife',
  },
  { entryPoints: ['tests/validation/main.ts'], outfile: 'out/validate.cjs' },
  {
    entryPoints: ['tests/editor/suite/*.ts'],
    outdir: 'out/editor-suite',
    outExtension: { '.js': '.cjs' },
    external: ['vscode', 'mocha'],
    sourcemap: 'inline',
  },
];
mkdirSync(path.join(root, 'dist'), { recursive: true });
copyFileSync(path.join(root, 'node_modules/highs/build/highs.wasm'), path.join(root, 'dist/highs.wasm'));
const told = { ...common, metafile: true };
const built = await Promise.all([
  ...bundles.map((bundle) => build({ ...told, ...bundle })),
  lend(
    // As `require`: what loads modules is not there yet, and costs more than what it would load.
    { ...told, ...small, supported: { 'dynamic-import': false } },
    {
      entry: 'server/src/lsp/node.ts',
      outfile: 'dist/server.cjs',
      external: ['./sheet.cjs', './requests.cjs', './seldom.cjs', './whole-yaml.cjs'],
    },
    [
      { entry: 'server/src/lsp/requests.ts', outfile: 'dist/requests.cjs' },
      { entry: 'server/src/lsp/seldom.ts', outfile: 'dist/seldom.cjs' },
      { entry: 'server/src/text/read-whole-yaml.ts', outfile: 'dist/whole-yaml.cjs', calls: ['readWholeYaml'] },
    ],
  ),
]);
const shipped = built
  .flat()
  .map(({ metafile }) => metafile)
  .filter(({ outputs }) => Object.keys(outputs)[0].startsWith('dist/'));

// One letter beyond Latin-1, which esbuild leaves in patterns, and the whole bundle takes two bytes a letter in memory.
for (const file of shipped.flatMap(({ outputs }) => Object.keys(outputs)).map((name) => path.join(root, name))) {
  const text = readFileSync(file, 'utf8');
  const plain = text.replaceAll(
    /[\u0080-\uffff]/g,
    (letter) => `\\u${letter.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );
  if (plain !== text) writeFileSync(file, plain);
}

writeNotices(root, path.join(root, 'dist/notices.txt'), shipped, ['highs']);

// The page that each finding links to, from the checks themselves.
const page = spawnSync(process.execPath, ['dist/cli.cjs', 'explain', '--format', 'markdown'], {
  cwd: root,
  maxBuffer: 1 << 26,
});
if (page.status !== 0) throw new Error(`no reference page: ${page.stderr}`);
writeFileSync(path.join(root, 'dist/checks.md'), page.stdout);
