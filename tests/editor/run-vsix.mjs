/** Installs the packed extension into a fresh profile and uses it in the workbench page as a person would; every word of a screenshot is asserted too. */
import assert from 'node:assert/strict';
import { cpSync, mkdirSync } from 'node:fs';
import path from 'node:path';
import { end } from '../support/at-end.mjs';
import { editorPage } from './editor-page.mjs';
import { installVsix, startHost } from './host-server.mjs';
import { hostSupported, root } from './install-host.mjs';
import { packageExtension, vsix } from './package-extension.mjs';
import { createProfile } from './profile.mjs';
import { writeReport } from './report.mjs';
import { confine, hostUri, openBrowser, workbenchUrl } from './workbench.mjs';

const faulty = 'editor-tests/ill-matched.dryfit.yaml';
const screenshots = path.join(root, 'out/screenshots');
mkdirSync(screenshots, { recursive: true });

const results = { passed: [], failed: [], skipped: [], errors: [] };
if (!hostSupported) {
  results.skipped.push('the packed extension in the workbench page: its editor runs on Linux only');
} else {
  await packageExtension();
  await inWorkbench(async ({ page, editor, step }) => {
    const picture = (name) => page.screenshot({ path: path.join(screenshots, `${name}.png`) });

    await step('opens a build with the packed extension', () => editor.opened(path.basename(faulty)));

    await step('underlines the faulty value and nothing beside it', async () => {
      assert.deepEqual(await editor.underlined('error'), ['6S']);
    });

    await step('says in the Problems panel what is wrong', async () => {
      const problems = await editor.problems();
      assert.ok(
        problems.some((row) => row.includes('toy says 6S')),
        problems.join('\n'),
      );
      await picture('problems');
    });

    await step('shows the card over the name of the build', async () => {
      const card = await editor.hoverCard('Ill matched', 'name');
      assert.match(card, /toy hover/);
      await picture('hover');
    });

    await step('offers the terms of the trade with an explanation each', async () => {
      const { labels, explanation } = await editor.completion('craft', 'toyAlpha');
      assert.ok(labels.includes('toyAlpha'), labels.join(', '));
      assert.match(explanation, /toy/);
      await picture('completion');
    });
  });
}
writeReport('packed extension', results);

/** Steps build on each other: after one that fails the rest counts as failed, as nobody saw it work. */
async function inWorkbench(use) {
  let host;
  try {
    const profile = createProfile();
    cpSync(path.join(root, 'samples'), profile.workspace, { recursive: true });
    cpSync(path.join(import.meta.dirname, 'fixtures'), path.join(profile.workspace, 'editor-tests'), {
      recursive: true,
    });
    await installVsix(profile, vsix);
    host = await startHost(profile);
    const { context, page } = await openBrowser();
    page.setDefaultTimeout(20_000);
    await confine(context, host.port);
    await page.goto(
      workbenchUrl(host.port, {
        folder: profile.workspace,
        payload: [
          ['skipWelcome', 'true'],
          ['openFile', hostUri(host.port, path.join(profile.workspace, faulty))],
        ],
      }),
    );
    const step = async (name, act) => {
      if (results.failed.length > 0) {
        results.failed.push(`${name} (not reached)`);
        return;
      }
      try {
        await act();
        results.passed.push(name);
      } catch (error) {
        results.failed.push(name);
        results.errors.push(error.stack);
        await page.screenshot({ path: path.join(screenshots, 'failure.png') });
      }
    };
    await use({ page, editor: editorPage(page), step });
  } catch (error) {
    results.failed.push('workbench');
    results.errors.push(error.stack, host?.log() ?? '');
  } finally {
    await end();
  }
}
