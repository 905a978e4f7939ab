/** The solver in a thread of its own: solves the one program it was started with. Its Node entry; a thread can be ended, a running solver can't. */
import { parentPort, workerData } from 'node:worker_threads';
import type { loadSolver as LoadSolver } from './load';

const { program, seconds } = workerData as { readonly program: string; readonly seconds: number };

async function solve(): Promise<void> {
  const { loadSolver } = (await import('./solver.cjs' as string)) as { loadSolver: typeof LoadSolver };
  parentPort!.postMessage(await (await loadSolver())(program, seconds));
}

// What goes wrong ends the thread, and whoever started it is told.
void solve();
