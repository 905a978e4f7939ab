/** Draws client/media/icon.png from icon.svg, by hand when the drawing changes; needs a browser, which a build must not. */
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { openBrowser } from '../../tests/editor/workbench.mjs';
import { end } from '../../tests/support/at-end.mjs';

const media = path.resolve(import.meta.dirname, '../../client/media');
const { page } = await openBrowser({ width: 128, height: 128 });
await page.setContent(
  `<style>*{margin:0}svg{display:block}</style>${readFileSync(path.join(media, 'icon.svg'), 'utf8')}`,
);
await page.screenshot({ path: path.join(media, 'icon.png'), omitBackground: true });
await end();
