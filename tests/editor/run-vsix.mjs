/** Installs the packed extension into a fresh profile and uses it in the workbench page as a person would; every word of a screenshot is asserted too. */
import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { end } from '../support/at-end.mjs';
import { editorPage } from './editor-page.mjs';
import { installVsix, startHost } from './host-server.mjs';
import { hostSupported, root } from './install-host.mjs';
import { packageExtension, vsix } from './package-extension.mjs';
import { createProfile } from './profile.mjs';
import { writeReport } from './report.mjs';
import { confine, hostUri, openBrowser, workbenchUrl } from './workbench.mjs';

const faulty = 'faulty/first-five.dryfit.yaml';
const sound = 'builds/ossel-5.dryfit.yaml';
const screenshots = path.join(root, 'out/screenshots');
mkdirSync(screenshots, { recursive: true });

const results = { passed: [], failed: [], skipped: [], errors: [] };
if (!hostSupported) {
  results.skipped.push('the packed extension in the workbench page: its editor runs on Linux only');
} else {
  await packageExtension();
  await inWorkbench(async ({ page, editor, step, servers }) => {
    const picture = (name) => page.screenshot({ path: path.join(screenshots, `${name}.png`) });

    await step('opens a faulty build with the packed extension', () => editor.opened(path.basename(faulty)));

    await step('says in the Problems panel what is wrong', async () => {
      const problems = await editor.problems('M3x10 through 5 mm of arm');
      const wanted = /Fire risk: M3x10 through 5 mm of arm goes 5 mm into the motor; it has 4 mm of thread\./;
      assert.ok(
        problems.some((row) => wanted.test(row)),
        problems.join('\n'),
      );
    });

    await step(
      'leads from the problem to the faulty value, underlined as all others are and nothing else',
      async () => {
        await editor.goToProblem('M3x10 through 5 mm of arm');
        const underlined = await editor.underlined('error');
        assert.ok(underlined.includes('M3x10 button'), underlined.join(', '));
        const expected = faultyTexts();
        for (const text of underlined) assert.ok(expected.includes(text), `"${text}" is underlined, not ${expected}`);
        await picture('problems');
      },
    );

    await step('offers the terms of the trade with an explanation each', async () => {
      const { labels, explanation } = await editor.completion('plug', 'XT60');
      assert.ok(labels.includes('XT30') && labels.includes('XT60'), labels.join(', '));
      assert.match(explanation, /Two 3\.5 mm bullets/);
      await picture('completion');
    });

    await step('keeps its findings when the server crashes, starts it again and says so', async () => {
      const words = 'M3x10 through 5 mm of arm';
      const header = async () => (await editor.problems(words)).find((row) => row.startsWith(path.basename(faulty)));
      const before = await header();
      assert.match(before ?? '', /\d+$/);
      const [old] = servers();
      assert.ok(old, 'a server runs');
      process.kill(old, 'SIGKILL');
      const until = Date.now() + 15_000;
      while (!servers().some((pid) => pid !== old) && Date.now() < until) await page.waitForTimeout(100);
      assert.ok(
        servers().some((pid) => pid !== old),
        'another server runs',
      );
      assert.ok((await editor.told('checker stopped by itself and was started again')).length > 0);
      // The number of findings of this file, as the panel counts them.
      assert.equal(await header(), before);
      await editor.goToProblem(words);
    });

    await step(
      'shows the card of a sound build over its name: weight, current and time with their ranges',
      async () => {
        await editor.closePanel();
        await editor.open(path.basename(sound));
        await editor.hoverCard('Ossel 5', 'name:');
        assert.match(await editor.inCard('as you fly it'), /\d min \([\d.]+ to [\d.]+\)/);
        assert.match(await editor.inCard('current while hovering'), /\d A \([\d.]+ to [\d.]+\)/);
        await picture('hover-time-and-current');
        assert.match(await editor.inCard('ready to fly'), /\d g \([\d.]+ to [\d.]+\)/);
        await picture('hover-weight');
      },
    );
  });
}
writeReport('packed extension', results);

/** What the command line calls an error in the faulty build, as it stands in the file. */
function faultyTexts() {
  const { stdout } = spawnSync(
    process.execPath,
    [path.join(root, 'dist/cli.cjs'), 'check', faulty, '--format', 'json'],
    {
      cwd: path.join(root, 'samples'),
      encoding: 'utf8',
      timeout: 20_000,
    },
  );
  const lines = readFileSync(path.join(root, 'samples', faulty), 'utf8').split('\n');
  return JSON.parse(stdout)
    .findings.filter(({ severity }) => severity === 'error')
    .map(({ range: { start, end } }) => lines[start.line].slice(start.character, end.character));
}

/** Language servers of this profile's extension alone. */
function serversOf({ serverData }) {
  const { stdout } = spawnSync('ps', ['-eo', 'pid,args'], { encoding: 'utf8', timeout: 10_000 });
  return stdout
    .split('\n')
    .filter((line) => line.includes(`${serverData}/extensions/`) && line.includes('dist/server.cjs'))
    .map((line) => Number.parseInt(line, 10));
}

/** Steps build on each other: after one that fails the rest counts as failed, as nobody saw it work. */
async function inWorkbench(use) {
  let host;
  try {
    const profile = createProfile();
    cpSync(path.join(root, 'samples'), profile.workspace, { recursive: true });
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
    await use({ page, editor: editorPage(page), step, servers: () => serversOf(profile) });
  } catch (error) {
    results.failed.push('workbench');
    results.errors.push(error.stack, host?.log() ?? '');
  } finally {
    await end();
  }
}
