/** Entry of the command line in Node: nothing but the process around it. */
import { readFileSync, writeSync } from 'node:fs';
import process from 'node:process';
import { version } from '../../../package.json';
import { run } from './run';
import { answerShare } from './share-thread';

/** Written at once and whole, so that a pipe gets everything before the process ends; a reader that left early is no failure. */
function write(fd: number, text: string): void {
  const bytes = Buffer.from(text);
  let done = 0;
  while (done < bytes.length) {
    try {
      done += writeSync(fd, bytes, done);
    } catch (error) {
      const { code } = error as NodeJS.ErrnoException;
      if (code === 'EPIPE') return;
      if (code !== 'EAGAIN') throw error;
    }
  }
}

if (answerShare()) {
  // A thread of a large check: nothing else to do.
} else if (process.argv[2] === 'lsp') {
  // The server is a bundle of its own beside this one, loaded only when it is asked for.
  if (!process.argv.includes('--stdio')) process.argv.push('--stdio');
  require('./server.cjs');
} else {
  const code = run(
    process.argv.slice(2),
    {
      cwd: process.cwd(),
      today: new Date().toISOString().slice(0, 10),
      out: (text) => write(1, text),
      err: (text) => write(2, text),
      in: () => (process.stdin.isTTY ? '' : readFileSync(0, 'utf8')),
    },
    version,
  );
  if (typeof code === 'number') process.exitCode = code;
  else
    void code.then((late) => {
      process.exitCode = late;
    });
}
