/** Writes ajv's standalone validators: plain functions, no eval, so that they also run in a web worker. */
import { Ajv } from 'ajv';
import { _ } from 'ajv/dist/compile/codegen/index.js';
import standalone from 'ajv/dist/standalone/index.js';
import { transformSync } from 'esbuild';
import { header } from './emit-fields.mjs';
import { fileKinds } from './schemas.mjs';

/** A keyword whose judging function lives in the engine and is imported by name in the generated file. */
const judged = (keyword, name, code) => ({
  keyword,
  schemaType: 'string',
  code(cxt) {
    const judge = cxt.gen.scopeValue('func', { ref: name, key: name, code });
    cxt.fail(_`!${judge}(${cxt.data}, ${cxt.schema})`);
  },
});

export function emitValidators(schemas) {
  const ajv = new Ajv({
    allErrors: true,
    messages: false,
    inlineRefs: false,
    strict: true,
    strictTypes: false,
    strictRequired: false,
    allowUnionTypes: true,
    code: { source: true, esm: true, lines: true },
  });
  ajv.addKeyword(judged('quantity', 'isQuantity', _`isQuantity`));
  ajv.addKeyword(judged('notation', 'isNotation', _`isNotation`));
  const names = Object.fromEntries(fileKinds.map((kind) => [kind, `dryfit#/$defs/${kind}`]));
  ajv.addSchema({ $id: 'dryfit', $defs: gather(schemas) });
  const code = lean((standalone.default ?? standalone)(ajv, names));
  if (code.includes('require(')) throw new Error('a validator needs something at run time that a web worker has not');
  return `${header}// @ts-nocheck\nimport { isNotation, isQuantity } from '../judge';\n${transformSync(code, { minify: true, format: 'esm' }).code}`;
}

/** Without what only ajv's own messages and data-changing keywords read: half of the code that every start would load. */
const lean = (code) =>
  code
    .replaceAll(/schemaPath:"[^"]*",/g, '')
    .replaceAll(/,parentData:[\w.[\]"]+,parentDataProperty:[^,}]+,rootData/g, '')
    .replaceAll(',parentData,parentDataProperty,rootData', '')
    .replaceAll(', parentData, parentDataProperty, rootData=data', '');

/** All schemas as one document, so that each definition is compiled once however many files refer to it. */
function gather(schemas) {
  const defs = {};
  for (const schema of schemas.list) {
    const { $defs = {}, $id, ...own } = flat(schema, schemas);
    const name = nameOf($id);
    if (Object.keys(own).some((key) => key === 'type' || key === 'properties')) defs[name] = local(bare(own), $id);
    for (const [key, value] of Object.entries($defs)) defs[`${name}.${key}`] = local(bare(value), $id);
  }
  return defs;
}

const nameOf = (id) => id.split('/').pop().replace('.schema.json', '');

function local(node, from) {
  if (Array.isArray(node)) return node.map((item) => local(item, from));
  if (!node || typeof node !== 'object') return node;
  const entries = Object.entries(node).map(([key, value]) => {
    if (key !== '$ref' || typeof value !== 'string') return [key, local(value, from)];
    const [file, pointer = ''] = new URL(value, from).href.split('#');
    return [key, `#/$defs/${nameOf(file)}${pointer.replace('/$defs/', '.')}`];
  });
  return Object.fromEntries(entries);
}

/**
 * The same schema with what all parts share written in. Only this form tells an unknown key from a known one whose value is wrong:
 * by the standard, a branch with a wrong value counts none of its keys as known.
 */
function flat(schema, schemas) {
  const copy = { ...schema };
  if (copy.unevaluatedProperties === false) {
    const properties = Object.fromEntries(
      [...schemas.propertiesOf(schema, schema.$id)].map(([key, value]) => [key, absolute(value.schema, value.from)]),
    );
    delete copy.allOf;
    delete copy.unevaluatedProperties;
    return { ...copy, properties, additionalProperties: false };
  }
  return copy;
}

function absolute(node, from) {
  if (Array.isArray(node)) return node.map((item) => absolute(item, from));
  if (!node || typeof node !== 'object') return node;
  return Object.fromEntries(
    Object.entries(node).map(([key, value]) => [
      key,
      key === '$ref' ? new URL(value, from).href : absolute(value, from),
    ]),
  );
}

/** What only people and editors read; without it the validators are a third of the size. */
const spokenKeywords = new Set([
  '$schema',
  'title',
  'description',
  'examples',
  'usual',
  'explained',
  'source',
  'family',
  'reference',
  'keyPattern',
  'commaList',
]);

function bare(node, isProperties = false) {
  if (Array.isArray(node)) return node.map((item) => bare(item));
  if (!node || typeof node !== 'object') return node;
  const entries = Object.entries(node).filter(([key]) => isProperties || !spokenKeywords.has(key));
  return Object.fromEntries(
    entries.map(([key, value]) => [key, bare(value, !isProperties && (key === 'properties' || key === '$defs'))]),
  );
}
