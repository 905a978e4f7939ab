/** The validators that are made from schemas/ and then shortened hold against any file what ajv itself does, at the same places. */
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { Ajv } from 'ajv';
import { expect, it } from 'vitest';
import { gather } from '../../server/build/emit-validators.mjs';
import { openSchemas } from '../../server/build/schemas.mjs';
import { project } from '../../server/src/build/slot';
import { readSourceFile } from '../../server/src/build/source-file';
import { fieldOf, fileKinds, validate } from '../../server/src/vocabulary';
import { isNotation, isQuantity } from '../../server/src/vocabulary/judge';
import { damage } from '../support/damage';
import { sampleNames, sampleText } from '../support/samples';
import { seeded } from '../support/seeded';

const folder = path.resolve(import.meta.dirname, '../../schemas');
const schemas = readdirSync(folder, { recursive: true })
  .filter((name) => String(name).endsWith('.schema.json'))
  .map((name) => JSON.parse(readFileSync(path.join(folder, String(name)), 'utf8')));

const ajv = new Ajv({ allErrors: true, strictTypes: false, strictRequired: false, allowUnionTypes: true });
ajv.addKeyword({ keyword: 'quantity', schemaType: 'string', validate: (of, data) => isQuantity(data, of) });
ajv.addKeyword({ keyword: 'notation', schemaType: 'string', validate: (of, data) => isNotation(data, of) });
ajv.addSchema({ $id: 'dryfit', $defs: gather(openSchemas(schemas)) });

const said = (breaches) => breaches.map((breach) => JSON.stringify(breach)).sort();

/** Of ajv without what nobody reads: the place in the schema, and a name that is said twice. */
function byAjv(kind, data) {
  const judge = ajv.getSchema(`dryfit#/$defs/${kind}`);
  if (judge(data)) return [];
  return judge.errors.map(({ instancePath, keyword, params }) => ({ path: instancePath, keyword, params }));
}

it.each(sampleNames)('%s, damaged, and taken for each kind of file', (name) => {
  const chance = seeded(20261127);
  let found = 0;
  for (let i = 0; i < 60; i++) {
    const text = i === 0 ? sampleText(name) : damage(sampleText(name), chance);
    for (const { root } of readSourceFile('file:///club/one.dryfit.yaml', text).documents) {
      if (root?.is !== 'map') continue;
      for (const kind of fileKinds) {
        const { data } = project(root, fieldOf[kind]);
        const ours = said(validate(kind, data));
        expect(ours).toEqual(said(byAjv(kind, data)));
        found += ours.length;
      }
    }
  }
  expect(found).toBeGreaterThan(100);
});
