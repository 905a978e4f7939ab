/** The whole test run (`npm test`): prepares, builds, runs every stage and adds up what they report; must never count a test that did not run as passed. */
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import path from 'node:path';
import { boundedRun } from './support/bounded-run.mjs';

const root = path.resolve(import.meta.dirname, '..');
const reports = path.join(root, 'out/reports');
rmSync(reports, { recursive: true, force: true });
mkdirSync(reports, { recursive: true });
const reportFile = (name) => path.join(reports, `${name.replaceAll(' ', '-')}.json`);

const node = (script, ...args) => [process.execPath, [script, ...args]];

// `needs` names stages without which this one would only repeat their failure.
const stages = [
  { name: 'browser', run: node('tests/editor/chromium.mjs'), seconds: 900, preparation: true },
  { name: 'editor host', run: node('tests/editor/install-host.mjs'), seconds: 900, preparation: true, linuxOnly: true },
  { name: 'web editor', run: node('tests/web/install-web.mjs'), seconds: 300, preparation: true },
  { name: 'build', run: node('server/build/bundle.mjs'), seconds: 120 },
  { name: 'types', run: node('node_modules/typescript/bin/tsc', '--noEmit'), seconds: 120, needs: ['build'] },
  {
    name: 'panel types',
    run: node('node_modules/typescript/bin/tsc', '--noEmit', '-p', 'client/src/sheet-panel'),
    seconds: 60,
  },
  { name: 'lint', run: node('node_modules/@biomejs/biome/bin/biome', 'check', '--error-on-warnings'), seconds: 60 },
  { name: 'unit tests', run: unitTests(), seconds: 900, needs: ['build'], count: countVitest },
  {
    name: 'sheet page',
    run: node('tests/sheet/run-page.mjs'),
    seconds: 240,
    needs: ['build', 'browser'],
    count: countReport,
  },
  {
    name: 'editor suite',
    run: node('tests/editor/run-suite.mjs'),
    seconds: 240,
    needs: ['build', 'browser', 'editor host'],
    count: countReport,
  },
  {
    name: 'sheet panel',
    run: node('tests/sheet/run-panel.mjs'),
    seconds: 400,
    needs: ['build', 'browser', 'editor host'],
    count: countReport,
  },
  {
    name: 'packed extension',
    run: node('tests/editor/run-vsix.mjs'),
    seconds: 240,
    needs: ['build', 'browser', 'editor host'],
    count: countReport,
  },
  {
    name: 'web extension',
    run: node('tests/web/run-web.mjs'),
    seconds: 240,
    needs: ['build', 'browser', 'editor host', 'web editor'],
    count: countReport,
  },
  {
    name: 'another editor',
    run: node('tests/other-editors/run-neovim.mjs'),
    // An installation may be part of it.
    seconds: 300,
    needs: ['build'],
    count: countReport,
  },
];

const results = [];
for (const stage of stages) {
  const result = await runStage(stage);
  results.push(result);
}
summarize();

async function runStage({
  name,
  run,
  seconds,
  needs = [],
  preparation = false,
  linuxOnly = false,
  count = countCheck,
}) {
  if (linuxOnly && process.platform !== 'linux')
    return { name, passed: 0, failed: 0, ms: 0, note: 'not on this system' };
  const broken = needs.filter((need) => results.some((result) => result.name === need && result.failed > 0));
  if (broken.length > 0)
    return { name, passed: 0, failed: 1, ms: 0, note: `not run, as ${broken.join(' and ')} failed` };
  const [command, args] = run;
  console.log(`\n── ${name}`);
  const began = performance.now();
  const { code, timedOut } = await boundedRun(command, args, {
    seconds,
    cwd: root,
    env: { DRYFIT_STAGE_REPORT: reportFile(name) },
  });
  const ms = performance.now() - began;
  const counted = count({ name, code });
  // Tests that passed don't make up for a stage that died, and a stage that reports nothing has not passed.
  if (code !== 0 && counted.failed === 0) counted.failed = 1;
  if (counted.passed + counted.failed + (counted.skipped ?? 0) === 0) counted.failed = 1;
  if (preparation && counted.failed === 0) counted.passed = 0;
  const notes = [timedOut && `stopped after ${seconds} s`, counted.skipped > 0 && `${counted.skipped} skipped`];
  return { name, ...counted, ms, note: notes.filter(Boolean).join(', ') };
}

function unitTests() {
  const report = `--outputFile.json=${reportFile('unit tests')}`;
  return node(
    'node_modules/vitest/vitest.mjs',
    'run',
    '--dir',
    'tests',
    // A busy machine is no fault of a test; what hangs is stopped with its stage.
    '--testTimeout=30000',
    '--hookTimeout=120000',
    // All cores: by itself it leaves one idle.
    '--maxWorkers=100%',
    '--reporter=default',
    '--reporter=json',
    report,
  );
}

function countCheck({ code }) {
  return { passed: code === 0 ? 1 : 0, failed: code === 0 ? 0 : 1 };
}

function countVitest({ name }) {
  const report = readReport(name);
  return {
    passed: report?.numPassedTests ?? 0,
    failed: report?.numFailedTests ?? 0,
    skipped: report?.numPendingTests ?? 0,
  };
}

function countReport({ name }) {
  const report = readReport(name);
  return {
    passed: report?.passed.length ?? 0,
    failed: report?.failed.length ?? 0,
    skipped: report?.skipped.length ?? 0,
  };
}

function readReport(name) {
  const file = reportFile(name);
  return existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')) : undefined;
}

function summarize() {
  const total = (what) => results.reduce((sum, result) => sum + result[what], 0);
  console.log('\n── what ran');
  for (const { name, passed, failed, ms, note } of results) {
    const counts = `${String(passed).padStart(6)} passed ${String(failed).padStart(4)} failed`;
    console.log(`${name.padEnd(18)}${counts}${(ms / 1000).toFixed(1).padStart(8)} s  ${note}`.trimEnd());
  }
  console.log(`${'all'.padEnd(18)}${' '.repeat(26)}${(total('ms') / 1000).toFixed(1).padStart(8)} s\n`);
  process.exitCode = total('failed') > 0 ? 1 : 0;
  console.log(`${total('passed')} passed, ${total('failed')} failed`);
}
