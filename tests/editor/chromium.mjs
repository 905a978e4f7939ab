/** Finds a Chrome or Chromium for the editor tests and installs one where none is; must not touch a browser that is there. */
import { execFileSync } from 'node:child_process';
import { accessSync, constants, existsSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { chromium } from 'playwright-core';

const names = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'microsoft-edge'];
const macApps = ['Google Chrome', 'Chromium', 'Microsoft Edge'];

/** The path of a browser, or undefined. DRYFIT_CHROMIUM names one outright. */
export function findChromium() {
  const onPath = (process.env.PATH ?? '')
    .split(path.delimiter)
    .flatMap((dir) => names.map((name) => path.join(dir, name)));
  const candidates = [
    process.env.DRYFIT_CHROMIUM,
    ...onPath,
    ...macApps.map((app) => `/Applications/${app}.app/Contents/MacOS/${app}`),
    ...[process.env.PROGRAMFILES, process.env['PROGRAMFILES(X86)']].flatMap((dir) =>
      dir
        ? [
            path.join(dir, 'Google/Chrome/Application/chrome.exe'),
            path.join(dir, 'Microsoft/Edge/Application/msedge.exe'),
          ]
        : [],
    ),
    chromium.executablePath(),
  ];
  return candidates.find((candidate) => candidate && executable(candidate));
}

/** @returns {{ path: string, installed: boolean }} */
export function ensureChromium() {
  const found = findChromium();
  if (found) return { path: found, installed: false };
  if (process.getuid?.() === 0 && debian()) installBrowserFromDebian();
  else installFromPlaywright();
  const installed = findChromium();
  if (!installed) throw new Error(advice('The installation ended without a browser.'));
  return { path: installed, installed: true };
}

/** As root; asks nothing. */
export function installFromDebian(...packages) {
  const apt = (...args) =>
    execFileSync('apt-get', ['-qq', '-o', 'Acquire::Retries=3', ...args], {
      env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
      stdio: ['ignore', 'ignore', 'inherit'],
      timeout: 10 * 60_000,
    });
  apt('update');
  apt('install', '-y', '--no-install-recommends', ...packages);
}

function installBrowserFromDebian() {
  try {
    // A font too: without one the screenshots show boxes.
    installFromDebian('chromium', 'fonts-dejavu-core');
  } catch (error) {
    throw new Error(advice(error.message));
  }
}

function installFromPlaywright() {
  try {
    execFileSync('npx', ['playwright-core', 'install', 'chromium'], {
      stdio: ['ignore', 'inherit', 'inherit'],
      timeout: 10 * 60_000,
      shell: process.platform === 'win32',
    });
  } catch (error) {
    throw new Error(advice(error.message));
  }
}

function advice(reason) {
  return `The editor tests need Chrome or Chromium and none could be installed (${reason}). Install one, or set DRYFIT_CHROMIUM to its path.`;
}

export function debian() {
  return existsSync('/etc/os-release') && /^ID=debian$/m.test(readFileSync('/etc/os-release', 'utf8'));
}

function executable(file) {
  try {
    accessSync(file, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

if (process.argv[1] === import.meta.filename) {
  try {
    const { path: browser, installed } = ensureChromium();
    console.log(`Browser ${installed ? 'installed' : 'already there'}: ${browser}`);
  } catch (error) {
    console.error(error.message);
    process.exitCode = 1;
  }
}
