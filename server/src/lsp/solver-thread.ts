/** Solves in a thread beside the server, so that it answers meanwhile and the wait can be given up. Knows no order. */
import path from 'node:path';
import type { Solved } from '../plan/order-solve';
import type { Solve } from './plans';

export const solveInThread: Solve = async (program, seconds, token) => {
  const { Worker } = await import('node:worker_threads');
  return new Promise((resolve, reject) => {
    const thread = new Worker(path.join(__dirname, 'solver-thread.cjs'), { workerData: { program, seconds } });
    const stopping = token.onCancellationRequested(() => {
      reject(new Error('Given up.'));
      void thread.terminate();
    });
    thread.once('message', (solved: Solved) => resolve(solved));
    thread.once('error', reject);
    thread.once('exit', () => {
      stopping.dispose();
      reject(new Error('The solver ended without an answer.'));
    });
  });
};
