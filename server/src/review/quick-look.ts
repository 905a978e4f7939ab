/** What can be told of a text without parsing it, so that a review of thousands of builds reads only those that may matter. Errs towards reading. */

/** Whether a text can only hold builds that nothing else looks at. */
export function onlyBuilds(text: string): boolean {
  // An escape could hide a key, and a build for comparison may be looked at by others.
  if (text.includes('\\') || /\breference["']?\s*:/.test(text)) return false;
  const kinds = [...text.matchAll(/dryfit["']?\s*:[^\S\r\n]*["']?([a-z]*)/g)];
  return kinds.length > 0 && kinds.every((kind) => kind[1] === 'build') && !/&\S+\s+["']?dryfit/.test(text);
}

const plainId = /^[\w.-]+$/;

/** Whether a text may name one of the ids. */
export function mentions(text: string, ids: ReadonlySet<string>, allPlain: boolean): boolean {
  if (ids.size === 0) return false;
  if (!allPlain || text.includes('\\')) return true;
  for (const word of text.match(/[\w.-]+/g) ?? []) if (ids.has(word)) return true;
  return false;
}

export const arePlain = (ids: ReadonlySet<string>): boolean => [...ids].every((id) => plainId.test(id));
