#!/usr/bin/env node
/** Stands in for the desktop editor's executable: takes the arguments of @vscode/test-electron, runs the suite in the npm-shipped host and exits with its code. */
import path from 'node:path';
import { end } from '../support/at-end.mjs';
import { startHost } from './host-server.mjs';
import { createProfile } from './profile.mjs';
import { confine, hostUri, openBrowser, workbenchUrl } from './workbench.mjs';

const seconds = Number(process.env.DRYFIT_SUITE_SECONDS ?? 180);
const option = (name) => process.argv.find((arg) => arg.startsWith(`--${name}=`))?.slice(name.length + 3);
const folder = process.argv.slice(2).find((arg) => !arg.startsWith('--'));
const extension = option('extensionDevelopmentPath');
const tests = option('extensionTestsPath');
if (!folder || !extension || !tests) {
  console.error(
    'code-shim runs extension tests only: it needs a folder, extensionDevelopmentPath and extensionTestsPath.',
  );
  process.exit(64);
}

let host;
let code = 1;
try {
  host = await startHost(createProfile(), { development: true });
  const { context, page } = await openBrowser();
  await confine(context, host.port);
  code = await runSuite(page, host);
} catch (error) {
  console.error(error);
  if (host) console.error(host.log());
} finally {
  await end();
}
process.exit(code);

async function runSuite(page, { port, gone }) {
  // The page hands over the console of the editor itself too, which would bury the results.
  await page.exposeFunction('codeAutomationLog', (type, args) => {
    if (process.env.DRYFIT_EDITOR_VERBOSE) console.log(`[${type}]`, ...args);
  });
  let finish;
  const finished = new Promise((resolve) => {
    finish = resolve;
  });
  await page.exposeFunction('codeAutomationExit', finish);
  const url = workbenchUrl(port, {
    folder: path.resolve(folder),
    payload: [
      ['extensionDevelopmentPath', hostUri(port, path.resolve(extension))],
      ['extensionTestsPath', hostUri(port, path.resolve(tests))],
      ['skipWelcome', 'true'],
    ],
  });
  const broken = new Promise((_, reject) => {
    page.once('crash', () => reject(new Error('The workbench page crashed.')));
    gone.then(() => reject(new Error("The editor's server ended before the suite did.")));
    setTimeout(() => reject(new Error(`The suite did not end within ${seconds} s.`)), seconds * 1000).unref();
  });
  const [exitCode] = await Promise.all([Promise.race([finished, broken]), page.goto(url)]);
  return exitCode;
}
