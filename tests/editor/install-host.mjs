/** Puts a real editor (its server, extension host and workbench page) into .editor-host/ from the npm registry alone; runs no install script. */
import { execFileSync } from 'node:child_process';
import { copyFileSync, existsSync, mkdirSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';

const editorVersion = '4.139.1';
// This editor needs Node 24, whichever Node runs the tests.
const nodeVersion = '24.21.0';

export const root = path.resolve(import.meta.dirname, '../..');
const cache = process.env.DRYFIT_EDITOR_HOST ?? path.join(root, '.editor-host');
const hostDir = path.join(cache, `${editorVersion}-${nodeVersion}`);
const editorPath = 'node_modules/code-server/lib/vscode';

export const hostNode = path.join(hostDir, `node_modules/node-linux-${process.arch}/bin/node`);
export const hostServer = path.join(hostDir, editorPath, 'out/server-main.js');

export const hostSupported = process.platform === 'linux' && ['x64', 'arm64'].includes(process.arch);

/** @returns whether anything had to be installed */
export function installHost() {
  if (!hostSupported) {
    throw new Error(
      `The editor for tests runs on Linux (x64, arm64) only; this is ${process.platform} ${process.arch}.`,
    );
  }
  if (existsSync(hostServer)) return false;
  // Built beside its final place and moved there when whole, so that a broken-off install is never taken for a host.
  const making = `${hostDir}.${process.pid}`;
  rmSync(making, { recursive: true, force: true });
  mkdirSync(making, { recursive: true });
  try {
    const dependencies = { 'code-server': editorVersion, [`node-linux-${process.arch}`]: nodeVersion };
    writeFileSync(path.join(making, 'package.json'), JSON.stringify({ private: true, dependencies }));
    npmInstall(making);
    const editor = path.join(making, editorPath);
    npmInstall(editor, '--omit=dev');
    for (const name of ['spdlog', 'native-watchdog']) {
      const stub = path.join(import.meta.dirname, 'stubs', `${name}.cjs`);
      copyFileSync(stub, path.join(editor, 'node_modules/@vscode', name, 'index.js'));
    }
    for (const unused of ['extensions/copilot', 'extensions/mermaid-markdown-features', 'node_modules/@github']) {
      rmSync(path.join(editor, unused), { recursive: true, force: true });
    }
    rmSync(hostDir, { recursive: true, force: true });
    renameSync(making, hostDir);
  } finally {
    rmSync(making, { recursive: true, force: true });
  }
  return true;
}

function npmInstall(cwd, ...more) {
  const args = ['install', '--ignore-scripts', '--no-audit', '--no-fund', '--loglevel=error', ...more];
  try {
    execFileSync('npm', args, { cwd, stdio: ['ignore', 'pipe', 'pipe'], timeout: 10 * 60_000 });
  } catch (error) {
    throw new Error(`npm could not install the editor for tests: ${error.stderr || error.message}`);
  }
}

if (process.argv[1] === import.meta.filename) {
  try {
    console.log(installHost() ? `Editor host installed: ${hostServer}` : `Editor host already there: ${hostServer}`);
  } catch (error) {
    console.error(error.message);
    process.exitCode = 1;
  }
}
