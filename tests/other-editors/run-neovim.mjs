/** Neovim as a client of another kind: over `dryfit lsp` it must show a sample's findings as the command line has them, and the card as a hover. */
import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { cpSync, existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { root } from '../editor/install-host.mjs';
import { writeReport } from '../editor/report.mjs';
import { atEnd, end } from '../support/at-end.mjs';
import { boundedRun } from '../support/bounded-run.mjs';
import { ensureNeovim } from './install-neovim.mjs';

const sample = 'faulty/mixed-stack.dryfit.yaml';
const cli = path.join(root, 'dist/cli.cjs');
const results = { passed: [], failed: [], skipped: [], errors: [] };

const { path: neovim, why } = ensureNeovim();
if (neovim) await use();
else results.skipped.push(`findings and hover in Neovim: ${why}`);
await end();
writeReport('another editor', results);

async function use() {
  const dir = mkdtempSync(path.join(tmpdir(), 'dryfit-'));
  atEnd(() => rmSync(dir, { recursive: true, force: true }));
  cpSync(path.join(root, 'samples'), path.join(dir, 'samples'), { recursive: true });
  const wanted = commandLine();
  const answerFile = path.join(dir, 'answer.json');
  const { code, output } = await boundedRun(
    neovim,
    ['--headless', '--clean', '-c', `luafile ${path.join(import.meta.dirname, 'client.lua')}`],
    {
      seconds: 60,
      cwd: dir,
      quiet: true,
      env: {
        HOME: dir,
        XDG_STATE_HOME: dir,
        DRYFIT_FILE: path.join(dir, 'samples', sample),
        DRYFIT_ROOT: path.join(dir, 'samples'),
        DRYFIT_COMMAND: JSON.stringify([process.execPath, cli, 'lsp']),
        DRYFIT_COUNT: String(wanted.length),
        DRYFIT_ANSWER: answerFile,
      },
    },
  );
  const answer = existsSync(answerFile) ? JSON.parse(readFileSync(answerFile, 'utf8')) : { error: output };
  if (answer.version) console.log(`Ran in ${answer.version}`);
  test('Neovim ends by itself and without an error', () => assert.deepEqual([code, answer.error], [0, undefined]));
  test('findings in Neovim are those of the command line', () => {
    const line = (finding) => JSON.stringify([finding.check, finding.message, finding.start, finding.end]);
    assert.ok(wanted.length > 10);
    assert.deepEqual(answer.findings.map(line).sort(), wanted.map(line).sort());
  });
  test('the card is a hover in Neovim', () => assert.match(String(answer.hover), /\d g\b[\s\S]*\d min\b/));
}

function test(name, act) {
  try {
    act();
    results.passed.push(name);
  } catch (error) {
    results.failed.push(name);
    results.errors.push(error.stack);
  }
}

function commandLine() {
  const { stdout } = spawnSync(process.execPath, [cli, 'check', sample, '--format', 'json'], {
    cwd: path.join(root, 'samples'),
    encoding: 'utf8',
    timeout: 30_000,
  });
  // Neovim counts columns in bytes; the sample has none but plain letters at the places found.
  return JSON.parse(stdout).findings.map(({ check, message, range: { start, end: stop } }) => ({
    check,
    message,
    start: [start.line, start.character],
    end: [stop.line, stop.character],
  }));
}
