/** Runs a command in its own process group with a time-out; must leave no process behind, whatever the command did. */
import { spawn } from 'node:child_process';

const graceMs = 5000;

/**
 * @param {string} command
 * @param {string[]} args
 * @param {{ seconds: number, cwd?: string, env?: Record<string, string | undefined>, quiet?: boolean }} options
 * @returns {Promise<{ code: number, output: string, timedOut: boolean }>}
 */
export function boundedRun(command, args, { seconds, cwd, env, quiet = false }) {
  const child = spawn(command, args, {
    cwd,
    env: { ...process.env, ...env },
    detached: process.platform !== 'win32',
    shell: process.platform === 'win32',
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  let output = '';
  let timedOut = false;
  for (const [from, to] of [
    [child.stdout, process.stdout],
    [child.stderr, process.stderr],
  ]) {
    from.on('data', (chunk) => {
      output += chunk;
      if (!quiet) to.write(chunk);
    });
  }
  // Asked first, so that a command with process groups of its own can end them.
  const end = () => {
    signalGroup(child, 'SIGTERM');
    setTimeout(() => signalGroup(child, 'SIGKILL'), graceMs).unref();
  };
  const timer = setTimeout(() => {
    timedOut = true;
    end();
  }, seconds * 1000);
  const interrupted = () => {
    end();
    child.once('exit', () => process.exit(130));
  };
  process.once('SIGINT', interrupted);
  process.once('SIGTERM', interrupted);
  return new Promise((resolve) => {
    const finish = (code) => {
      clearTimeout(timer);
      process.off('SIGINT', interrupted);
      process.off('SIGTERM', interrupted);
      resolve({ code: timedOut ? 124 : code, output, timedOut });
    };
    child.once('error', (error) => {
      output += `${error.message}\n`;
      finish(127);
    });
    // Stragglers would keep the pipes open, and 'close' would never come.
    child.once('exit', () => signalGroup(child, 'SIGKILL'));
    child.once('close', (code) => finish(code ?? 1));
  });
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
