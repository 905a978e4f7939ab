/** `node tests/sheet/screenshots.mjs`: each part of the build sheet in the real workbench, in light, dark and high contrast, for three craft, to be looked at by a person; judges nothing. */
import { mkdirSync } from 'node:fs';
import path from 'node:path';
import { root } from '../editor/install-host.mjs';
import { packageExtension } from '../editor/package-extension.mjs';
import { end } from '../support/at-end.mjs';
import { inPanel, openSheet, openWorkbench } from './panel.mjs';

const folder = path.join(root, 'out/screenshots/panel');
mkdirSync(folder, { recursive: true });

const builds = {
  five: ['builds/ossel-5', 'Ossel 5'],
  whoop: ['builds/pip-75', 'Pip 75'],
  seven: ['builds/heron-7', 'Heron 7'],
};
const themes = { light: 'Default Light Modern', dark: 'Default Dark Modern', contrast: 'Default High Contrast' };

try {
  await packageExtension();
  for (const [look, theme] of Object.entries(themes)) {
    const bench = await openWorkbench(`${builds.five[0]}.dryfit.yaml`, { theme, width: 1500, height: 1000 });
    const { page, panel, editor } = bench;
    await page.keyboard.press('Control+B');
    await openSheet(bench, builds.five[1]);
    for (const [craft, [build, name]] of Object.entries(builds)) {
      if (craft !== 'five') {
        await page
          .locator('.editor-group-container')
          .first()
          .click({ position: { x: 60, y: 20 } });
        await editor.open(`${path.basename(build)}.dryfit.yaml`);
        await panel.locator('#head h1', { hasText: name }).waitFor();
      }
      const ids = await inPanel(panel, () => [...document.querySelectorAll('#sheet > *')].map(({ id }) => id));
      for (const id of ids.filter((one) => one !== 'foot' && one !== 'work')) {
        await inPanel(panel, (_, wanted) => document.getElementById(wanted).scrollIntoView(), id);
        await page.waitForTimeout(150);
        await page.screenshot({ path: path.join(folder, `${craft}-${look}-${id}.png`) });
      }
    }
    await end();
  }
} finally {
  await end();
}
