/** Writes the TypeScript types of facts: every field possibly absent, by the very name it has in the file. */
import { header } from './emit-fields.mjs';
import { partKinds } from './schemas.mjs';

const pascal = (kebab) =>
  kebab
    .split(/[-_ ]/)
    .map((word) => word[0].toUpperCase() + word.slice(1))
    .join('');

export function emitFacts(schemas) {
  const interfaces = new Map();

  const leaf = (schema) => {
    if (schema.quantity) return 'Fact<number>';
    if (schema.notation) return `Fact<Notations['${schema.notation}']>`;
    if (schema.enum) return `Fact<${schema.enum.map((term) => `'${term.replaceAll("'", "\\'")}'`).join(' | ')}>`;
    if (schema.const) return `Fact<'${schema.const}'>`;
    return 'Fact<string>';
  };

  const type = (raw, rawFrom) => {
    const { schema, from } = schemas.follow(raw, rawFrom);
    const isPart = schema.$id?.includes('/parts/');
    if (isPart && partKinds(schema, from).length > 0)
      return partKinds(schema, from)
        .map(([kind]) => `${pascal(kind)}Facts`)
        .join(' | ');
    if (isPart)
      return named(pascal(schema.$id.split('/').pop().replace('.schema.json', '')), schemas.at(schema.$id), from);
    const properties = schemas.propertiesOf(schema, from);
    if (properties.size > 0) return `Facts & { ${members(properties)} }`;
    if (schema.type === 'object') return `Table<${type(schema.additionalProperties, from)}>`;
    if (schema.items) return `Many<${type(schema.items, from)}>`;
    return leaf(schema);
  };

  const members = (properties) =>
    [...properties].map(([key, value]) => `readonly '${key}'?: ${type(value.schema, value.from)};`).join(' ');

  const named = (name, schema, from) => {
    const key = `${name}Facts`;
    if (!interfaces.has(key)) {
      interfaces.set(key, '');
      interfaces.set(key, `export interface ${key} extends Facts { ${members(schemas.propertiesOf(schema, from))} }`);
    }
    return key;
  };

  const roots = ['build', 'parts', 'bench', 'shops', 'settings'].map((kind) => {
    const { schema, from } = schemas.root(kind);
    const list = schemas.propertiesOf(schema, from);
    return `export interface ${pascal(kind)}FileFacts extends Facts { ${members(list)} }`;
  });

  const { schema: any, from } = {
    schema: schemas.at('https://dryfit.example/schemas/parts/any-part.schema.json'),
    from: 'https://dryfit.example/schemas/parts/any-part.schema.json',
  };
  const byKind = partKinds(any, from).map(([kind, branch]) => `'${kind}': ${type(branch.schema, branch.from)};`);
  const paths = [];
  const walk = (raw, rawFrom, path) => {
    const { schema, from } = schemas.follow(raw, rawFrom);
    const properties = schemas.propertiesOf(schema, from);
    if (properties.size === 0 || (schema.type === 'object' && schema.additionalProperties && properties.size === 0)) {
      paths.push(`'${path}': ${type(raw, rawFrom)};`);
      return;
    }
    for (const [key, value] of properties) walk(value.schema, value.from, path ? `${path}.${key}` : key);
  };
  const build = schemas.root('build');
  const buildFields = schemas.propertiesOf(build.schema, build.from);
  const roles = schemas.propertiesOf(buildFields.get('parts').schema, build.from);
  const roleTypes = [];
  for (const [role, value] of roles) {
    walk(value.schema, value.from, role);
    roleTypes.push(`readonly '${role}'?: ${type(value.schema, value.from)};`);
  }
  const pack = buildFields.get('packs').schema.additionalProperties;
  walk(pack, build.from, 'pack');
  for (const map of ['setup', 'flight', 'goals']) walk(buildFields.get(map).schema, build.from, map);
  for (const key of ['name', 'craft', 'region', 'reference', 'budget', 'wiring', 'accept', 'gates'])
    walk(buildFields.get(key).schema, build.from, `build.${key}`);
  const bench = schemas.root('bench');
  walk(bench.schema, bench.from, 'bench');
  const shops = schemas.root('shops');
  walk(shops.schema, shops.from, 'shops');
  const imports =
    "import type { Fact, Facts, Many, Table } from '../fact';\nimport type { Notations } from '../../text/notation';\n";
  return `${header}${imports}\n${[...interfaces.values()].join('\n')}\n${roots.join('\n')}\nexport interface PartFactsByKind { ${byKind.join(' ')} }
/** The parts of a build by their role. */
export interface RoleFacts { ${roleTypes.join(' ')} }
/** Every fact of a craft by its path; what a check says it needs. */
export interface FactAt {\n${paths.map((line) => `  ${line}`).join('\n')}\n}\n`;
}
