/** The one build file that a command is about, opened in its workspace. Judges nothing. */
import { craftsOf } from '../analysis';
import type { Craft } from '../build/craft';
import type { Workspace } from '../library/workspace';
import { CannotRun, type Console } from './console';
import { open } from './files';

export interface OneBuild {
  readonly workspace: Workspace;
  /** As it was named on the command line. */
  readonly name: string;
  /** Absolute path. */
  readonly file: string;
  readonly address: string;
  /** Address of the bench that was asked for. */
  readonly bench: string | undefined;
}

export function openOne(
  console: Console,
  command: string,
  words: readonly string[],
  options: { readonly workspace?: string; readonly bench?: string },
): OneBuild {
  const [name, ...more] = words;
  if (name === undefined || more.length > 0) throw new CannotRun(`\`dryfit ${command}\` takes one build file.`);
  const { workspace, asked, uri } = open(console.cwd, [name], options);
  const [file, ...others] = asked;
  if (file === undefined || others.length > 0)
    throw new CannotRun(`\`dryfit ${command}\` takes one build file, not a folder.`);
  return { workspace, name, file, address: uri(file), bench: benchUri(console.cwd, options.bench, workspace, uri) };
}

/** Its first build. */
export function craftIn({ workspace, name, address, bench }: OneBuild): Craft {
  const craft = craftsOf(workspace, workspace.get(address)!, bench)[0];
  if (!craft) throw noBuild(name);
  return craft;
}

export const noBuild = (name: string): CannotRun =>
  new CannotRun(`${name} is no build. Its first line would be \`dryfit: build\`.`);

export function benchUri(
  cwd: string,
  name: string | undefined,
  workspace: Workspace,
  uri: (file: string) => string,
): string | undefined {
  if (name === undefined) return undefined;
  const address = new URL(name.replaceAll('\\', '/'), `${uri(cwd)}/`).href;
  if (!workspace.get(address)?.documents.some((document) => document.kind === 'bench'))
    throw new CannotRun(`${name} is not a bench file; its first line would be \`dryfit: bench\`.`);
  return address;
}
