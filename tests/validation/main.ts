/**
 * `npm run validate -- --data DIR`: error tables of the physics on a folder of measurements, every `.csv` of static propeller
 * tests and every `.json` of thrust-stand series in it. Without `--data` it uses the short transcribed tables.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { readStands, readStatics, type StandCase, type StaticCase } from './cases';
import { report } from './report';
import { TRANSCRIBED_STANDS, TRANSCRIBED_STATICS } from './transcribed';

function load(dir: string): { statics: StaticCase[]; stands: StandCase[] } {
  const files = readdirSync(dir).sort();
  const texts = (suffix: string): string[] =>
    files.filter((f) => f.endsWith(suffix)).map((f) => readFileSync(join(dir, f), 'utf8'));
  return { statics: texts('.csv').flatMap(readStatics), stands: texts('.json').flatMap(readStands) };
}

const at = process.argv.indexOf('--data');
const dir = at >= 0 ? process.argv[at + 1] : undefined;
if (at >= 0 && dir === undefined) {
  console.error('validate: --data needs a folder');
  process.exitCode = 2;
} else {
  try {
    const { statics, stands } =
      dir === undefined ? { statics: TRANSCRIBED_STATICS, stands: TRANSCRIBED_STANDS } : load(dir);
    console.log(report(statics, stands));
  } catch (error) {
    console.error(`validate: ${error instanceof Error ? error.message : String(error)}`);
    process.exitCode = 2;
  }
}
