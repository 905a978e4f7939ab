/** Writes the field tables that hover, completion and the reading of facts use. One constant for each schema that has a name. */
import { fileKinds, partKinds } from './schemas.mjs';

export function emitFields(schemas) {
  const named = new Map();
  const lines = [];
  const nameOf = (from, schema) =>
    from.includes('/parts/') && schema.$id
      ? `part_${schema.$id.split('/').pop().replace('.schema.json', '').replaceAll('-', '_')}`
      : undefined;

  const about = (schema) => {
    const out = { description: schema.description ?? schema.title ?? '' };
    if (schema.examples) out.examples = schema.examples;
    if (schema.usual) out.usual = schema.usual;
    if (schema.source) out.source = schema.source;
    return out;
  };

  const field = (raw, rawFrom) => {
    const { schema, from } = schemas.follow(raw, rawFrom);
    if (schema.$id && from.endsWith('any-part.schema.json')) {
      const kinds = partKinds(schema, from).map(
        ([kind, branch]) => `${JSON.stringify(kind)}: ${field(branch.schema, branch.from)}`,
      );
      return `{ is: 'by-kind', about: ${JSON.stringify(about(schema))}, kinds: { ${kinds.join(', ')} } }`;
    }
    const name = nameOf(from, schema);
    if (!name) return shared(body(schema, from));
    if (!named.has(name)) {
      named.set(name, true);
      // What a role says about itself is not what its kind says: the table of fields is shared, the description is not.
      lines.push(`const ${name} = ${body({ ...schemas.at(schema.$id) }, from)} as const satisfies MapField;`);
    }
    return raw.description ? `{ ...${name}, about: ${JSON.stringify(about(schema))} }` : name;
  };

  /** A field that is said in many places, such as the weight of every kind of part, is written once. */
  const constants = new Map();
  const shared = (text) => {
    const known = constants.get(text);
    if (known) return known;
    const name = `f${constants.size}`;
    constants.set(text, name);
    // What it names itself was written before it.
    lines.push(`const ${name}: Field = ${text};`);
    return name;
  };

  const body = (schema, from) => {
    const said = JSON.stringify(about(schema));
    const properties = schemas.propertiesOf(schema, from);
    if (properties.size > 0) {
      const entries = [...properties].map(
        ([key, value]) => `${JSON.stringify(key)}: ${field(value.schema, value.from)}`,
      );
      return `{ is: 'map', about: ${said}, required: ${JSON.stringify(schema.required ?? [])}, fields: { ${entries.join(',\n  ')} } }`;
    }
    if (schema.type === 'object') {
      const keys = schema.propertyNames?.enum ? `, keys: ${JSON.stringify(schema.propertyNames.enum)}` : '';
      const pattern = schema.propertyNames?.pattern
        ? `, keyPattern: ${JSON.stringify(schema.propertyNames.pattern)}`
        : '';
      return `{ is: 'table', about: ${said}, keyExample: ${JSON.stringify(schema.keyPattern ?? 'name')}${keys}${pattern}, of: ${field(schema.additionalProperties, from)} }`;
    }
    if (schema.items)
      return `{ is: 'list', about: ${said}, commaList: ${schema.commaList === true}, of: ${field(schema.items, from)} }`;
    if (schema.quantity) return `{ is: 'quantity', about: ${said}, dimension: ${JSON.stringify(schema.quantity)} }`;
    if (schema.notation) return `{ is: 'notation', about: ${said}, notation: ${JSON.stringify(schema.notation)} }`;
    if (schema.enum) {
      const terms = schema.enum.map((term) => ({ term, explained: schema.explained?.[term] ?? '' }));
      return `{ is: 'term', about: ${said}, terms: ${JSON.stringify(terms)} }`;
    }
    if (schema.const)
      return `{ is: 'term', about: ${said}, terms: ${JSON.stringify([{ term: schema.const, explained: schema.description ?? '' }])} }`;
    const family = schema.family ? `, family: ${JSON.stringify(schema.family)}` : '';
    const reference = schema.reference ? `, reference: ${JSON.stringify(schema.reference)}` : '';
    return `{ is: 'text', about: ${said}${family}${reference} }`;
  };

  const roots = fileKinds.map((kind) => {
    const { schema, from } = schemas.root(kind);
    return `export const ${kind}Field: MapField = ${body(schema, from)};`;
  });
  const build = schemas.root('build');
  const parts = schemas.propertiesOf(build.schema, build.from).get('parts').schema;
  const kindOf = (schema) =>
    (schema.$ref ?? schema.additionalProperties.$ref).split('/').pop().replace('.schema.json', '');
  const roleKinds = Object.entries(parts.properties).map(
    ([role, schema]) => `${JSON.stringify(role)}: ${JSON.stringify(kindOf(schema))}`,
  );
  roots.push(
    `/** Which kind of part fills each role of a build. */\nexport const roleKinds = { ${roleKinds.join(', ')} } as const;`,
  );
  return `${header}import type { Field, MapField } from '../field';\n\n${lines.join('\n')}\n\n${roots.join('\n\n')}\n`;
}

export const header = '// Made from schemas/ by server/build/vocabulary.mjs; not to be edited.\n';
