/** The one number in which a check's two examples differ, and builds with other numbers in its place. Knows no check. */
import type { Example } from './read-yaml';
import { at, type Branch, isBranch, type Tree, withAt } from './tree';

export interface Dial {
  readonly where: 'build' | 'bench';
  readonly path: string;
  readonly bad: number;
  readonly good: number;
  /** Decimals worth turning by; whole things are turned whole. */
  readonly whole: boolean;
  /** The value's text with this number in it. */
  readonly say: (value: number) => string;
}

const numbers = /\d+(?:\.\d+)?/g;

/** Every number that could be turned from the bad example's value to the good one's. */
export function dials(bad: Example, good: Example): readonly Dial[] {
  return (['build', 'bench'] as const).flatMap((where) =>
    leaves(bad[where] ?? {}).flatMap(([path, text]) => {
      const other = at(good[where] ?? {}, path);
      const dial = typeof other === 'string' ? dialOf(text, other) : undefined;
      return dial ? [{ where, path, ...dial }] : [];
    }),
  );
}

function leaves(tree: Branch, above = ''): readonly (readonly [string, string])[] {
  return Object.entries(tree).flatMap(([key, value]: [string, Tree | undefined]) => {
    const path = above ? `${above}.${key}` : key;
    if (typeof value === 'string') return [[path, value] as const];
    return isBranch(value) ? leaves(value, path) : [];
  });
}

/** Numbers that name a thing and measure nothing: a thread, a rail, an angle that has to be equal, a port, an address, a date. */
const names = [/^M\d/, /\d+(?:\.\d)?V$/, /deg$/, /uart|soft-serial/, /^0x/, /^\d{4}-/, /^[A-FR]\d$/];

/** Texts alike but for one number. */
function dialOf(bad: string, good: string): Omit<Dial, 'where' | 'path'> | undefined {
  if (bad.replace(numbers, '#') !== good.replace(numbers, '#')) return undefined;
  if (names.some((name) => name.test(bad))) return undefined;
  const [from, to] = [bad.match(numbers) ?? [], good.match(numbers) ?? []];
  const differ = from.flatMap((one, i) => (one === to[i] ? [] : [i]));
  const [only] = differ;
  if (only === undefined || differ.length > 1) return undefined;
  // Cells, gauges, counts and angles of a board come whole.
  const whole = /^\d+$|\d+S|AWG/.test(bad);
  let seen = -1;
  const say = (value: number): string =>
    bad.replace(numbers, (one) => {
      seen = (seen + 1) % from.length;
      return seen === only ? String(Number(value.toPrecision(12))) : one;
    });
  return { bad: Number(from[only]), good: Number(to[only]), whole, say };
}

export const turned = (example: Example, dial: Dial, value: number): Example => ({
  ...example,
  [dial.where]: withAt(example[dial.where] ?? {}, dial.path, dial.say(value)),
});
