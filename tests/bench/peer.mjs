/** Our server beside the general YAML language server with our own schema: the same files, the same protocol, one run. Prints a table; judges nothing. Linux only. */
import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { oneSchema } from './one-schema.mjs';
import { TimedServer } from './timed-server.mjs';

const root = path.resolve(import.meta.dirname, '../..');
const peerVersion = '2.0.0';
const edits = Number(process.env.DRYFIT_BENCH_EDITS ?? 200);
const starts = Number(process.env.DRYFIT_BENCH_STARTS ?? 5);

function installPeer() {
  const folder = path.join(root, '.editor-host', `peer-${peerVersion}`);
  const script = path.join(folder, 'node_modules/yaml-language-server/bin/yaml-language-server');
  if (!existsSync(script)) {
    mkdirSync(folder, { recursive: true });
    writeFileSync(path.join(folder, 'package.json'), '{"private":true}');
    execFileSync(
      'npm',
      ['install', '--ignore-scripts', '--no-audit', '--no-fund', `yaml-language-server@${peerVersion}`],
      { cwd: folder, stdio: 'ignore' },
    );
  }
  return script;
}

/** A build of about so many lines, without errors for either server: the club's, with extras until it is long enough. */
function buildOf(lines) {
  const base = readFileSync(path.join(root, 'samples/builds/ossel-5.dryfit.yaml'), 'utf8').split('\n');
  if (lines <= base.length) return `${base.slice(0, base.indexOf('wiring:')).slice(0, lines).join('\n')}\n`;
  const at = base.indexOf('packs:');
  const extras = ['  extras:'];
  for (let i = 0; base.length + extras.length < lines; i++)
    extras.push(
      `    thing-${i}:`,
      `      name: Thing ${i}`,
      '      count: 1',
      `      weight: ${(i % 7) + 1}.5 g (weighed 2026-10-20)`,
      '      note: holds the wires',
    );
  return [...base.slice(0, at - 1), ...extras, '', ...base.slice(at)].join('\n');
}

const median = (values) => [...values].sort((a, b) => a - b)[values.length >> 1];
const p95 = (values) => [...values].sort((a, b) => a - b)[Math.floor(values.length * 0.95)];

async function session(name, command, folder, file, settings) {
  const uri = pathToFileURL(file).href;
  const text = readFileSync(file, 'utf8');
  const cold = [];
  const open = [];
  async function start() {
    const one = new TimedServer(command, { settings, folder: pathToFileURL(folder).href });
    await one.initialize();
    const first = one.next(uri, () => true);
    await one.connection.sendNotification('textDocument/didOpen', {
      textDocument: { uri, languageId: name === 'dryfit' ? 'dryfit' : 'yaml', version: 1, text },
    });
    await first;
    cold.push(performance.now() - one.began);
    await new Promise((resolve) => setTimeout(resolve, 700));
    open.push(one.memory());
    return one;
  }
  for (let i = 1; i < starts; i++) (await start()).stop();
  const server = await start();
  const rows = text.split('\n');
  const spots = rows.flatMap((row, line) =>
    / (?:weight|count|name|length): /.test(row) ? [{ line, character: row.length }] : [],
  );
  const wall = [];
  const cpu = [];
  let version = 1;
  let used = server.cpu();
  for (let i = 0; i < edits; i++) {
    const at = spots[(i >> 1) % spots.length];
    const change =
      i % 2 === 0
        ? { range: { start: at, end: at }, text: '1' }
        : { range: { start: at, end: { ...at, character: at.character + 1 } }, text: '' };
    version++;
    const wanted = version;
    const answer = server.next(uri, (params) => params.version === undefined || params.version === wanted);
    const from = performance.now();
    await server.connection.sendNotification('textDocument/didChange', {
      textDocument: { uri, version },
      contentChanges: [change],
    });
    await answer;
    wall.push(performance.now() - from);
    await new Promise((resolve) => setTimeout(resolve, 5));
    // From one edit to the next: what is tidied or compiled behind it belongs to it.
    const now = server.cpu();
    cpu.push(now - used);
    used = now;
  }
  const asked = async (method, move) => {
    const times = [];
    for (let i = 0; i < edits; i++) {
      const at = spots[i % spots.length];
      const from = performance.now();
      await server.connection.sendRequest(method, {
        textDocument: { uri },
        position: { line: at.line, character: at.character - move },
      });
      times.push(performance.now() - from);
    }
    return p95(times);
  };
  const hover = await asked('textDocument/hover', 1);
  const completion = await asked('textDocument/completion', 0);
  const after = server.memory();
  server.stop();
  return {
    start: median(cold),
    wall: median(wall),
    cpu: median(cpu),
    cpuMean: cpu.reduce((sum, one) => sum + one, 0) / cpu.length,
    hover,
    completion,
    memory: median(open),
    after,
  };
}

const folder = mkdtempSync(path.join(tmpdir(), 'dryfit-peer-'));
try {
  execFileSync('cp', ['-r', path.join(root, 'samples/parts'), path.join(root, 'samples/bench.dryfit.yaml'), folder]);
  const schema = path.join(folder, 'one.schema.json');
  writeFileSync(schema, JSON.stringify(oneSchema(root, 'build')));
  const peer = installPeer();
  const settings = {
    yaml: {
      validate: true,
      hover: true,
      completion: true,
      schemaStore: { enable: false },
      schemas: { [pathToFileURL(schema).href]: '*.dryfit.yaml' },
    },
  };
  const rows = [];
  for (const lines of [60, 250, 2500]) {
    const file = path.join(folder, `b${lines}.dryfit.yaml`);
    writeFileSync(file, buildOf(lines));
    const ours = await session(
      'dryfit',
      [process.execPath, path.join(root, 'dist/server.cjs'), '--stdio'],
      folder,
      file,
      {},
    );
    const theirs = await session('peer', [process.execPath, peer, '--stdio'], folder, file, settings);
    for (const [what, key, digits] of [
      ['spawn to first diagnostics, ms', 'start', 0],
      ['keystroke to diagnostics, ms', 'wall', 2],
      ['CPU a keystroke, ms', 'cpu', 1],
      ['the same on average, compiling included, ms', 'cpuMean', 1],
      ['hover p95, ms', 'hover', 1],
      ['completion p95, ms', 'completion', 1],
      ['memory after open, MiB', 'memory', 0],
      ['memory after all of that, MiB', 'after', 0],
    ])
      rows.push([
        String(lines),
        what,
        ours[key].toFixed(digits),
        theirs[key].toFixed(digits),
        (ours[key] / theirs[key]).toFixed(3),
      ]);
    rmSync(file);
  }
  const heads = ['lines', 'measure', 'dryfit', 'general YAML server', 'ratio'];
  console.log(`| ${heads.join(' | ')} |\n|${heads.map(() => '---').join('|')}|`);
  for (const row of rows) console.log(`| ${row.join(' | ')} |`);
} finally {
  rmSync(folder, { recursive: true, force: true });
}
