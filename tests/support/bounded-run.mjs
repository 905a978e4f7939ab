/** Runs a command in its own process group with a time-out; must leave no process behind, whatever the command did. */
import { spawn } from 'node:child_process';
import { atEnd } from './at-end.mjs';

// Long enough for a command with process groups of its own to end them.
const graceMs = 12_000;

/**
 * @param {string} command
 * @param {string[]} args
 * @param {{ seconds: number, cwd?: string, env?: Record<string, string | undefined>, quiet?: boolean }} options
 * @returns {Promise<{ code: number, output: string, timedOut: boolean }>}
 */
export async function boundedRun(command, args, { seconds, cwd, env, quiet = false }) {
  const child = spawn(command, args, {
    cwd,
    env: { ...process.env, ...env },
    detached: process.platform !== 'win32',
    // There npm is a script that only a shell starts, while a shell would trip over spaces in a path to Node.
    shell: process.platform === 'win32' && command === 'npm',
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  let output = '';
  for (const [from, to] of [
    [child.stdout, process.stdout],
    [child.stderr, process.stderr],
  ]) {
    from.on('data', (chunk) => {
      output += chunk;
      if (!quiet) to.write(chunk);
    });
  }
  let asked = false;
  const finished = new Promise((resolve) => {
    child.once('error', (error) => {
      output += `${error.message}\n`;
      resolve(127);
    });
    // Stragglers would keep the pipes open, and 'close' would never come.
    child.once('exit', () => {
      if (!asked) signalGroup(child, 'SIGKILL');
    });
    child.once('close', (code) => resolve(code ?? 1));
  });
  const stop = () => {
    asked = true;
    signalGroup(child, 'SIGTERM');
    const timer = setTimeout(() => signalGroup(child, 'SIGKILL'), graceMs);
    return finished.finally(() => clearTimeout(timer));
  };
  const forget = atEnd(stop);
  let timedOut = false;
  const timer = setTimeout(() => {
    timedOut = true;
    stop();
  }, seconds * 1000);
  const code = await finished;
  clearTimeout(timer);
  forget();
  return { code: timedOut ? 124 : code, output, timedOut };
}

/** A group that is already gone is fine. */
export function signalGroup(child, signal) {
  if (child.pid === undefined) return;
  try {
    if (process.platform === 'win32') child.kill(signal);
    else process.kill(-child.pid, signal);
  } catch (error) {
    if (error.code !== 'ESRCH') throw error;
  }
}
