/** Writes the lists of all checks and of their explanations from the files that are there, so that a new check is one new file. */
import { readdirSync } from 'node:fs';
import { header } from './emit-fields.mjs';

const checkFiles = (folder) =>
  readdirSync(folder, { recursive: true })
    .map((name) => String(name).replaceAll('\\', '/'))
    .filter((name) => /^[a-z-]+\/[a-z0-9-]+\.ts$/.test(name) && !name.startsWith('generated/'))
    .sort();

export function emitChecks(folder) {
  const files = checkFiles(folder);
  const imports = files.map((file, i) => `import c${i} from '../${file.replace(/\.ts$/, '')}';`);
  return `${header}import type { Check } from '../check';\n${imports.join('\n')}\n\nexport const allChecks: readonly Check[] = [${files.map((_, i) => `c${i}`).join(', ')}];\n`;
}

/** Apart from the checks, so that who does not show the explanations does not load them. */
export function emitExplanations(folder) {
  const files = checkFiles(folder);
  const imports = files.map(
    (file, i) => `import c${i}, { explanation as e${i} } from '../${file.replace(/\.ts$/, '')}';`,
  );
  const pairs = files.map((_, i) => `[c${i}.id, e${i}]`);
  return `${header}import type { Check, Explanation } from '../check';\n${imports.join('\n')}\n\nconst explanations: ReadonlyMap<string, Explanation> = new Map([${pairs.join(', ')}]);\n\nexport const explanationOf = (check: Check): Explanation => explanations.get(check.id)!;\n`;
}
