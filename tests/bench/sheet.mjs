/** `node tests/bench/sheet.mjs`: from a key press in the workbench page to the redrawn build sheet beside it, and the server's share of that; a benchmark to read, never a test that fails. */

import { readFileSync } from 'node:fs';
import { cpus } from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { root } from '../editor/install-host.mjs';
import { packageExtension } from '../editor/package-extension.mjs';
import { caretBehind, inPanel, openSheet, openWorkbench } from '../sheet/panel.mjs';
import { end } from '../support/at-end.mjs';
import { TimedServer } from './timed-server.mjs';

const presses = 40;

try {
  if (!process.argv.includes('--server')) await packageExtension();
  console.log(
    `${cpus()[0]?.model.trim() ?? 'unknown processor'}, ${cpus().length} cores, Node ${process.versions.node}\n`,
  );
  console.log('| the server alone: edit and sheet | median ms | p95 | CPU ms each |\n|---|---|---|---|');
  for (const build of ['builds/ossel-5', 'builds/pip-75', 'builds/heron-7']) await serverAlone(build);
  if (process.argv.includes('--server')) process.exit();
  console.log('\n| sheet of | extension runs in | presses | median ms | p95 | longest | the letter itself, median |');
  console.log('|---|---|---|---|---|---|---|');
  for (const [host, web] of [
    ['Node', false],
    ["the page's worker", true],
  ])
    for (const [build, name] of [
      ['builds/ossel-5.dryfit.yaml', 'Ossel 5'],
      ['builds/pip-75.dryfit.yaml', 'Pip 75'],
    ]) {
      const { median, p95, most, letter } = await measure(build, name, 'altitude: 120 m', web);
      const times = [median, p95, most, letter].map((time) => time.toFixed(0));
      console.log(`| ${[name, host, presses, ...times].join(' | ')} |`);
      await end();
    }
} finally {
  await end();
}

async function measure(build, name, value, web) {
  const bench = await openWorkbench(build, { web });
  const { page, panel } = bench;
  await openSheet(bench, name);
  await inPanel(panel, () => {
    globalThis.drawn = [];
    const now = () => performance.timeOrigin + performance.now();
    new MutationObserver(() => {
      const one = { put: now(), painted: undefined };
      globalThis.drawn.push(one);
      // The frame after the one in which it was put in place: then it is on the screen.
      requestAnimationFrame(() =>
        setTimeout(() => {
          one.painted = now();
        }, 0),
      );
    }).observe(document.getElementById('sheet'), {
      childList: true,
      subtree: true,
      characterData: true,
      attributes: true,
    });
  });
  await page.evaluate(() => {
    globalThis.pressed = [];
    const now = () => performance.timeOrigin + performance.now();
    addEventListener('keydown', () => globalThis.pressed.push(now()), true);
    // What the machine takes for the letter alone, to hold the rest against.
    globalThis.letters = [];
    new MutationObserver(() => {
      requestAnimationFrame(() => setTimeout(() => globalThis.letters.push(now()), 0));
    }).observe(document.querySelector('.monaco-editor .view-lines'), {
      childList: true,
      subtree: true,
      characterData: true,
    });
  });
  // Go to the line by its number: it may not be in sight yet.
  const line =
    bench
      .text(build)
      .split('\n')
      .findIndex((text) => text.includes(value)) + 1;
  await caretBehind(bench, 'name:');
  await page.keyboard.press('Control+G');
  await page.locator('.quick-input-widget input').first().fill(`:${line}`);
  await page.keyboard.press('Enter');
  await page.keyboard.press('End');
  await page.keyboard.press('ArrowLeft');
  await page.keyboard.press('ArrowLeft');
  const times = [];
  const paints = [];
  for (let press = 0; press < presses + 5; press++) {
    await page.evaluate(() => {
      globalThis.pressed.length = 0;
      globalThis.letters.length = 0;
    });
    await inPanel(panel, () => {
      globalThis.drawn.length = 0;
    });
    // A digit comes and goes: 120 m, 1205 m, 120 m.
    await page.keyboard.press(press % 2 === 0 ? '5' : 'Backspace');
    await page.waitForTimeout(1200);
    const [pressed, letter] = await page.evaluate(() => [globalThis.pressed[0], globalThis.letters[0]]);
    const [first] = await inPanel(panel, () => globalThis.drawn);
    if (!first) throw new Error('nothing was drawn within 1.2 s of a key press');
    // The first few warm everything up.
    if (press < 5) continue;
    times.push(first.painted - pressed);
    paints.push(letter - pressed);
  }
  const at = (list, share) =>
    [...list].sort((a, b) => a - b)[Math.min(list.length - 1, Math.floor(list.length * share))];
  return { median: at(times, 0.5), p95: at(times, 0.95), most: Math.max(...times), letter: at(paints, 0.5) };
}

/** One process of the server over stdio: a character comes or goes, and the sheet is asked for. */
async function serverAlone(build) {
  const samples = path.join(root, 'samples');
  const uri = pathToFileURL(path.join(samples, `${build}.dryfit.yaml`)).href;
  const text = readFileSync(path.join(samples, `${build}.dryfit.yaml`), 'utf8');
  const server = new TimedServer([process.execPath, path.join(root, 'dist/server.cjs'), '--stdio'], {
    folder: pathToFileURL(samples).href,
  });
  await server.initialize();
  await server.connection.sendNotification('textDocument/didOpen', {
    textDocument: { uri, languageId: 'dryfit', version: 1, text },
  });
  const times = [];
  let cpu = 0;
  for (let version = 2; version < presses + 12; version++) {
    if (version === 12) cpu = server.cpu();
    const before = performance.now();
    await server.connection.sendNotification('textDocument/didChange', {
      textDocument: { uri, version },
      contentChanges: [{ text: text.replace('altitude: 120 m', `altitude: ${version % 2 ? 120 : 1205} m`) }],
    });
    await server.connection.sendRequest('dryfit/sheet', { uri });
    if (version >= 12) times.push(performance.now() - before);
  }
  const each = (server.cpu() - cpu) / times.length;
  server.stop();
  const at = (share) => [...times].sort((a, b) => a - b)[Math.floor(times.length * share)];
  console.log(`| ${build} | ${at(0.5).toFixed(0)} | ${at(0.95).toFixed(0)} | ${each.toFixed(0)} |`);
}
