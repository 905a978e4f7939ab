/** Writes the list of all checks from the files that are there, so that a new check is one new file. */
import { readdirSync } from 'node:fs';
import { header } from './emit-fields.mjs';

export function emitChecks(folder) {
  const files = readdirSync(folder, { recursive: true })
    .map((name) => String(name).replaceAll('\\', '/'))
    .filter((name) => /^[a-z-]+\/[a-z0-9-]+\.ts$/.test(name) && !name.startsWith('generated/'))
    .sort();
  const imports = files.map((file, i) => `import c${i} from '../${file.replace(/\.ts$/, '')}';`);
  return `${header}import type { Check } from '../check';\n${imports.join('\n')}\n\nexport const allChecks: readonly Check[] = [${files.map((_, i) => `c${i}`).join(', ')}];\n`;
}
