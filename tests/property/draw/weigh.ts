/** Adds up what a drawn build's parts weigh by their own words, as a builder does on paper. */
import { type Branch, isBranch, type Tree } from '../tree';

const grams = (text: Tree | undefined): number => (typeof text === 'string' ? Number.parseFloat(text) : 0);
const named: ReadonlySet<string> = new Set(['adapters', 'fasteners', 'extras']);

/** g, with the heaviest of the packs. */
export function weightOfParts(parts: Branch, packs: Branch): number {
  const each = (part: Tree | undefined, usual = 1): number => {
    if (!isBranch(part)) return 0;
    return grams(part.weight) * (typeof part.count === 'string' ? Number(part.count) : usual);
  };
  const sum = Object.entries(parts).reduce((total, [role, part]) => {
    if (named.has(role) && isBranch(part))
      return total + Object.values(part).reduce<number>((all, one) => all + each(one), 0);
    return total + each(part, role === 'propellers' ? 4 : 1);
  }, 0);
  return sum + Math.max(0, ...Object.values(packs).map((pack) => (isBranch(pack) ? grams(pack.weight) : 0)));
}
