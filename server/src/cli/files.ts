/** Finds and reads the build files of a workspace on disk. The only part of the command line that touches files. */
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { Workspace } from '../library/workspace';
import { onlyBuilds } from '../review/quick-look';
import { isBuildFileName, isPassedOver } from '../text/build-file-name';
import { isBeyondReading, unread } from '../text/limits';
import { CannotRun } from './console';

const uriOf = (file: string): string => pathToFileURL(file).href;

export interface Opened {
  readonly workspace: Workspace;
  /** The files that were asked for, as absolute paths in the order of their names. */
  readonly asked: readonly string[];
  readonly uri: (file: string) => string;
  /** Texts of builds that nothing else looks at, left unread for whoever takes them one by one. */
  readonly late: ReadonlyMap<string, string>;
}

/**
 * @param choose which of the files that were asked for are this run's; builds of the others are then not read
 * @param oneByOne leaves builds that nothing else looks at to the caller, in `late`
 */
export function open(
  cwd: string,
  words: readonly string[],
  options: { workspace?: string; bench?: string },
  choose?: (asked: readonly string[]) => readonly string[],
  oneByOne = false,
): Opened {
  const named = (words.length > 0 ? words : ['.']).map((word) => path.resolve(cwd, word));
  const asked = [...new Set(named.flatMap((target) => filesOf(cwd, target)))].sort();
  if (asked.length === 0)
    throw new CannotRun(
      `No build files here: looked for *.dryfit.yaml in ${named.map((target) => shown(cwd, target)).join(', ')}. Name a file or a folder that has some.`,
    );
  const root = options.workspace ? path.resolve(cwd, options.workspace) : rootOf(cwd, asked[0]!);
  if (!existsSync(root)) throw new CannotRun(`There is no folder ${shown(cwd, root)}.`);
  const workspace = new Workspace();
  const bench = options.bench === undefined ? [] : [path.resolve(cwd, options.bench)];
  const chosen = choose ? choose(asked) : asked;
  const mine = new Set([...chosen, ...bench]);
  const late = new Map<string, string>();
  for (const file of new Set([...walk(root), ...asked, ...bench])) {
    const text = read(cwd, file);
    const alone = (choose !== undefined || oneByOne) && onlyBuilds(text);
    if (!alone || (mine.has(file) && !oneByOne)) workspace.set(uriOf(file), text);
    else if (mine.has(file)) late.set(file, text);
  }
  return { workspace, asked: chosen, uri: uriOf, late };
}

/** The workspace around a folder, which may hold nothing yet; where no workspace is marked, the folder alone and none below, for it may be a home. */
export function openFolder(cwd: string): Workspace {
  const root = rootOf(cwd, path.join(cwd, 'any'));
  const isMarked = existsSync(path.join(root, '.git')) || existsSync(path.join(root, 'settings.dryfit.yaml'));
  const files = isMarked
    ? walk(root)
    : readdirSync(cwd)
        .filter(isBuildFileName)
        .map((name) => path.join(cwd, name));
  const workspace = new Workspace();
  for (const file of files) workspace.set(uriOf(file), read(cwd, file));
  return workspace;
}

function filesOf(cwd: string, target: string): readonly string[] {
  const stat = statSync(target, { throwIfNoEntry: false });
  if (!stat) throw new CannotRun(`There is no file or folder ${shown(cwd, target)}.`);
  if (stat.isDirectory()) return walk(target);
  if (!isBuildFileName(target))
    throw new CannotRun(`${shown(cwd, target)} is not a build file; those end in .dryfit.yaml.`);
  return [target];
}

/** Folders that hold nothing of the builder's are passed over, and links are not followed out of the tree. */
function walk(folder: string): readonly string[] {
  return readdirSync(folder, { withFileTypes: true })
    .sort((a, b) => (a.name < b.name ? -1 : 1))
    .flatMap((entry) => {
      if (isPassedOver(entry.name)) return [];
      const full = path.join(folder, entry.name);
      if (entry.isDirectory()) return walk(full);
      return entry.isFile() && isBuildFileName(entry.name) ? [full] : [];
    });
}

/** The workspace of a file: the nearest folder up that has a settings file or is a repository, else where we are, else the file's own. */
function rootOf(cwd: string, file: string): string {
  const start = path.dirname(file);
  for (let folder = start; ; folder = path.dirname(folder)) {
    if (existsSync(path.join(folder, '.git')) || existsSync(path.join(folder, 'settings.dryfit.yaml'))) return folder;
    if (path.dirname(folder) === folder) break;
  }
  return `${start}${path.sep}`.startsWith(`${cwd}${path.sep}`) ? cwd : start;
}

function read(cwd: string, file: string): string {
  const stat = statSync(file, { throwIfNoEntry: false });
  if (!stat) throw new CannotRun(`There is no file ${shown(cwd, file)}.`);
  return isBeyondReading(stat.size) ? unread : readFileSync(file, 'utf8');
}

export const shown = (cwd: string, file: string): string => path.relative(cwd, file).split(path.sep).join('/') || '.';
