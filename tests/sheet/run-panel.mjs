/** Uses the build sheet in the real workbench page as a person would: it follows edits, keeps its place, leads to the file and back, tries values and writes one. */
import assert from 'node:assert/strict';
import { mkdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';
import { hostSupported, root } from '../editor/install-host.mjs';
import { packageExtension } from '../editor/package-extension.mjs';
import { writeReport } from '../editor/report.mjs';
import { end } from '../support/at-end.mjs';
import { clipped, overlapping } from './labels.mjs';
import { caretBehind, inPanel, openSheet, openWorkbench, runCommand } from './panel.mjs';

const screenshots = path.join(root, 'out/screenshots/sheet');
mkdirSync(screenshots, { recursive: true });
const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

const results = { passed: [], failed: [], skipped: [], errors: [] };
if (!hostSupported) results.skipped.push('the build sheet in the workbench page: its editor runs on Linux only');
else {
  await packageExtension();
  await used('the extension host in Node', {});
  if (!process.argv.includes('--node')) await used("the page's own worker", { web: true });
}
writeReport('sheet panel', results);

async function used(where, look) {
  let bench;
  const step = async (name, act) => {
    if (results.failed.length > 0) return void results.failed.push(`${where}: ${name} (not reached)`);
    try {
      await act();
      results.passed.push(`${where}: ${name}`);
    } catch (error) {
      results.failed.push(`${where}: ${name}`);
      results.errors.push(error.stack);
      await bench?.page.screenshot({ path: path.join(screenshots, 'panel-failure.png') });
    }
  };
  try {
    bench = await openWorkbench('builds/ossel-5.dryfit.yaml', { ...look, height: 2600 });
    await steps(bench, step, look.web);
  } catch (error) {
    results.failed.push(where);
    results.errors.push(error.stack, bench?.host.log() ?? '');
  } finally {
    await end();
  }
}

async function steps(bench, step, web) {
  const { page, panel, editor } = bench;
  const headline = () => panel.locator('#head .headline').textContent();

  await step('opens beside the file with every section', async () => {
    await openSheet(bench, 'Ossel 5');
    const ids = await inPanel(panel, () => [...document.querySelectorAll('#sheet > *')].map(({ id }) => id));
    assert.deepEqual(ids, ['head', 'fit', 'mass', 'fly', 'time', 'power', 'wires', 'wrong', 'work', 'foot']);
    assert.match(await headline(), /659 g ready to fly · 6\.6 A hovering · 4\.3 min as you fly it/);
  });

  // Narrow, as beside a file, and wide.
  const readable = async (name) => {
    for (const width of [1400, 2600]) {
      await page.setViewportSize({ width, height: 2600 });
      await inPanel(panel, async () => {
        for (const section of document.querySelectorAll('#sheet > *')) {
          section.scrollIntoView();
          await new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve, 0)));
        }
        scrollTo(0, 0);
      });
      const across = await inPanel(panel, () => innerWidth);
      const pictures = await inPanel(panel, () => document.querySelectorAll('svg.picture').length);
      assert.ok(pictures >= 7, `${name} has ${pictures} pictures`);
      assert.deepEqual(await inPanel(panel, clipped), [], `${name} at a width of ${across}`);
      assert.deepEqual(await inPanel(panel, overlapping), [], `${name} at a width of ${across}`);
    }
    await page.setViewportSize({ width: 1400, height: 2600 });
  };
  await step('changes on an edit only what differs, and keeps its place', async () => {
    await inPanel(panel, () => {
      document.getElementById('power').scrollIntoView();
      document.querySelector('#wires svg').kept = true;
      document.querySelector('#time svg').kept = true;
      document.querySelector('#rails-numbers').open = true;
      globalThis.blank = 0;
      new MutationObserver(() => {
        if (document.querySelectorAll('#sheet > *').length < 10) globalThis.blank++;
      }).observe(document.getElementById('sheet'), { childList: true });
    });
    // Sections are laid out as they come into sight.
    await page.waitForTimeout(200);
    const before = await inPanel(panel, () => document.getElementById('power').getBoundingClientRect().top);
    assert.ok((await inPanel(panel, () => document.documentElement.scrollTop)) > 300);
    await caretBehind(bench, '120', 'altitude:');
    await page.keyboard.press('End');
    await page.keyboard.press('ArrowLeft');
    await page.keyboard.press('ArrowLeft');
    await page.keyboard.type('0');
    await panel.locator('#head .headline', { hasNotText: '6.6 A hovering' }).waitFor();
    const after = await inPanel(panel, () => ({
      top: document.getElementById('power').getBoundingClientRect().top,
      wires: document.querySelector('#wires svg').kept,
      time: document.querySelector('#time svg').kept,
      open: document.querySelector('#rails-numbers').open,
      blank: globalThis.blank,
    }));
    assert.deepEqual(after, { top: before, wires: true, time: true, open: true, blank: 0 });
    await page.keyboard.press('Backspace');
    await panel.locator('#head .headline', { hasText: '6.6 A hovering' }).waitFor();
  });

  await step('marks what the caret stands in', async () => {
    await inPanel(panel, () => scrollTo(0, 0));
    await caretBehind(bench, 'brunt-2207-1800');
    await panel.locator('.plan .lit[aria-label^="motor, stator 2207"]').first().waitFor();
    const lit = await inPanel(panel, () =>
      [...document.querySelectorAll('#fit .lit')].map((one) => one.getAttribute('aria-label')),
    );
    assert.ok(lit.length > 4 && lit.every((label) => /^(?:\d+ )?motor/.test(label)), lit.join('; '));
    await caretBehind(bench, 'whirl-51363');
    await panel.locator('.plan .lit[aria-label^="propeller"]').first().waitFor();
    assert.equal(await panel.locator('.plan .lit[aria-label^="motor, stator"]').count(), 0);
  });

  await step('leads from a click to the value in the file', async () => {
    await panel.locator('#plan-title').locator('..').locator('[aria-label^="pack main"]').last().dispatchEvent('click');
    await editor.opened('packs.dryfit.yaml');
    const selected = await page.evaluate(() => globalThis.document.querySelectorAll('.selected-text').length);
    assert.ok(selected > 0, 'the value is selected');
    await panel.locator('#head h1', { hasText: 'Ossel 5' }).waitFor();
    await editor.open('ossel-5.dryfit.yaml');
  });

  await step('leads from a key press too', async () => {
    await panel.locator('#wrong .finding').first().focus();
    await page.keyboard.press('Enter');
    await page.waitForFunction(() => document.activeElement?.closest('.monaco-editor') !== null);
  });

  await step('tries a value with a slider, and writes it with a button', async () => {
    const slider = panel.locator('input[data-try="packs.main.capacity"]');
    await slider.focus();
    for (let press = 0; press < 5; press++) await page.keyboard.press('ArrowRight');
    await panel.locator('#head', { hasText: 'Tried, not written: 1400 mAh' }).waitFor();
    assert.equal(await slider.evaluate((one) => document.activeElement === one), true);
    assert.ok(await panel.locator('#time th', { hasText: 'with 1400 mAh' }).count());
    assert.ok(!(await editorText(page)).includes('1400 mAh'));
    await panel.locator('#time .try', { hasText: 'Its weight follows' }).waitFor();
    await panel.locator('button[data-write="packs.main.capacity"]').click();
    await panel.locator('#time .try', { hasText: 'the file says 1400 mAh' }).waitFor();
    await editor.placeOf('capacity: 1400 mAh', 'capacity: 1400 mAh');
  });

  await step('has no serious finding of axe in the panel', async () => {
    const frame = page.frames().find((one) => one.name() === 'active-frame') ?? page.frames().at(-1);
    await frame.evaluate(axe);
    const violations = await frame.evaluate(async () => {
      const found = await globalThis.axe.run('#sheet');
      return found.violations.map(
        ({ id, impact, nodes }) => `${impact} ${id}: ${nodes[0].html.slice(0, 140)} (${nodes.length})`,
      );
    });
    assert.deepEqual(
      violations.filter((one) => /^(serious|critical)/.test(one)),
      [],
    );
  });

  await step('has no label cut off or over another', () => readable('Ossel 5'));

  await step('follows another build', async () => {
    await caretBehind(bench, 'freestyle-5');
    await editor.open('heron-7.dryfit.yaml');
    await panel.locator('#head h1', { hasText: 'Heron 7' }).waitFor();
    await readable('Heron 7');
    await editor.open('pip-75.dryfit.yaml');
    await panel.locator('#head h1', { hasText: 'Pip 75' }).waitFor();
    await readable('Pip 75');
    await editor.open('heron-7.dryfit.yaml');
    await panel.locator('#head h1', { hasText: 'Heron 7' }).waitFor();
  });

  if (!web)
    await step('says that it is drawing when that takes long, and can be told to stop', async () => {
      const [server] = bench.servers();
      assert.ok(server, 'a server runs');
      process.kill(server, 'SIGSTOP');
      try {
        await caretBehind(bench, 'long-range-7');
        await page.keyboard.type('x');
        const told = page.locator('.notification-list-item', { hasText: 'Drawing the build sheet' });
        // A toast may not show in this host; the notification centre always has it.
        const toast = await told
          .first()
          .waitFor({ timeout: 4000 })
          .then(
            () => true,
            () => false,
          );
        if (!toast) await runCommand(page, 'Notifications: Show Notifications');
        await told.first().hover();
        await told.first().getByRole('button', { name: 'Cancel' }).click();
        await told.first().waitFor({ state: 'detached' });
      } finally {
        process.kill(server, 'SIGCONT');
      }
      await caretBehind(bench, 'long-range-7x');
      await page.keyboard.press('Backspace');
      await panel.locator('#head', { hasText: 'long-range-7' }).waitFor();
    });

  await step('is there again when the window is loaded again', async () => {
    // The editor writes down what is open in its own time.
    await page.waitForTimeout(5000);
    await bench.again();
    await panel.locator('#head h1', { hasText: 'Heron 7' }).waitFor({ timeout: 60_000 });
    await panel.locator('#foot').waitFor({ state: 'attached' });
  });

  await step('breaks no rule of its page', async () => {
    const refused = bench.told.filter(
      (line) => /Content Security Policy|Refused to/.test(line) && /sheet|inline/.test(line),
    );
    assert.deepEqual(refused, []);
  });
}

function editorText(page) {
  return page.evaluate(() =>
    [...document.querySelectorAll('.monaco-editor .view-line')]
      .map((line) => line.textContent)
      .join('\n')
      .replaceAll('\u00a0', ' '),
  );
}
