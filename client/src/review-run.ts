/** Runs the command line's review and hands its view over; knows its form, not its meaning. */
import { execFile } from 'node:child_process';
import process from 'node:process';

interface Position {
  readonly line: number;
  readonly character: number;
}

export interface Spot {
  readonly file: string;
  readonly start: Position;
  readonly end: Position;
}

export interface ReviewNode {
  readonly label: string;
  readonly detail?: string;
  readonly is?: string;
  readonly severity?: string;
  readonly before?: Spot;
  readonly after?: Spot;
  readonly nodes?: readonly ReviewNode[];
}

export interface ReviewView {
  readonly base: string;
  readonly head: string;
  readonly summary: string;
  readonly nodes: readonly ReviewNode[];
  readonly introduced: readonly (Spot & { readonly check: string })[];
  readonly texts: Readonly<Record<string, string>>;
  /** Top folder of the repository. */
  readonly root: string;
}

export function compareWith(cli: string, folder: string, version: string): Promise<ReviewView> {
  return new Promise((resolve, reject) => {
    execFile(
      process.execPath,
      [cli, 'review', '--format', 'view', '--', version],
      // The desktop editor's executable is Node only when told so.
      {
        cwd: folder,
        env: { ...process.env, ELECTRON_RUN_AS_NODE: '1' },
        timeout: 120_000,
        maxBuffer: 2 ** 28,
        windowsHide: true,
      },
      (error, stdout, stderr) => {
        // 1 says that something was found.
        if (!error || error.code === 1) resolve(JSON.parse(stdout) as ReviewView);
        else reject(new Error(stderr.replace(/^dryfit: /, '').trim() || error.message));
      },
    );
  });
}
