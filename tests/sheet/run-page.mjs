/** Opens exported sheets from disk in a real browser with the network off: no console error, no request, no serious finding of axe, nothing clipped. */
import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { chromium } from 'playwright-core';
import { ensureChromium } from '../editor/chromium.mjs';
import { writeReport } from '../editor/report.mjs';
import { atEnd, end } from '../support/at-end.mjs';
import { clipped, overlapping } from './labels.mjs';

const root = path.resolve(import.meta.dirname, '../..');
const screenshots = path.join(root, 'out/screenshots/sheet');
mkdirSync(screenshots, { recursive: true });
const folder = mkdtempSync(path.join(tmpdir(), 'dryfit-sheet-'));
atEnd(() => rmSync(folder, { recursive: true, force: true }));
const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

const builds = {
  whoop: 'builds/pip-75',
  'five inch': 'builds/ossel-5',
  'seven inch': 'builds/heron-7',
  faulty: 'faulty/mixed-stack',
};
const looks = [
  ['light', { colorScheme: 'light' }],
  ['dark', { colorScheme: 'dark' }],
  ['high contrast', { colorScheme: 'dark', forcedColors: 'active' }],
];
const widths = [420, 1000];

const results = { passed: [], failed: [], skipped: [], errors: [] };
async function check(name, act) {
  try {
    await act();
    results.passed.push(name);
  } catch (error) {
    results.failed.push(name);
    results.errors.push(`${name}\n${error.stack}`);
  }
}

const browser = await chromium.launch({
  executablePath: ensureChromium().path,
  args: ['--disable-gpu', ...(process.getuid?.() === 0 ? ['--no-sandbox'] : [])],
});
atEnd(() => browser.close());

for (const [craft, build] of Object.entries(builds))
  for (const form of ['.html', '.pdf-ready.html']) {
    const file = path.join(folder, `${craft.replace(' ', '-')}${form}`);
    execFileSync(process.execPath, ['dist/cli.cjs', 'sheet', `samples/${build}.dryfit.yaml`, '-o', file], {
      cwd: root,
      timeout: 60_000,
    });
    for (const [look, media] of looks) {
      if (form !== '.html' && look !== 'light') continue;
      await check(`${craft}, ${form}, ${look}`, () => inspect(file, craft, look, media));
    }
  }

async function inspect(file, craft, look, media) {
  const context = await browser.newContext({ offline: true, viewport: { width: widths[1], height: 1200 }, ...media });
  try {
    const page = await context.newPage();
    const told = [];
    const asked = [];
    page.on('console', (message) => told.push(message.text()));
    page.on('pageerror', (error) => told.push(String(error)));
    page.on('request', (request) => asked.push(request.url()));
    const address = pathToFileURL(file).href;
    await page.goto(address);
    assert.deepEqual(asked, [address]);
    await page.evaluate(axe);
    const { violations, passes } = await page.evaluate(() => globalThis.axe.run());
    assert.ok(passes.length > 15, `axe looked at ${passes.length} rules only`);
    assert.deepEqual(
      violations.map(({ id, impact, nodes }) => `${impact} ${id}: ${nodes[0].html.slice(0, 160)} (${nodes.length})`),
      [],
    );
    for (const width of widths) {
      await page.setViewportSize({ width, height: 1200 });
      assert.deepEqual(await page.evaluate(clipped), [], `at a width of ${width}`);
      assert.deepEqual(await page.evaluate(overlapping), [], `at a width of ${width}`);
      const wide = await page.evaluate(() => document.documentElement.scrollWidth);
      assert.ok(wide <= width, `the page is ${wide} wide in a window of ${width}`);
    }
    assert.deepEqual(told, []);
    // To be looked at by a person; most of the time of a run.
    if (!process.argv.includes('--screenshots') || file.endsWith('.pdf-ready.html')) return;
    for (const section of await page.locator('section').all())
      await section.screenshot({
        path: path.join(screenshots, `${craft}-${look}-${await section.getAttribute('id')}.png`.replaceAll(' ', '-')),
      });
  } finally {
    await context.close();
  }
}

await end();
writeReport('sheet page', results);
