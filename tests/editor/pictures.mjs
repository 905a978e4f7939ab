/** Takes a picture of each help that the editor gives, in the real workbench on the samples, into out/pictures/: for looking at. Asserts only that what was asked for appeared. */
import { cpSync, mkdirSync } from 'node:fs';
import path from 'node:path';
import { end } from '../support/at-end.mjs';
import { editorPage } from './editor-page.mjs';
import { installVsix, startHost } from './host-server.mjs';
import { root } from './install-host.mjs';
import { packageExtension, vsix } from './package-extension.mjs';
import { createProfile } from './profile.mjs';
import { confine, hostUri, openBrowser, workbenchUrl } from './workbench.mjs';

const folder = path.join(root, 'out/pictures');
const only = process.argv.slice(2);
mkdirSync(folder, { recursive: true });
await packageExtension();
const profile = createProfile({ 'workbench.colorTheme': process.env.DRYFIT_THEME ?? 'Default Dark Modern' });
cpSync(path.join(root, 'samples'), profile.workspace, { recursive: true });
await installVsix(profile, vsix);
const host = await startHost(profile);
const { context, page } = await openBrowser({ width: 1360, height: 860 });
page.setDefaultTimeout(30_000);
await confine(context, host.port);
await page.goto(
  workbenchUrl(host.port, {
    folder: profile.workspace,
    payload: [
      ['skipWelcome', 'true'],
      ['openFile', hostUri(host.port, path.join(profile.workspace, 'builds/ossel-5.dryfit.yaml'))],
    ],
  }),
);
const editor = editorPage(page);
const { keyboard } = page;
const input = page.locator('.quick-input-widget input').first();
const menu = page.locator('.action-widget').first();

async function command(title) {
  await keyboard.press('F1');
  await input.waitFor();
  await input.fill(`>${title}`);
  await page.locator('.quick-input-list .monaco-list-row.focused', { hasText: title }).waitFor();
  await keyboard.press('Enter');
}

async function goTo(text, line = text) {
  const { x, y, width, height } = await editor.placeOf(text, line);
  await page.mouse.click(x + Math.min(4, width / 2), y + height / 2);
}

/** What each picture shows, and the way there; every one begins in the file that the last one left open. */
const pictures = {
  async 'lenses-hints-tokens'() {
    await page.locator('.codelens-decoration a').first().waitFor();
  },
  async 'hover-part-with-picture'() {
    await editor.hoverCard('brunt-2207', 'use:');
  },
  async 'hover-stack'() {
    await keyboard.press('Escape');
    await editor.hoverCard('quill', 'use:');
  },
  async 'hover-term'() {
    await keyboard.press('Escape');
    await editor.hoverCard('freestyle-5', 'craft:');
  },
  async 'complete-use'() {
    await keyboard.press('Escape');
    await goTo('brunt-2207', 'use:');
    await keyboard.press('End');
    await keyboard.press('Control+Shift+ArrowLeft');
    await keyboard.press('Control+Shift+ArrowLeft');
    await keyboard.press('Control+Shift+ArrowLeft');
    await keyboard.press('Delete');
    await keyboard.press('Control+Space');
    await page.locator('.suggest-widget.visible .monaco-list-row').first().waitFor();
    await page.waitForTimeout(900);
  },
  async 'complete-keys'() {
    await keyboard.press('Escape');
    await command('Revert File');
    await page.waitForTimeout(600);
    await goTo('brunt-2207', 'use:');
    await keyboard.press('End');
    await keyboard.press('Enter');
    await keyboard.press('Control+Space');
    await page.locator('.suggest-widget.visible .monaco-list-row').first().waitFor();
    await page.waitForTimeout(900);
  },
  async refactorings() {
    await keyboard.press('Escape');
    await command('Revert File');
    await page.waitForTimeout(600);
    await goTo('brunt-2207', 'use:');
    await keyboard.press('Control+Shift+R');
    await menu.waitFor();
  },
  async references() {
    await keyboard.press('Escape');
    await goTo('brunt-2207', 'use:');
    await keyboard.press('Shift+F12');
    await page.locator('.peekview-widget').waitFor();
    await page.waitForTimeout(900);
  },
  async rename() {
    await keyboard.press('Escape');
    await goTo('brunt-2207', 'use:');
    await keyboard.press('F2');
    await page.locator('.rename-box input').waitFor();
  },
  async outline() {
    await keyboard.press('Escape');
    await keyboard.press('Escape');
    await keyboard.press('Control+Shift+O');
    await input.waitFor();
    await page.waitForTimeout(900);
  },
  async 'workspace-symbols'() {
    await keyboard.press('Escape');
    await keyboard.press('Control+T');
    await input.waitFor();
    await input.fill('#brunt');
    await page.locator('.quick-input-list .monaco-list-row', { hasText: 'brunt' }).first().waitFor();
  },
  async folding() {
    await keyboard.press('Escape');
    await command('Fold Level 2');
    await page.waitForTimeout(600);
  },
  async 'part-lens'() {
    await command('Unfold All');
    await editor.open('motors.dryfit.yaml');
    await page.locator('.codelens-decoration', { hasText: 'used by' }).first().waitFor();
  },
  async 'quick-fix'() {
    await editor.open('first-five.dryfit.yaml');
    // The lenses push the lines down when they come.
    await page.locator('.codelens-decoration a').first().waitFor();
    await goTo('XT30', 'plug:');
    await page.waitForTimeout(500);
    await keyboard.press('Control+.');
    await menu.waitFor();
  },
  async 'finding-in-place'() {
    await keyboard.press('Escape');
    await keyboard.press('F8');
    await page.locator('.marker-widget').waitFor();
  },
  async 'new-build-class'() {
    await keyboard.press('Escape');
    await command('Dryfit: New build…');
    await page.locator('.quick-input-list .monaco-list-row').first().waitFor();
    await page.waitForTimeout(500);
  },
  async 'new-build-made'() {
    await keyboard.press('Enter');
    for (let turn = 0; turn < 2; turn++) {
      await page.waitForTimeout(700);
      await keyboard.press('Enter');
    }
    await page.waitForTimeout(4000);
  },
  async 'new-part'() {
    await page.evaluate(() => undefined);
    await command('Dryfit: New part…');
    await page.locator('.quick-input-list .monaco-list-row').first().waitFor();
    await page.waitForTimeout(500);
  },
  async walkthrough() {
    await keyboard.press('Escape');
    await command('Welcome: Open Walkthrough...');
    await input.fill('First steps with Dryfit');
    await page.locator('.quick-input-list .monaco-list-row', { hasText: 'First steps' }).first().waitFor();
    await keyboard.press('Enter');
    await page.locator('.getting-started-step').first().waitFor();
    await page.waitForTimeout(1500);
  },
  async settings() {
    await command('Preferences: Open Settings (UI)');
    await page.locator('.settings-editor .suggest-input-container').waitFor();
    await page.waitForTimeout(800);
    await keyboard.type('dryfit');
    await page.waitForTimeout(2000);
  },
};

let missed = 0;
try {
  await editor.opened('ossel-5.dryfit.yaml');
  await page.locator('.codelens-decoration a').first().waitFor();
  for (const [name, act] of Object.entries(pictures)) {
    if (only.length > 0 && !only.includes(name)) continue;
    try {
      await act();
      console.log(name);
    } catch (error) {
      missed++;
      console.error(`${name}: ${error.message.split('\n')[0]}`);
    }
    await page.screenshot({ path: path.join(folder, `${name}.png`) });
  }
} finally {
  await end();
}
console.log(`${path.relative(root, folder)}: ${missed} without what was asked for`);
process.exitCode = missed > 0 ? 1 : 0;
