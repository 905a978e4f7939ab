/** Opens the build sheet in the real workbench page with the packed extension, and reads what its panel shows; asserts nothing. */
import { spawnSync } from 'node:child_process';
import { cpSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { editorPage } from '../editor/editor-page.mjs';
import { installVsix, startHost } from '../editor/host-server.mjs';
import { root } from '../editor/install-host.mjs';
import { vsix } from '../editor/package-extension.mjs';
import { createProfile } from '../editor/profile.mjs';
import { confine, hostUri, openBrowser, workbenchUrl } from '../editor/workbench.mjs';

/** @param {{ theme?: string, width?: number, height?: number, web?: boolean }} look */
export async function openWorkbench(build, { theme, width = 1400, height = 900, web = false } = {}) {
  const own = {
    ...(theme ? { 'workbench.colorTheme': theme, 'window.autoDetectColorScheme': false } : {}),
    ...(web ? { 'remote.extensionKind': { 'dryfit.dryfit': ['web'] } } : {}),
    'workbench.activityBar.location': 'hidden',
    'workbench.statusBar.visible': false,
  };
  const profile = createProfile(own);
  cpSync(path.join(root, 'samples'), profile.workspace, { recursive: true });
  await installVsix(profile, vsix);
  const host = await startHost(profile);
  const { context, page } = await openBrowser({ width, height });
  page.setDefaultTimeout(20_000);
  await confine(context, host.port);
  const told = [];
  page.on('console', (message) => told.push(message.text()));
  const go = (file) =>
    page.goto(
      workbenchUrl(host.port, {
        folder: profile.workspace,
        payload: [
          ['skipWelcome', 'true'],
          ...(file === undefined ? [] : [['openFile', hostUri(host.port, path.join(profile.workspace, file))]]),
        ],
      }),
    );
  await go(build);
  const editor = editorPage(page);
  await editor.opened(path.basename(build));
  return {
    page,
    editor,
    host,
    told,
    /** The window again with what was open in it; one that is asked to open a file shows that alone. */
    again: () => go(undefined),
    panel: page.frameLocator('iframe.webview.ready').frameLocator('iframe#active-frame'),
    /** Language servers of this profile's extension alone. */
    servers() {
      const { stdout } = spawnSync('ps', ['-eo', 'pid,args'], { encoding: 'utf8', timeout: 10_000 });
      return stdout
        .split('\n')
        .filter((row) => row.includes(`${profile.serverData}/extensions/`) && row.includes('dist/server.cjs'))
        .map((row) => Number.parseInt(row, 10));
    },
    text: (file) => readFileSync(path.join(profile.workspace, file), 'utf8'),
  };
}

/** Runs a command by its title. The list of commands is made when it opens, so it is opened until the command is in it. */
export async function runCommand(page, title) {
  const input = page.locator('.quick-input-widget input').first();
  for (let attempt = 0; ; attempt++) {
    await page.keyboard.press('F1');
    const found = await input
      .fill(`>${title}`, { timeout: 5000 })
      .then(() =>
        page
          .locator('.quick-input-list .monaco-list-row.focused', { hasText: title.replace(/^.*: /, '') })
          .waitFor({ timeout: 4000 }),
      )
      .then(
        () => true,
        () => false,
      );
    if (found) break;
    if (attempt === 6) throw new Error(`The palette offers no "${title}"`);
    await page.keyboard.press('Escape');
  }
  await page.keyboard.press('Enter');
}

/** Opens the sheet and waits until it is drawn. */
export async function openSheet({ page, panel }, name) {
  await runCommand(page, 'Dryfit: Open build sheet');
  // The first panel of a page registers a service worker, which takes its time on a busy machine.
  await panel.locator('#head h1', { hasText: name }).waitFor({ timeout: 60_000 });
  await panel.locator('#foot').waitFor({ state: 'attached' });
}

/** Puts the caret behind a text of the line that holds `line`. */
export async function caretBehind({ page, editor }, text, line = text) {
  const { x, y, width, height } = await editor.placeOf(text, line);
  await page.mouse.click(x + width - 1, y + height / 2);
}

/** A value inside the panel's page. */
export const inPanel = (panel, act, given) => panel.locator('body').evaluate(act, given);
