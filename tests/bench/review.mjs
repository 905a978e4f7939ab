/** Times a review of 2,000 builds in a real repository in which one part changed: one that a few builds use, and one that all use. Prints; judges nothing. */
import { execFileSync, spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';

const root = path.resolve(import.meta.dirname, '../..');
const many = Number(process.argv[2] ?? 2000);
const folder = mkdtempSync(path.join(tmpdir(), 'dryfit-bench-'));
const git = (...args) =>
  execFileSync('git', ['-c', 'core.hooksPath=/dev/null', ...args], {
    cwd: folder,
    env: {
      ...process.env,
      GIT_CONFIG_GLOBAL: '/dev/null',
      GIT_AUTHOR_NAME: 'Ada Ostrel',
      GIT_AUTHOR_EMAIL: 'ada@example.invalid',
      GIT_COMMITTER_NAME: 'Ada Ostrel',
      GIT_COMMITTER_EMAIL: 'ada@example.invalid',
    },
  });

try {
  for (const name of ['parts', 'references', 'bench.dryfit.yaml', 'settings.dryfit.yaml', 'shops'])
    cpSync(path.join(root, 'samples', name), path.join(folder, name), { recursive: true });
  const samples = readdirSync(path.join(root, 'samples/builds')).sort();
  for (let i = 0; i < many; i++) {
    const sample = readFileSync(path.join(root, 'samples/builds', samples[i % samples.length]), 'utf8');
    const at = path.join(folder, 'builds', String(i % 50).padStart(2, '0'));
    mkdirSync(at, { recursive: true });
    writeFileSync(path.join(at, `build-${i}.dryfit.yaml`), sample.replace(/^name: .*/m, `$& no. ${i}`));
  }
  git('init', '-q', '-b', 'main');
  git('add', '-A');
  git('commit', '-q', '-m', 'All builds');
  const motors = path.join(folder, 'parts/motors.dryfit.yaml');
  change(motors, 'weight: 9.2 g', 'weight: 9.9 g');
  measure('a motor that one build in six uses');
  git('checkout', '-q', '.');
  for (const name of readdirSync(path.join(folder, 'parts'))) everyWeight(path.join(folder, 'parts', name));
  measure('every part');
} finally {
  rmSync(folder, { recursive: true, force: true });
}

function change(file, from, to) {
  const text = readFileSync(file, 'utf8');
  if (!text.includes(from)) throw new Error(`${file} has no ${from}`);
  writeFileSync(file, text.replace(from, to));
}

function everyWeight(file) {
  writeFileSync(
    file,
    readFileSync(file, 'utf8').replace(/^( +weight: )([\d.]+)/gm, (_, key, value) => `${key}${Number(value) + 0.1}`),
  );
}

function measure(what) {
  const began = performance.now();
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    [path.join(root, 'dist/cli.cjs'), 'review', 'main', '--format', 'json'],
    {
      cwd: folder,
      maxBuffer: 1 << 30,
    },
  );
  const seconds = (performance.now() - began) / 1000;
  if (status === 2) throw new Error(String(stderr));
  const { builds } = JSON.parse(stdout);
  console.log(`${many} builds, ${what} changed: ${builds.length} differ, ${seconds.toFixed(2)} s`);
}
