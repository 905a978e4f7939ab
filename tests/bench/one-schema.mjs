/** The schemas as one document, for tools that cannot follow addresses: every reference points inside it. Changes no rule. */
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';

export function oneSchema(root, kind) {
  const folder = path.join(root, 'schemas');
  const defs = {};
  const nameOf = (id) => id.split('/').pop().replace('.schema.json', '');
  const local = (node, from) => {
    if (Array.isArray(node)) return node.map((item) => local(item, from));
    if (!node || typeof node !== 'object') return node;
    const entries = Object.entries(node).map(([key, value]) => {
      if (key !== '$ref' || typeof value !== 'string') return [key, local(value, from)];
      const [file, pointer = ''] = new URL(value, from).href.split('#');
      return [key, `#/$defs/${nameOf(file)}${pointer.replace('/$defs/', '.')}`];
    });
    return Object.fromEntries(entries);
  };
  for (const name of readdirSync(folder, { recursive: true }).map(String)) {
    if (!name.endsWith('.schema.json')) continue;
    const { $defs = {}, $id, $schema, ...own } = JSON.parse(readFileSync(path.join(folder, name), 'utf8'));
    defs[nameOf($id)] = local(own, $id);
    for (const [key, value] of Object.entries($defs)) defs[`${nameOf($id)}.${key}`] = local(value, $id);
  }
  return { $schema: 'https://json-schema.org/draft/2020-12/schema', $ref: `#/$defs/${kind}`, $defs: defs };
}
