/** The schemas by address, with references followed and what kinds of part share written into each; reads no files. */

export const fileKinds = ['build', 'parts', 'bench', 'shops', 'settings'];

const base = 'https://dryfit.example/schemas/';

export function openSchemas(list) {
  const byId = new Map(list.map((schema) => [schema.$id, schema]));
  const at = (address) => {
    const [file, pointer = ''] = address.split('#');
    let node = byId.get(file);
    if (!node) throw new Error(`no schema ${file}`);
    for (const step of pointer.split('/').filter(Boolean))
      node = node[step.replaceAll('~1', '/').replaceAll('~0', '~')];
    if (!node) throw new Error(`nothing at ${address}`);
    return node;
  };
  /** A schema with its `$ref` followed; what stands beside the reference wins. Returns the schema and the address its own references start from. */
  const follow = (schema, from) => {
    if (!schema.$ref) return { schema, from };
    const address = new URL(schema.$ref, from).href;
    const { schema: target, from: next } = follow(at(address), address.split('#')[0]);
    const { $ref: _, ...beside } = schema;
    return { schema: { ...target, ...beside }, from: next };
  };
  /** All properties of a map: of its `allOf` parts in the order head, own, tail. */
  const propertiesOf = (schema, from) => {
    const [head, ...rest] = (schema.allOf ?? []).filter((part) => part.$ref).map((part) => follow(part, from));
    const of = (part) =>
      part
        ? Object.entries(part.schema.properties ?? {}).map(([key, value]) => [key, { schema: value, from: part.from }])
        : [];
    const own = Object.entries(schema.properties ?? {}).map(([key, value]) => [key, { schema: value, from }]);
    return new Map([...of(head), ...own, ...rest.flatMap(of)]);
  };
  return {
    list,
    byId,
    at,
    follow,
    propertiesOf,
    root: (kind) => ({ schema: byId.get(`${base}${kind}.schema.json`), from: `${base}${kind}.schema.json` }),
  };
}

/** The part kinds that `any-part` tells apart, with the address of each one's schema. */
export function partKinds(schema, from) {
  const kinds = (schema.allOf ?? []).filter((branch) => branch.if);
  return kinds.map((branch) => [branch.if.properties.kind.const, { schema: branch.then, from }]);
}
