/** The package for the command line as somebody gets it: packed, installed without a network, run. Needs `npm run build`. */
import { spawn, spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { samplesFolder } from '../support/samples';

const root = path.resolve(import.meta.dirname, '../..');
const folder = mkdtempSync(path.join(tmpdir(), 'dryfit tarball-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function run(command: string, args: readonly string[], cwd = folder) {
  return spawnSync(command, args, {
    cwd,
    encoding: 'utf8',
    timeout: 60_000,
    shell: process.platform === 'win32',
  });
}

const dryfit = (args: readonly string[]) => run(path.join(folder, 'node_modules/.bin/dryfit'), args);

beforeAll(() => {
  const packed = run('npm', ['pack', '--ignore-scripts', '--pack-destination', folder], root);
  expect(packed.status, packed.stderr).toBe(0);
  const tarball = readdirSync(folder).find((name) => name.endsWith('.tgz'))!;
  cpSync(samplesFolder, path.join(folder, 'club'), { recursive: true });
  // Everything is bundled: nothing else is fetched.
  const options = ['--offline', '--no-audit', '--no-fund', '--no-save', '--prefix', '.'];
  const installed = run('npm', ['install', ...options, `./${tarball}`]);
  expect(installed.status, installed.stderr).toBe(0);
}, 120_000);

it('brings nothing but itself', () => {
  expect(readdirSync(path.join(folder, 'node_modules')).filter((name) => !name.startsWith('.'))).toEqual(['dryfit']);
  const brought = readdirSync(path.join(folder, 'node_modules/dryfit'));
  expect(brought.sort()).toEqual(
    ['CHANGELOG.md', 'LICENSE', 'README.md', 'client', 'dist', 'package.json', 'schemas'].sort(),
  );
});

it('checks the samples', () => {
  const sound = dryfit(['check', 'club/builds', '--fail-on', 'warning']);
  expect(sound).toMatchObject({ status: 0, stderr: '' });
  const faulty = dryfit(['check', 'club/faulty']);
  expect(faulty.status).toBe(1);
  expect(faulty.stdout).toContain('battery-plug-differs');
});

it('finds its solver and what draws the sheet', { timeout: 60_000 }, () => {
  const order = dryfit(['order', 'club/builds/pip-75.dryfit.yaml']);
  expect(order, order.stderr).toMatchObject({ status: 0 });
  expect(order.stdout).toMatch(/to pay +\d+\.\d\d/);
  const sheet = dryfit(['sheet', 'club/builds/pip-75.dryfit.yaml', '-o', 'sheet.html']);
  expect(sheet, sheet.stderr).toMatchObject({ status: 0 });
});

it('speaks to editors', { timeout: 60_000 }, async () => {
  const server = spawn(process.execPath, [path.join(folder, 'node_modules/dryfit/dist/cli.cjs'), 'lsp']);
  const send = (message: object): void => {
    const body = JSON.stringify({ jsonrpc: '2.0', ...message });
    server.stdin.write(`Content-Length: ${Buffer.byteLength(body)}\r\n\r\n${body}`);
  };
  // What is loaded later is found as well: hover with one bundle, set-up with another, a flow map with the whole parser.
  const uri = 'file:///club/one.dryfit.yaml';
  const text = 'dryfit: build\nname: One\nparts: { motors: { kv: 1800 } }\n';
  const wanted = ['"name":"Dryfit"', 'Revolutions', '"title":"One set-up"'];
  try {
    send({ id: 1, method: 'initialize', params: { capabilities: {} } });
    send({ method: 'initialized', params: {} });
    send({
      method: 'textDocument/didOpen',
      params: { textDocument: { uri, languageId: 'dryfit', version: 1, text } },
    });
    const position = { line: 2, character: text.split('\n')[2]!.indexOf('1800') };
    send({ id: 2, method: 'textDocument/hover', params: { textDocument: { uri }, position } });
    send({ id: 3, method: 'dryfit/setup', params: { uri } });
    let said = '';
    for await (const chunk of server.stdout) {
      said += chunk;
      if (wanted.every((one) => said.includes(one))) break;
    }
    for (const one of wanted) expect(said).toContain(one);
    // Not even for a client that can do next to nothing.
    expect(said).not.toContain('failed with message');
  } finally {
    server.kill();
  }
});
