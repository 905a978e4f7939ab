/** Compares the findings of every sample in the editor (Node), in the browser-only editor (oldest and current version) and on the command line; must not forgive a difference. */
import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { cpSync, existsSync, mkdirSync, readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { installVsix, startHost } from '../editor/host-server.mjs';
import { hostSupported, root } from '../editor/install-host.mjs';
import { packageExtension, vsix } from '../editor/package-extension.mjs';
import { createProfile, settings } from '../editor/profile.mjs';
import { writeReport } from '../editor/report.mjs';
import { confine, hostUri, openBrowser, workbenchUrl } from '../editor/workbench.mjs';
import { end } from '../support/at-end.mjs';
import { installWeb, webEditor } from './install-web.mjs';
import { servePage } from './page-server.mjs';

const seconds = 60;
const samples = path.join(root, 'samples');
const probe = path.join(import.meta.dirname, 'probe');
const memoryFiles = path.join(import.meta.dirname, 'memory-files');
const screenshots = path.join(root, 'out/screenshots');
mkdirSync(screenshots, { recursive: true });

const results = { passed: [], failed: [], skipped: [], errors: [] };
const expected = commandLine();
const expectedOrder = orderOnCommandLine();
await packageExtension();

await compare('the oldest browser editor, no server behind it', inBrowserAlone);
if (hostSupported) {
  await compare("the current version, the page's own worker", (look) => inCurrent(look, { web: true }));
  await compare('the current version, the extension host in Node', (look) => inCurrent(look, { web: false }));
} else results.skipped.push('the current version: its server runs on Linux only');
writeReport('web extension', results);

/** What `dryfit check` says of every sample, as the editor would put it. */
function commandLine() {
  const { stdout, status } = spawnSync(
    process.execPath,
    [path.join(root, 'dist/cli.cjs'), 'check', '.', '--format', 'json'],
    {
      cwd: samples,
      encoding: 'utf8',
      timeout: 60_000,
      maxBuffer: 1 << 26,
    },
  );
  // The faulty samples are among them.
  assert.equal(status, 1);
  return JSON.parse(stdout).findings.map(
    ({ check, file, range: { start, end: stop }, severity, message, accepted, danger }) => ({
      file,
      check,
      severity: accepted !== null && danger === null ? 'Hint' : severity[0].toUpperCase() + severity.slice(1),
      message: accepted === null ? message : `${message} (Accepted: ${accepted})`,
      start: [start.line, start.character],
      end: [stop.line, stop.character],
    }),
  );
}

function orderOnCommandLine() {
  const { stdout } = spawnSync(
    process.execPath,
    [path.join(root, 'dist/cli.cjs'), 'order', 'builds/ossel-5.dryfit.yaml', '--format', 'markdown'],
    { cwd: samples, encoding: 'utf8', timeout: 60_000 },
  );
  // As drawn on the page.
  return stdout.replaceAll('\n- [ ] ', '\n- ☐ ');
}

async function compare(where, look) {
  const check = (name, act) => {
    try {
      act();
      results.passed.push(`${where}: ${name}`);
    } catch (error) {
      results.failed.push(`${where}: ${name}`);
      results.errors.push(error.stack);
    }
  };
  try {
    const { report, web, workers } = await look(where);
    if (report.error) throw new Error(report.error);
    console.log(
      `${where}: ${report.version}, ${report.opened.length} findings, ${report.hovers.length} hovers, order in ${report.plannedMs} ms`,
    );
    check('the extension runs in this host', () => {
      assert.equal(report.activeHere, true);
      assert.equal(report.node, !web);
      // The language server beside it, in a worker of its own.
      if (web) assert.ok(workers >= 2, `${workers} workers in the page`);
    });
    check('findings of files that are not open are those of the command line', () => same(report.closed));
    check('findings of open files are those of the command line', () => same(report.opened));
    check('a new build is written of parts of the workspace', () => {
      assert.match(report.built ?? '', /^craft: freestyle-5\n[\s\S]*^ {4}use: \S+/m);
    });
    check('the order is that of the command line, proved', () => {
      assert.equal(report.order, expectedOrder);
      assert.match(report.order, /proved/);
    });
    check('hovers tell something over each name and part', () => {
      assert.ok(report.hovers.length > 50, `${report.hovers.length} places`);
      const mute = report.hovers.filter(({ words }) => words.trim().length < 20);
      assert.deepEqual(mute.slice(0, 3), []);
    });
  } catch (error) {
    results.failed.push(where);
    results.errors.push(error.stack);
  } finally {
    await end();
  }
}

function same(found) {
  const lines = (list) => list.map((finding) => JSON.stringify(finding));
  const [here, there] = [lines(found), lines(expected)];
  assert.ok(expected.length > 20, `only ${expected.length} findings to compare with`);
  // Lists, not sets: a finding shown twice is a difference.
  const without = (all, others) => all.filter((line) => !others.includes(line)).slice(0, 3);
  assert.deepEqual(
    { count: here.length, onlyHere: without(here, there), onlyOnCommandLine: without(there, here) },
    { count: there.length, onlyHere: [], onlyOnCommandLine: [] },
  );
}

async function inBrowserAlone(where) {
  installWeb();
  const server = await servePage({
    editor: webEditor,
    extensions: { dryfit: await unpacked(), probe, 'memory-files': memoryFiles },
    seed: Object.fromEntries(
      filesBelow(samples).map((file) => [`/samples/${file}`, readFileSync(path.join(samples, file), 'utf8')]),
    ),
    folder: '/samples',
    settings,
  });
  const page = await openPage(server.host, server.port);
  await page.goto(server.url);
  const report = JSON.parse(await inTime(server.written('/samples/probe.json'), where, page));
  return { report, web: true, workers: page.workers().length };
}

async function inCurrent(where, { web }) {
  // An extension that could run in either is told where to run.
  const profile = createProfile(
    web ? { 'remote.extensionKind': { 'dryfit.dryfit': ['web'], 'dryfit-tests.probe': ['web'] } } : {},
  );
  cpSync(samples, profile.workspace, { recursive: true });
  await installVsix(profile, vsix);
  const host = await startHost(profile, { development: true });
  const page = await openPage('127.0.0.1', host.port);
  await page.goto(
    workbenchUrl(host.port, {
      folder: profile.workspace,
      payload: [
        ['extensionDevelopmentPath', hostUri(host.port, probe)],
        ['extensionDevelopmentKind', web ? 'web' : 'workspace'],
        ['skipWelcome', 'true'],
      ],
    }),
  );
  const report = JSON.parse(await inTime(fileText(path.join(profile.workspace, 'probe.json')), where, page));
  return { report, web, workers: page.workers().length };
}

async function openPage(name, port) {
  const { context, page } = await openBrowser();
  await confine(context, port, name);
  if (process.env.DRYFIT_EDITOR_VERBOSE) page.on('console', (message) => console.log('[page]', message.text()));
  return page;
}

/** The packed extension as an editor unpacks it. */
async function unpacked() {
  if (!hostSupported) return root;
  const profile = createProfile();
  await installVsix(profile, vsix);
  const extensions = path.join(profile.serverData, 'extensions');
  return path.join(
    extensions,
    readdirSync(extensions).find((name) => name.startsWith('dryfit.dryfit-')),
  );
}

async function inTime(answer, where, page) {
  const late = new Promise((_, reject) => {
    setTimeout(() => reject(new Error(`${where}: no answer within ${seconds} s`)), seconds * 1000).unref();
  });
  try {
    return await Promise.race([answer, late]);
  } catch (error) {
    await page.screenshot({ path: path.join(screenshots, 'web-failure.png') });
    throw error;
  }
}

async function fileText(file) {
  const until = Date.now() + seconds * 1000;
  while (Date.now() < until) {
    // Written in one go, yet seen half-way it would not parse.
    if (existsSync(file) && readFileSync(file, 'utf8').endsWith('}')) return readFileSync(file, 'utf8');
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  throw new Error(`${file} was not written`);
}

function filesBelow(folder) {
  return readdirSync(folder, { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile())
    .map((entry) => path.relative(folder, path.join(entry.parentPath, entry.name)).split(path.sep).join('/'));
}
