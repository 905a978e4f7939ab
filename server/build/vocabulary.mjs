/** Compiles schemas/ into what the engine reads: field tables, TypeScript types of facts, and validators that need no eval. Writes only generated/. */
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { emitChecks, emitExplanations } from './check-list.mjs';
import { emitFacts } from './emit-facts.mjs';
import { emitFields } from './emit-fields.mjs';
import { emitLibrary } from './emit-library.mjs';
import { emitValidators } from './emit-validators.mjs';
import { openSchemas } from './schemas.mjs';

const root = path.resolve(import.meta.dirname, '../..');

export function compileVocabulary() {
  const schemas = openSchemas(readSchemas(path.join(root, 'schemas')));
  const out = path.join(root, 'server/src/vocabulary/generated');
  mkdirSync(out, { recursive: true });
  write(path.join(out, 'fields.ts'), emitFields(schemas));
  const build = path.join(root, 'server/src/build/generated');
  mkdirSync(build, { recursive: true });
  write(path.join(build, 'facts.ts'), emitFacts(schemas));
  write(path.join(out, 'validators.js'), emitValidators(schemas));
  write(path.join(out, 'validators.d.ts'), validatorTypes);
  const checks = path.join(root, 'server/src/checks');
  mkdirSync(path.join(checks, 'generated'), { recursive: true });
  write(path.join(checks, 'generated/all.ts'), emitChecks(checks));
  write(path.join(checks, 'generated/explanations.ts'), emitExplanations(checks));
  const library = path.join(root, 'server/src/library/generated');
  mkdirSync(library, { recursive: true });
  write(path.join(library, 'samples.ts'), emitLibrary(readParts(path.join(root, 'samples/parts'))));
}

function readParts(folder) {
  const names = readdirSync(folder).sort();
  return names.map((name) => ({ name, text: readFileSync(path.join(folder, name), 'utf8').replaceAll('\r\n', '\n') }));
}

function readSchemas(folder) {
  return readdirSync(folder, { recursive: true })
    .map(String)
    .filter((name) => name.endsWith('.schema.json'))
    .sort()
    .map((name) => JSON.parse(readFileSync(path.join(folder, name), 'utf8')));
}

/** Leaves a file alone that already says the same, so that watchers and caches stay quiet. */
function write(file, text) {
  let before = '';
  try {
    before = readFileSync(file, 'utf8');
  } catch (error) {
    if (error.code !== 'ENOENT') throw error;
  }
  if (before !== text) writeFileSync(file, text);
}

const validatorTypes = `import type { ErrorObject } from 'ajv';
type Validate = ((data: unknown) => boolean) & { errors?: ErrorObject[] | null };
export const build: Validate;
export const parts: Validate;
export const bench: Validate;
export const shops: Validate;
export const settings: Validate;
`;

if (process.argv[1] === import.meta.filename) compileVocabulary();
