/** Writes a file that was asked for, or says why it can't be. Decides no name. */
import { writeFileSync } from 'node:fs';
import path from 'node:path';
import { CannotRun, type Console } from './console';

export function writeFile(console: Console, file: string, text: string): void {
  try {
    writeFileSync(path.resolve(console.cwd, file), text);
  } catch (error) {
    throw new CannotRun(`Cannot write ${file}: ${(error as Error).message.split(',')[0]}.`);
  }
}
