/** Reads versions of a repository through git, with fixed arguments: nothing in the repository is run, nothing is fetched, nothing outside is read. */
import { spawnSync } from 'node:child_process';
import { closeSync, constants, existsSync, fstatSync, lstatSync, openSync, readFileSync } from 'node:fs';
import path from 'node:path';
import process from 'node:process';
import { isBuildFileName, isPassedOver } from '../text/build-file-name';
import { isBeyondReading, unread } from '../text/limits';
import { CannotRun } from './console';

/** What a repository from a stranger may cost. */
const most = { files: 50_000, bytes: 256 << 20, listing: 512 << 20, seconds: 60 } as const;

export interface Version {
  /** Texts by address from the top of the repository, as `file:///builds/wren.dryfit.yaml`. */
  readonly texts: ReadonlyMap<string, string>;
  /** Paths of links, which are not followed. */
  readonly links: readonly string[];
}

export interface Repository {
  /** Absolute path of its top folder. */
  readonly root: string;
  commit(name: string): string;
  mergeBase(a: string, b: string): string;
  at(commit: string): Version;
  workingTree(): Version;
}

export function openRepository(cwd: string): Repository {
  const top = git(cwd, ['rev-parse', '--show-toplevel']);
  if (!top.ok)
    throw new CannotRun(
      /dubious ownership/.test(top.err)
        ? 'This repository belongs to another user, so git does not read it. Add it to `safe.directory` if you trust it.'
        : 'This is no git repository with a working tree. Run it inside one.',
    );
  const root = path.resolve(top.out.toString('utf8').replace(/\r?\n$/, ''));
  return {
    root,
    commit: (name) => commitOf(root, name),
    mergeBase(a, b) {
      const found = git(root, ['merge-base', a, b]);
      if (!found.ok)
        throw new CannotRun(
          'The two have no commit in common here. Fetch the whole history first (`fetch-depth: 0` in a workflow).',
        );
      return found.out.toString('utf8').trim();
    },
    at: (commit) => versionAt(root, commit),
    workingTree: () => workingTree(root),
  };
}

export const uriOfPath = (name: string): string => `file:///${name.split('/').map(encodeURIComponent).join('/')}`;
export const pathOfUri = (uri: string): string =>
  uri.slice('file:///'.length).split('/').map(decodeURIComponent).join('/');

function commitOf(root: string, name: string): string {
  if (name.startsWith('-') || name.includes('\0'))
    throw new CannotRun('A branch, tag or commit is wanted, not an option.');
  const found = git(root, ['rev-parse', '--verify', '--quiet', '--end-of-options', `${name}^{commit}`]);
  if (!found.ok)
    throw new CannotRun(
      `There is no branch, tag or commit \`${name}\` here. In a shallow clone, fetch it first (\`fetch-depth: 0\` in a workflow).`,
    );
  return found.out.toString('utf8').trim();
}

interface Blob {
  readonly name: string;
  readonly id: string;
  readonly size: number;
}

function versionAt(root: string, commit: string): Version {
  const listed = git(root, ['ls-tree', '-r', '-l', '-z', '--full-tree', commit]);
  if (!listed.ok) throw new CannotRun(`git could not list ${commit.slice(0, 12)}: ${firstLine(listed.err)}`);
  const links: string[] = [];
  const blobs: Blob[] = [];
  for (const line of listed.out.toString('utf8').split('\0')) {
    const match = /^(\d+) (\w+) ([0-9a-f]+) +(\d+|-)\t(.*)$/s.exec(line);
    if (!match || !isWanted(match[5]!)) continue;
    if (match[1] === '120000') links.push(match[5]!);
    else if (match[2] === 'blob') blobs.push({ name: match[5]!, id: match[3]!, size: Number(match[4]) });
  }
  hold(
    blobs.length,
    blobs.reduce((sum, blob) => sum + (isBeyondReading(blob.size) ? 0 : blob.size), 0),
  );
  const contents = blobContents(root, [
    ...new Set(blobs.filter(({ size }) => !isBeyondReading(size)).map(({ id }) => id)),
  ]);
  const texts = new Map(
    blobs.map(({ name, id, size }) => [uriOfPath(name), isBeyondReading(size) ? unread : (contents.get(id) ?? '')]),
  );
  return { texts, links };
}

/** Contents as stored: no filter and no conversion that the repository asks for. */
function blobContents(root: string, ids: readonly string[]): ReadonlyMap<string, string> {
  const contents = new Map<string, string>();
  if (ids.length === 0) return contents;
  const read = git(root, ['cat-file', '--batch'], `${ids.join('\n')}\n`);
  if (!read.ok) throw new CannotRun(`git could not read the files: ${firstLine(read.err)}`);
  let at = 0;
  while (at < read.out.length) {
    const end = read.out.indexOf(10, at);
    const [id, type, size] = read.out.toString('latin1', at, end).split(' ');
    if (type === 'missing' || size === undefined)
      throw new CannotRun('A file of this version is not here. Fetch it first; nothing is fetched by itself.');
    const start = end + 1;
    contents.set(id!, read.out.toString('utf8', start, start + Number(size)));
    at = start + Number(size) + 1;
  }
  return contents;
}

function workingTree(root: string): Version {
  const listed = git(root, ['ls-files', '-z', '--cached', '--others', '--exclude-standard']);
  if (!listed.ok) throw new CannotRun(`git could not list the working tree: ${firstLine(listed.err)}`);
  const names = [...new Set(listed.out.toString('utf8').split('\0'))].filter(isWanted).sort();
  hold(names.length, 0);
  const links: string[] = [];
  const texts = new Map<string, string>();
  const folders = new Map<string, boolean>();
  let bytes = 0;
  for (const name of names) {
    const read = readInside(root, name, folders);
    if (read === 'link') links.push(name);
    else if (read !== undefined) {
      bytes += read === unread ? 0 : read.length;
      hold(0, bytes);
      texts.set(uriOfPath(name), read);
    }
  }
  return { texts, links };
}

/** A regular file reached through real folders; anything else is not read. */
function readInside(root: string, name: string, folders: Map<string, boolean>): string | 'link' | undefined {
  const steps = name.split('/');
  for (let i = 1; i < steps.length; i++) {
    const folder = steps.slice(0, i).join('/');
    if (!folders.has(folder))
      folders.set(folder, lstatSync(path.join(root, folder), { throwIfNoEntry: false })?.isDirectory() === true);
    if (!folders.get(folder)) return existsSync(path.join(root, folder)) ? 'link' : undefined;
  }
  const full = path.join(root, name);
  const stat = lstatSync(full, { throwIfNoEntry: false });
  if (!stat) return undefined;
  if (stat.isSymbolicLink()) return 'link';
  if (!stat.isFile()) return undefined;
  if (isBeyondReading(stat.size)) return unread;
  // The file may have become a link since it was looked at.
  const fd = openSync(full, constants.O_RDONLY | (constants.O_NOFOLLOW ?? 0));
  try {
    return fstatSync(fd).isFile() ? readFileSync(fd, 'utf8') : undefined;
  } finally {
    closeSync(fd);
  }
}

/** The same folders are passed over as when a folder is checked. */
const isWanted = (name: string): boolean => isBuildFileName(name) && !name.split('/').some(isPassedOver);

function hold(files: number, bytes: number): void {
  if (files > most.files)
    throw new CannotRun(
      `This version has ${files} build files; up to ${most.files} are read at once. Check it in shards.`,
    );
  if (bytes > most.bytes)
    throw new CannotRun(
      `The build files of this version come to more than ${most.bytes >> 20} MB; that much is not read.`,
    );
}

interface Outcome {
  readonly ok: boolean;
  readonly out: Buffer;
  readonly err: string;
}

const fixed = [
  '--no-pager',
  '--no-replace-objects',
  '--literal-pathspecs',
  '-c',
  'core.fsmonitor=false',
  '-c',
  'core.hooksPath=/dev/null',
  '-c',
  'core.quotePath=false',
  '-c',
  'protocol.allow=never',
  '-c',
  'submodule.recurse=false',
] as const;

function git(cwd: string, args: readonly string[], input?: string): Outcome {
  const { status, stdout, stderr, error } = spawnSync(program(), [...fixed, ...args], {
    cwd,
    input: input ?? '',
    timeout: most.seconds * 1000,
    maxBuffer: most.listing,
    windowsHide: true,
    env: {
      ...process.env,
      GIT_OPTIONAL_LOCKS: '0',
      GIT_TERMINAL_PROMPT: '0',
      GIT_NO_LAZY_FETCH: '1',
      GIT_EXTERNAL_DIFF: '',
      LC_ALL: 'C',
    },
  });
  const code = (error as NodeJS.ErrnoException | undefined)?.code;
  if (code === 'ETIMEDOUT') throw new CannotRun(`git did not answer within ${most.seconds} s.`);
  if (code === 'ENOBUFS') throw new CannotRun('This repository lists more files than are read at once.');
  if (error) throw new CannotRun(`git could not be started: ${error.message}`);
  return { ok: status === 0, out: stdout, err: stderr.toString('utf8') };
}

let found: string | undefined;

/** From the search path only: a program of that name in the repository is none of ours. */
function program(): string {
  if (found !== undefined) return found;
  const names = process.platform === 'win32' ? ['git.exe'] : ['git'];
  for (const folder of (process.env.PATH ?? process.env.Path ?? '').split(path.delimiter))
    for (const name of names) {
      const full = path.join(folder, name);
      if (path.isAbsolute(folder) && existsSync(full)) {
        found = full;
        return full;
      }
    }
  throw new CannotRun('git was not found. Install it, or put it on the search path.');
}

const firstLine = (text: string): string => text.split('\n')[0] ?? '';
