/** The schemas themselves: sound JSON Schema 2020-12, complete in words, and judged alike by a plain 2020-12 validator and by ours. */
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { readSourceFile } from '../../server/src/build/source-file';
import { structureFindings } from '../../server/src/build/structure';
import { readers } from '../../server/src/text/notation';
import { readQuantity } from '../../server/src/text/quantity';
import type { Dimension } from '../../server/src/text/units';
import { isDimension } from '../../server/src/text/units';
import { fieldOf, fileKinds } from '../../server/src/vocabulary';
import type { Field } from '../../server/src/vocabulary/field';
import { isNotation, isQuantity } from '../../server/src/vocabulary/judge';
import { sampleNames, sampleText, sampleUri } from '../support/samples';

const folder = path.resolve(import.meta.dirname, '../../schemas');
const names = readdirSync(folder, { recursive: true })
  .map(String)
  .filter((name) => name.endsWith('.schema.json'));
const schemas = names.map((name) => JSON.parse(readFileSync(path.join(folder, name), 'utf8')));

const custom = ['family', 'reference', 'usual', 'explained', 'source', 'keyPattern', 'commaList'];

function validator() {
  const ajv = new Ajv2020({
    allErrors: true,
    strict: true,
    strictTypes: false,
    strictRequired: false,
    allowUnionTypes: true,
  });
  for (const keyword of custom) ajv.addKeyword({ keyword });
  ajv.addKeyword({
    keyword: 'quantity',
    schemaType: 'string',
    validate: (dimension: Dimension, data: unknown) => isQuantity(data, dimension),
  });
  ajv.addKeyword({
    keyword: 'notation',
    schemaType: 'string',
    validate: (notation: keyof typeof readers, data: unknown) => isNotation(data, notation),
  });
  for (const schema of schemas) ajv.addSchema(schema);
  return ajv;
}

describe('the schema files', () => {
  const ajv = validator();
  it.each(names)('%s is sound JSON Schema 2020-12', (name) => {
    const schema = schemas[names.indexOf(name)];
    expect(ajv.validateSchema(schema)).toBe(true);
    expect(schema.$id.endsWith(`/${name.replaceAll('\\', '/')}`)).toBe(true);
    expect(() => ajv.getSchema(schema.$id)).not.toThrow();
  });

  it('explains each term, in the same order', () => {
    const terms = schemas[names.indexOf('terms.schema.json')].$defs as Record<
      string,
      { enum: string[]; explained: Record<string, string> }
    >;
    for (const [name, def] of Object.entries(terms)) {
      expect(Object.keys(def.explained), name).toEqual(def.enum);
      for (const [term, words] of Object.entries(def.explained))
        expect(words.length, `${name}: ${term}`).toBeGreaterThan(2);
    }
  });

  it('names only dimensions and notations that can be read, with an example of each', () => {
    const values = schemas[names.indexOf('values.schema.json')].$defs as Record<
      string,
      { quantity?: string; notation?: string; examples: string[] }
    >;
    for (const [name, def] of Object.entries(values)) {
      if (def.quantity !== undefined) {
        expect(isDimension(def.quantity), name).toBe(true);
        expect(readQuantity(def.examples[0]!, def.quantity as Dimension), name).toMatchObject({ ok: true });
      } else expect(readers[def.notation as keyof typeof readers](def.examples[0]!), name).toMatchObject({ ok: true });
    }
  });
});

describe('every field', () => {
  const fields: [string, Field][] = [];
  const walk = (field: Field, at: string): void => {
    fields.push([at, field]);
    if (field.is === 'map') for (const [key, kid] of Object.entries(field.fields)) walk(kid, `${at}.${key}`);
    if (field.is === 'table' || field.is === 'list') walk(field.of, `${at}[]`);
    if (field.is === 'by-kind') for (const [kind, kid] of Object.entries(field.kinds)) walk(kid, `${at}(${kind})`);
  };
  for (const kind of fileKinds) walk(fieldOf[kind], kind);

  it('is described', () => {
    expect(
      fields.filter(([at, field]) => field.about.description.length < 4 && !/\]$|\)$/.test(at)).map(([at]) => at),
    ).toEqual([]);
    expect(fields.length).toBeGreaterThan(300);
  });

  it('has an example that it accepts itself, inside what is usual', () => {
    for (const [at, field] of fields) {
      const example = field.about.examples?.[0];
      if (field.is !== 'quantity' && field.is !== 'notation') continue;
      expect(example, at).toBeDefined();
      if (field.is === 'notation') {
        expect(readers[field.notation](example!), `${at}: ${example}`).toMatchObject({ ok: true });
        continue;
      }
      const read = readQuantity(example!, field.dimension);
      expect(read, `${at}: ${example}`).toMatchObject({ ok: true });
      const [low, high] = (field.about.usual ?? []).map((text) => readQuantity(text, field.dimension));
      if (low && high && read.ok) {
        expect(low, `${at}: ${field.about.usual}`).toMatchObject({ ok: true });
        expect(high, `${at}: ${field.about.usual}`).toMatchObject({ ok: true });
        if (low.ok && high.ok)
          expect(low.value <= read.value && read.value <= high.value, `${at}: ${example}`).toBe(true);
      }
    }
  });
});

describe('a plain 2020-12 validator agrees with ours', () => {
  const ajv = validator();
  it.each(sampleNames)('%s', (name) => {
    const data = parse(sampleText(name), { merge: true });
    const file = readSourceFile(sampleUri(name), sampleText(name));
    const ours = structureFindings(file).length === 0;
    const plain = ajv.getSchema(`https://dryfit.example/schemas/${data.dryfit}.schema.json`)!;
    // A text with commas stands for a list in our reading; a plain validator takes it as it is.
    expect(plain(data)).toBe(ours);
  });
});
