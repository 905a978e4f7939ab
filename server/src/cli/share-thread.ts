/** Has shares of a large check done by threads of the same program, beside the one that asks. Knows no build. */
import { availableParallelism } from 'node:os';
import { isMainThread, parentPort, Worker, workerData } from 'node:worker_threads';
import type { Analysis } from '../analysis';
import { analyseShare, type Share } from './share';

/** A thread takes a third of a second to be of use; builds are checked in a few milliseconds each. */
const worthwhile = 300;

/** How many threads check so many builds, this one included; none is left without a build. */
export const threadsFor = (builds: number, asked: number | undefined): number =>
  Math.max(1, Math.min(builds, asked ?? Math.min(availableParallelism(), 8, Math.floor(builds / worthwhile))));

/** Fails when the thread does. */
export const analyseElsewhere = (share: Share): Promise<readonly Analysis[]> =>
  new Promise((resolve, reject) => {
    const thread = new Worker(__filename, { workerData: share });
    thread.once('message', resolve);
    thread.once('error', reject);
    thread.once('exit', () => reject(new Error('A thread ended without an answer.')));
  });

/** Whether this is such a thread; it then does its share and is done. */
export function answerShare(): boolean {
  if (isMainThread) return false;
  parentPort!.postMessage(analyseShare(workerData as Share));
  return true;
}
