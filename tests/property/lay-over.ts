/** Lays a check's own example over a sound generated build, in the ways in which a builder would make that mistake. Knows no check. */

import { weightOfParts } from './draw/weigh';
import type { Example } from './read-yaml';
import { classes } from './trade/classes';
import { type Branch, isBranch, merged, withAt } from './tree';

/** A build with its bench; inline, so that a finding points at it. */
export interface Pair {
  readonly build: Branch;
  readonly bench: Branch;
  /** Shops files and reference builds of the same workspace. */
  readonly beside?: readonly Branch[];
}

export interface Way {
  readonly name: string;
  /** `bad` is the bad example, also when the good one is laid: what it makes of the build holds for both. */
  readonly lay: (base: Pair, example: Example, bad: Example) => Pair;
}

const said = ['name', 'craft', 'region', 'note', 'source', 'seen', 'budget', 'reference'];

/** Each field that the example says replaces the build's. */
const byField: Way = {
  name: 'field by field',
  lay: (base, { build, bench, beside }) => ({
    beside,
    build: merged(base.build, build),
    bench: bench ? merged(base.bench, bench) : base.bench,
  }),
};

/** Each part, pack or section that the example says replaces the build's whole. */
const byPart: Way = {
  name: 'part by part',
  lay: (base, { build, bench, beside }) => ({
    beside,
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
  lay: (base, example, bad) => {
    const names = Object.keys(isBranch(example.build.packs) ? example.build.packs : {});
    const packs = isBranch(base.build.packs) ? base.build.packs : {};
    const kept = Object.fromEntries(Object.entries(packs).filter(([name]) => names.includes(name)));
    return way.lay(names.length > 0 ? { ...base, build: { ...base.build, packs: kept } } : base, example, bad);
  },
});

/** The same after the build has lost something: a part, a wired device, a line of its setup. */
function without(way: Way, section: string, key: string): Way {
  return {
    name: `${way.name}, without ${section}.${key}`,
    lay: (base, example, bad) => {
      const tree = base.build[section];
      if (!isBranch(tree)) return way.lay(base, example, bad);
      const { [key]: _, ...rest } = tree;
      return way.lay({ ...base, build: { ...base.build, [section]: rest } }, example, bad);
    },
  };
}

const devices = /^(camera|video|receiver|gps|buzzer|lights|remote-id|action-camera)/;

/** The same before any device is bought: what is added up then is the example's. */
const bare = (way: Way): Way => ({
  name: `${way.name}, before its devices`,
  lay: (base, example, bad) => {
    const parts = isBranch(base.build.parts) ? base.build.parts : {};
    const kept = Object.fromEntries(Object.entries(parts).filter(([role]) => !devices.test(role)));
    return way.lay({ ...base, build: { ...base.build, parts: kept, wiring: undefined } }, example, bad);
  },
});

/** g at which profiles of regions change; a craft just there is loaded up to it. */
const limits = [100, 249.8, 900];

/** Takes grams off the first part that has them. */
function lightened(build: Branch, grams: number): Branch {
  const parts = isBranch(build.parts) ? build.parts : {};
  for (const [role, part] of Object.entries(parts)) {
    const weight = isBranch(part) && typeof part.weight === 'string' ? Number.parseFloat(part.weight) : 0;
    if (weight > grams + 1) return withAt(build, `parts.${role}.weight`, `${(weight - grams).toFixed(1)} g`);
  }
  return build;
}

const loaded = (way: Way, grams: number): Way => ({
  name: `${way.name}, loaded up to ${grams} g`,
  lay: (base, example, bad) => {
    const { parts, packs } = way.lay(base, bad, bad).build;
    const missing = grams - weightOfParts(isBranch(parts) ? parts : {}, isBranch(packs) ? packs : {});
    const out = way.lay(base, example, bad);
    if (missing < 0) return { ...out, build: lightened(out.build, -missing) };
    const ballast = { parts: { extras: { ballast: { weight: `${missing.toFixed(1)} g` } } } };
    return { ...out, build: merged(out.build, ballast) };
  },
});

export function waysFor(base: Pair, few: boolean): readonly Way[] {
  const plain = [byField, byPart, packsAlone(byField), packsAlone(byPart)];
  if (few) return plain;
  const losses = ['parts', 'setup', 'flight', 'goals', 'wiring'].flatMap((section) => {
    const tree = base.build[section];
    return isBranch(tree)
      ? Object.keys(tree).flatMap((key) => plain.slice(0, 2).map((way) => without(way, section, key)))
      : [];
  });
  return [bare(byField), ...limits.map((grams) => loaded(packsAlone(byField), grams)), ...losses];
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
