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
  const code = shorter(lean((standalone.default ?? standalone)(ajv, names)));
  if (code.includes('require(')) throw new Error('a validator needs something at run time that a web worker has not');
  return `${header}// @ts-nocheck\nimport { isNotation, isQuantity } from '../judge';\n${transformSync(code, { minify: true, format: 'esm' }).code}`;
}

/** Without what only ajv's own messages and data-changing keywords read: half of the code that every start would load. */
const lean = (code) =>
  code
    .replaceAll(/schemaPath:"[^"]*",/g, '')
    .replaceAll(/,propertyName:\w+\};/g, '};')
    .replaceAll(/,parentData:[\w.[\]"]+,parentDataProperty:[^,}]+,rootData/g, '')
    .replaceAll(',parentData,parentDataProperty,rootData', '')
    .replaceAll(', parentData, parentDataProperty, rootData=data', '');

/**
 * The same code with what ajv writes out at each of a thousand places said once, and of the schemas only what is read of them at run time.
 * A form that ajv should come to write otherwise stays as it is.
 */
function shorter(code) {
  const tables = [];
  const table = (rows) => {
    tables.push(`const table${tables.length} = {${rows}};`);
    return `table${tables.length - 1}`;
  };
  const sites = code
    .replaceAll(
      /const (err\d+) = \{instancePath(:.+?)?,keyword:("\w+"),params:(.+)\};\nif\(vErrors === null\)\{\nvErrors = \[\1\];\n\}\nelse \{\nvErrors\.push\(\1\);\n\}\nerrors\+\+;/g,
      (_, _name, at, keyword, params) =>
        `vErrors = breach(vErrors, ${at?.slice(1) ?? 'instancePath'}, ${keyword}, ${params});\nerrors++;`,
    )
    .replaceAll(
      /if\(!\((validate\d+)\((.+), \{instancePath(:.+)?\}\)\)\)\{\nvErrors = vErrors === null \? \1\.errors : vErrors\.concat\(\1\.errors\);\nerrors = vErrors\.length;\n\}/g,
      (_, validate, data, at) =>
        `vErrors = below(vErrors, ${validate}, ${data}, ${at?.slice(1) ?? 'instancePath'});\nerrors = count(vErrors);`,
    )
    // One field after the other, each with a validator of its own.
    .replaceAll(
      /(?:if\((data\d*)(?:\.(?:\w+)|\["[^"]+"\]) !== undefined\)\{\nvErrors = below\(vErrors, validate\d+, .+, instancePath\+"(?:[^"]*)\/[^"/]+"\);\nerrors = count\(vErrors\);\n\}\n){2,}/g,
      (run, data) => {
        const rows = [...run.matchAll(/below\(vErrors, (validate\d+), (.+), instancePath\+"([^"]*)\/([^"/]+)"\);/g)];
        const [, , , above] = rows[0];
        if (
          rows.some(
            ([, , from, path, key]) => path !== above || ![`${data}.${key}`, `${data}["${key}"]`].includes(from),
          )
        )
          return run;
        const named = table(rows.map(([, validate, , , key]) => `${JSON.stringify(key)}:${validate}`).join(','));
        return `vErrors = fields(vErrors, ${named}, ${data}, instancePath${above ? `+"${above}"` : ''});\nerrors = count(vErrors);\n`;
      },
    );
  return `${once}\n${onlyWhatIsRead(sites)}\n${tables.join('\n')}`;
}

const once = `
const count = (all) => all === null ? 0 : all.length;
function breach(all, instancePath, keyword, params){
const one = {instancePath,keyword,params};
if(all === null) return [one];
all.push(one);
return all;
}
function below(all, validate, data, instancePath){
if(validate(data, {instancePath})) return all;
return all === null ? validate.errors : all.concat(validate.errors);
}
function fields(all, table, data, instancePath){
for(const key in table)
if(data[key] !== undefined) all = below(all, table[key], data[key], instancePath + '/' + key);
return all;
}`;

/** The schemas beside the code, cut down to the paths by which it reads them; of properties only the names are asked. */
function onlyWhatIsRead(code) {
  return code.replaceAll(/^const (schema\d+) = (\{.*\});$/gm, (_, name, json) => {
    const schema = JSON.parse(json);
    const kept = {};
    const uses = [...code.matchAll(new RegExp(`\\b${name}((?:\\.\\w+|\\["[^"]+"\\])+)`, 'g'))];
    for (const [, spelled] of uses) {
      const steps = [...spelled.matchAll(/\.(\w+)|\["([^"]+)"\]/g)].map(([, plain, quoted]) => plain ?? quoted);
      let [from, to] = [schema, kept];
      for (const [i, step] of steps.entries()) {
        from = from[step];
        if (i < steps.length - 1) to = to[step] = Object(to[step]) === to[step] ? to[step] : {};
        else if (step !== 'properties') to[step] = from;
        else to[step] = { ...Object.fromEntries(Object.keys(from).map((key) => [key, 0])), ...to[step] };
      }
    }
    return `const ${name} = ${JSON.stringify(kept)};`;
  });
}

/** All schemas as one document, so that each definition is compiled once however many files refer to it. */
export function gather(schemas) {
  const defs = {};
  for (const schema of schemas.list) {
    const { $defs = {}, $id, ...own } = flat(schema, schemas);
    const name = nameOf($id);
    if (Object.keys(own).some((key) => key === 'type' || key === 'properties')) defs[name] = local(bare(own), $id);
    for (const [key, value] of Object.entries($defs)) defs[`${name}.${key}`] = local(bare(value), $id);
  }
  return named(defs);
}

/** What is said of a field and not referred to, such as that it is a text, as a definition too: a hundred fields that say the same are judged by one function. */
function named(defs) {
  const names = new Map();
  const walk = (node) => {
    if (Array.isArray(node)) return node.map(walk);
    if (!node || typeof node !== 'object') return node;
    return Object.fromEntries(Object.entries(node).map(([key, value]) => [key, under(key, value)]));
  };
  const under = (key, value) => {
    // A condition only asks: written in place it makes no breaches that nobody sees.
    if (key === 'if') return value;
    if (key !== 'properties') return walk(value);
    return Object.fromEntries(Object.entries(value).map(([name, one]) => [name, nameOfSaid(walk(one))]));
  };
  const nameOfSaid = (schema) => {
    if (schema.$ref || schema.properties) return schema;
    const text = JSON.stringify(schema);
    if (!names.has(text)) names.set(text, `said-${names.size}`);
    return { $ref: `#/$defs/${names.get(text)}` };
  };
  const walked = walk(defs);
  return { ...walked, ...Object.fromEntries([...names].map(([text, name]) => [name, JSON.parse(text)])) };
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
