/** `node tests/bench/scale.mjs`: how time grows with the number of builds on the command line and with the size of the library in the editor. Prints tables; judges nothing. Linux only. */
import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { cpus, tmpdir } from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { TimedServer } from './timed-server.mjs';

const root = path.resolve(import.meta.dirname, '../..');
const build = readFileSync(path.join(root, 'samples/builds/ossel-5.dryfit.yaml'), 'utf8');
const keys = Number(process.env.DRYFIT_BENCH_EDITS ?? 200);

const median = (values) => [...values].sort((a, b) => a - b)[values.length >> 1];
const p95 = (values) => [...values].sort((a, b) => a - b)[Math.floor(values.length * 0.95)];
/** By which power of the size the time grows. */
const exponent = (small, large) => Math.log(large.time / small.time) / Math.log(large.size / small.size);

function folderWith(fill) {
  const folder = mkdtempSync(path.join(tmpdir(), 'dryfit-scale-'));
  for (const one of ['parts', 'bench.dryfit.yaml', 'shops'])
    cpSync(path.join(root, 'samples', one), path.join(folder, one), { recursive: true });
  mkdirSync(path.join(folder, 'builds'));
  fill(folder);
  return folder;
}

function checked(size) {
  const folder = folderWith((at) => {
    for (let i = 0; i < size; i++)
      writeFileSync(
        path.join(at, `builds/b${i}.dryfit.yaml`),
        build.replace('name: Ossel 5', `name: Ossel ${i}`).replace('altitude: 120 m', `altitude: ${100 + (i % 900)} m`),
      );
  });
  try {
    const from = performance.now();
    const { stdout, status } = spawnSync(process.execPath, [path.join(root, 'dist/cli.cjs'), 'check', '.'], {
      cwd: folder,
      encoding: 'utf8',
      maxBuffer: 1 << 28,
    });
    const time = performance.now() - from;
    if (status !== 0 || !stdout.includes(`${size + 13} files`)) throw new Error(stdout.slice(-300));
    return { size, time };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** The club's parts, and motors of other clubs up to so many in all, a thousand to a file. */
async function edited(size) {
  const motor = /\n {2}brunt-2207-1800:\n(?: {4}.*\n)+/.exec(
    readFileSync(path.join(root, 'samples/parts/motors.dryfit.yaml'), 'utf8'),
  )[0];
  const folder = folderWith((at) => {
    mkdirSync(path.join(at, 'others'));
    for (let file = 0; file * 1000 < size; file++)
      writeFileSync(
        path.join(at, `others/motors-${file}.dryfit.yaml`),
        `dryfit: parts\nname: Others ${file}\n\nparts:${Array.from({ length: 1000 }, (_, i) =>
          motor
            .replace('brunt-2207-1800', `other-${file}-${i}`)
            .replace(/kv: \d+/, `kv: ${1000 + ((file * 7 + i * 13) % 1500)}`),
        ).join('')}`,
      );
    writeFileSync(path.join(at, 'builds/one.dryfit.yaml'), build);
  });
  const uri = pathToFileURL(path.join(folder, 'builds/one.dryfit.yaml')).href;
  const server = new TimedServer([process.execPath, path.join(root, 'dist/server.cjs'), '--stdio'], {
    folder: pathToFileURL(folder).href,
  });
  try {
    await server.initialize();
    const first = server.next(uri, ({ diagnostics }) => !diagnostics.some(({ code }) => code === 'part-unknown'));
    await server.connection.sendNotification('textDocument/didOpen', {
      textDocument: { uri, languageId: 'dryfit', version: 1, text: build },
    });
    await first;
    const opened = performance.now() - server.began;
    const rows = build.split('\n');
    const weight = rows.findIndex((row) => row.includes('weight: 15.8 g'));
    const use = rows.findIndex((row) => row.includes('use: brunt-2207-1800'));
    const at = { line: weight, character: rows[weight].indexOf(' g') };
    const times = [];
    for (let i = 0; i < keys; i++) {
      const version = i + 2;
      const answer = server.next(uri, (params) => params.version === version);
      const from = performance.now();
      await server.connection.sendNotification('textDocument/didChange', {
        textDocument: { uri, version },
        contentChanges: [
          i % 2 === 0
            ? { range: { start: at, end: at }, text: '1' }
            : { range: { start: at, end: { ...at, character: at.character + 1 } }, text: '' },
        ],
      });
      await answer;
      times.push(performance.now() - from);
    }
    const asked = [];
    for (let i = 0; i < keys; i++) {
      const from = performance.now();
      await server.connection.sendRequest('textDocument/completion', {
        textDocument: { uri },
        position: { line: use, character: rows[use].indexOf('brunt') + (i % 4) },
      });
      asked.push(performance.now() - from);
    }
    return { size, opened, key: median(times), completion: p95(asked), memory: server.memory() };
  } finally {
    server.stop();
    rmSync(folder, { recursive: true, force: true });
  }
}

console.log(
  `${cpus()[0]?.model.trim() ?? 'unknown processor'}, ${cpus().length} cores, Node ${process.versions.node}\n`,
);
const builds = [100, 1000, 10_000].map(checked);
console.log('| builds checked by the command line | s | ms a build |\n|---|---|---|');
for (const { size, time } of builds)
  console.log(`| ${size} | ${(time / 1000).toFixed(1)} | ${(time / size).toFixed(1)} |`);
console.log(`\ngrowth exponent, 100 to 10,000: ${exponent(builds[0], builds[2]).toFixed(2)}\n`);
console.log(
  '| parts in the library | opened and checked, s | keystroke to findings, ms | completion at `use:`, p95 ms | memory, MiB |\n|---|---|---|---|---|',
);
for (const size of [1000, 10_000, 100_000]) {
  const { opened, key, completion, memory } = await edited(size);
  console.log(
    `| ${size} | ${(opened / 1000).toFixed(1)} | ${key.toFixed(1)} | ${completion.toFixed(1)} | ${memory.toFixed(0)} |`,
  );
}
