/** Lays a check's own example over a sound generated build, in the ways in which a builder would make that mistake. Knows no check. */

import type { Example } from './read-yaml';
import { classes } from './trade/classes';
import { type Branch, isBranch, merged } from './tree';

/** A build with its bench; inline, so that a finding points at it. */
export interface Pair {
  readonly build: Branch;
  readonly bench: Branch;
}

export interface Way {
  readonly name: string;
  readonly lay: (base: Pair, example: Example) => Pair;
}

const said = ['name', 'craft', 'region', 'note', 'source', 'seen', 'budget', 'reference'];

/** Each field that the example says replaces the build's. */
const byField: Way = {
  name: 'field by field',
  lay: (base, { build, bench }) => ({
    build: merged(base.build, build),
    bench: bench ? merged(base.bench, bench) : base.bench,
  }),
};

/** Each part, pack or section that the example says replaces the build's whole. */
const byPart: Way = {
  name: 'part by part',
  lay: (base, { build, bench }) => ({
    build: Object.fromEntries(
      Object.keys({ ...base.build, ...build }).map((key) => {
        const [under, over] = [base.build[key], build[key]];
        if (over === undefined) return [key, under];
        if (!isBranch(under) || !isBranch(over) || said.includes(key)) return [key, over];
        // The packs of the example are all there are.
        return [key, key === 'packs' ? over : { ...under, ...over }];
      }),
    ),
    bench: bench ? { ...base.bench, ...bench } : base.bench,
  }),
};

const packsAlone = (way: Way): Way => ({
  name: `${way.name}, its packs alone`,
  lay: (base, example) => {
    const names = Object.keys(isBranch(example.build.packs) ? example.build.packs : {});
    const packs = isBranch(base.build.packs) ? base.build.packs : {};
    const kept = Object.fromEntries(Object.entries(packs).filter(([name]) => names.includes(name)));
    return way.lay(names.length > 0 ? { ...base, build: { ...base.build, packs: kept } } : base, example);
  },
});

/** The same after the build has lost something: a part, a wired device, a line of its setup. */
function without(way: Way, section: string, key: string): Way {
  return {
    name: `${way.name}, without ${section}.${key}`,
    lay: (base, example) => {
      const tree = base.build[section];
      if (!isBranch(tree)) return way.lay(base, example);
      const { [key]: _, ...rest } = tree;
      return way.lay({ ...base, build: { ...base.build, [section]: rest } }, example);
    },
  };
}

export function waysFor(base: Pair): readonly Way[] {
  const plain = [byField, byPart, packsAlone(byField), packsAlone(byPart)];
  const losses = ['parts', 'setup', 'flight', 'goals', 'wiring'].flatMap((section) => {
    const tree = base.build[section];
    return isBranch(tree)
      ? Object.keys(tree).flatMap((key) => plain.slice(0, 2).map((way) => without(way, section, key)))
      : [];
  });
  return [...plain, ...losses];
}

/** Whether the example speaks of the same make-up of boards, so that no role would be filled twice. */
export function suits(base: Pair, { build }: Example): boolean {
  const over = isBranch(build.parts) ? build.parts : {};
  const under = isBranch(base.build.parts) ? base.build.parts : {};
  const makeUp = (parts: Branch): string | undefined =>
    parts['all-in-one'] ? 'one' : parts.stack ? 'stack' : parts['flight-controller'] || parts.esc ? 'apart' : undefined;
  const wanted = makeUp(over);
  if (wanted !== undefined && wanted !== makeUp(under)) return false;
  return (
    !(over.receiver && inside(under, 'receiver')) && !(over['video-transmitter'] && inside(under, 'video-transmitter'))
  );
}

const inside = (parts: Branch, role: string): boolean =>
  isBranch(parts['all-in-one']) && parts['all-in-one'][role] !== undefined;

export const isClass = (name: unknown): name is string => classes.some((one) => one.name === name);
