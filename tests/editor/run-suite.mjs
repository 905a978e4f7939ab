/** Runs the mocha suite inside an extension host: the desktop editor's where one can be had, the npm-shipped one elsewhere. */
import { cpSync, existsSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { runTests } from '@vscode/test-electron';
import { atEnd, end } from '../support/at-end.mjs';
import { hostSupported, root } from './install-host.mjs';
import { createProfile } from './profile.mjs';
import { writeReport } from './report.mjs';

const given = process.env.VSCODE_EXECUTABLE_PATH;
const download = !given && (process.env.DRYFIT_DOWNLOAD_VSCODE === '1' || !hostSupported);
const host = given ?? (download ? undefined : path.join(import.meta.dirname, 'code-shim.mjs'));
console.log(`Extension host: ${given ? given : download ? 'desktop editor, downloaded' : 'npm-shipped editor'}`);

const profile = createProfile();
const report = path.join(profile.dir, 'report.json');
let failure;
try {
  // The suite writes into its workspace, and the samples must stay as they are.
  cpSync(path.join(root, 'samples'), profile.workspace, { recursive: true });
  cpSync(path.join(import.meta.dirname, 'fixtures'), path.join(profile.workspace, 'editor-tests'), { recursive: true });
  const running = runTests({
    vscodeExecutablePath: host,
    cachePath: path.join(root, '.editor-host/desktop'),
    extensionDevelopmentPath: root,
    extensionTestsPath: path.join(root, 'out/editor-suite/index.cjs'),
    launchArgs: [
      profile.workspace,
      `--user-data-dir=${profile.desktopData}`,
      `--extensions-dir=${profile.extensions}`,
      '--disable-extensions',
    ],
    extensionTestsEnv: { DRYFIT_EDITOR_REPORT: report },
  });
  // The host gets the same Ctrl-C and has more to tidy up.
  atEnd(() => running.catch(() => {}));
  await running;
} catch (error) {
  failure = error;
}
const results = existsSync(report) ? JSON.parse(readFileSync(report, 'utf8')) : { passed: [], failed: [], skipped: [] };
await end();
if (results.host) console.log(`Ran in ${results.host}`);
// Passing tests don't make up for a host that died afterwards, nor for a suite that never ran.
if (failure && results.failed.length === 0) results.failed.push(`extension host: ${failure.message}`);
if (results.passed.length + results.failed.length === 0) results.failed.push('extension host: no test ran');
writeReport('editor suite', results);
