/** A file as plain data before it is written: the generator's own form, which must know no field and no check. */

export type Tree = string | readonly string[] | readonly Branch[] | Branch;
export interface Branch {
  [key: string]: Tree | undefined;
}

export const isBranch = (tree: Tree | undefined): tree is Branch => typeof tree === 'object' && !Array.isArray(tree);

/** A copy in which the second says more, or otherwise; lists are taken whole. */
export function merged(under: Branch, over: Branch): Branch {
  const out: Branch = { ...under };
  for (const [key, value] of Object.entries(over)) {
    const below = out[key];
    out[key] = isBranch(below) && isBranch(value) ? merged(below, value) : value;
  }
  return out;
}

/** What a path such as `parts.motors.kv` leads to. */
export function at(tree: Branch, path: string): Tree | undefined {
  let here: Tree | undefined = tree;
  for (const key of path.split('.')) here = isBranch(here) ? here[key] : undefined;
  return here;
}

/** A copy with one value said, or taken out, at a path; branches on the way are made. */
export function withAt(tree: Branch, path: string, value: Tree | undefined): Branch {
  const [key, ...rest] = path.split('.') as [string, ...string[]];
  if (rest.length === 0) return { ...tree, [key]: value };
  const below = tree[key];
  return { ...tree, [key]: withAt(isBranch(below) ? below : {}, rest.join('.'), value) };
}
