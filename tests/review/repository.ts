/** A real git repository in a temporary folder, and the built command line run in it. Needs `npm run build`. */
import { execFileSync, spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import process from 'node:process';

const cli = path.resolve(import.meta.dirname, '../../dist/cli.cjs');

/** An invented person, and nothing of the machine's own settings. */
export const env = {
  ...process.env,
  GIT_CONFIG_GLOBAL: '/dev/null',
  GIT_CONFIG_NOSYSTEM: '1',
  GIT_AUTHOR_NAME: 'Ada Ostrel',
  GIT_AUTHOR_EMAIL: 'ada@example.invalid',
  GIT_COMMITTER_NAME: 'Ada Ostrel',
  GIT_COMMITTER_EMAIL: 'ada@example.invalid',
  GIT_AUTHOR_DATE: '2026-11-01T12:00:00Z',
  GIT_COMMITTER_DATE: '2026-11-01T12:00:00Z',
};

export interface Ran {
  readonly status: number | null;
  readonly out: string;
  readonly err: string;
}

export class Repository {
  readonly folder = mkdtempSync(path.join(tmpdir(), 'dryfit review '));

  constructor(files: Readonly<Record<string, string>>) {
    for (const [name, text] of Object.entries(files)) this.write(name, text);
    this.git('init', '-q', '-b', 'main');
    this.commit('Everything as it is');
  }

  git(...args: string[]): string {
    return execFileSync('git', args, { cwd: this.folder, env, encoding: 'utf8' });
  }

  commit(message: string): void {
    this.git('add', '-A');
    this.git('commit', '-q', '--allow-empty', '-m', message);
  }

  full(name: string): string {
    return path.join(this.folder, name);
  }

  write(name: string, text: string): void {
    mkdirSync(path.dirname(this.full(name)), { recursive: true });
    writeFileSync(this.full(name), text);
  }

  read(name: string): string {
    return readFileSync(this.full(name), 'utf8');
  }

  /** Changes one text; it must be there. */
  change(name: string, from: string, to: string): void {
    const text = this.read(name);
    if (!text.includes(from)) throw new Error(`${name} has no ${from}`);
    this.write(name, text.replace(from, to));
  }

  move(from: string, to: string): void {
    mkdirSync(path.dirname(this.full(to)), { recursive: true });
    renameSync(this.full(from), this.full(to));
  }

  remove(name: string): void {
    rmSync(this.full(name));
  }

  /** Everything as it was committed on main. */
  reset(): void {
    this.git('checkout', '-q', '-f', 'main');
    this.git('clean', '-q', '-f', '-d', '-x');
  }

  dryfit(...args: string[]): Ran {
    const { status, stdout, stderr } = spawnSync(process.execPath, [cli, ...args], {
      cwd: this.folder,
      env,
      encoding: 'utf8',
      timeout: 60_000,
      maxBuffer: 1 << 28,
    });
    return { status, out: stdout, err: stderr };
  }

  done(): void {
    rmSync(this.folder, { recursive: true, force: true });
  }
}
