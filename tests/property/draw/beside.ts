/** Draws what stands beside some builds: a shops file that has all its parts, and three reference craft around it. Must stay sound: nothing here is wrong. */
import { type Branch, isBranch } from '../tree';
import type { Luck } from './luck';

export interface Beside {
  readonly build: Branch;
  readonly beside: readonly Branch[];
}

/** @param plain the same build with its values inline */
/** In the order of the work. */
const gates = [
  'dry-fit',
  'harness',
  'joints',
  'motor-wires',
  'first-power',
  'rails',
  'receiver',
  'video',
  'motors-turn',
  'closed',
  'weighed',
  'first-hover',
];

const datesOf = (names: readonly string[]): Branch =>
  Object.fromEntries(names.map((name, i) => [name, `2026-11-${10 + i}`]));

export function besideOf(luck: Luck, described: Branch, plain: Branch): Beside {
  const references = luck.often(12) ? referencesOf(luck, plain) : [];
  const passed = luck.often(8) ? gates.slice(0, luck.between(1, gates.length)) : [];
  const build = passed.length > 0 ? { ...described, gates: datesOf(passed) } : described;
  if (!luck.often(45)) return { build, beside: references };
  const shops = ['pellam', 'tarn'];
  const ordered = luck.often(70);
  const offers = shops.map((): Branch => ({}));
  const named = (part: Branch, id: string, here: Branch): Branch => {
    const sold = typeof part.use === 'string' ? part.use : id;
    const at = luck.below(2);
    const pack = typeof here.pieces === 'string' ? here.pieces : '1';
    for (const [i, own] of offers.entries())
      if (i === at || luck.often(50))
        own[sold] = [{ pack, price: `${luck.between(8, 12)}.50`, seen: `2026-11-${luck.between(10, 20)}` }];
    return {
      ...part,
      ...(part.use === undefined ? { 'sold-as': sold } : {}),
      ...(ordered ? { from: shops[at] } : {}),
    };
  };
  const over = (section: string): Branch => {
    const tree = build[section];
    const inline = plain[section];
    if (!isBranch(tree)) return {};
    return Object.fromEntries(
      Object.entries(tree).map(([name, part]) => {
        const here = isBranch(inline) && isBranch(inline[name]) ? inline[name] : {};
        const single = isBranch(part) && !/^(adapters|fasteners|extras)$/.test(name);
        return [name, single ? named(part, `${section}-${name}`, here) : part];
      }),
    );
  };
  const bought: Branch = { ...build, parts: over('parts') };
  if (isBranch(build.packs)) bought.packs = over('packs');
  if (ordered && luck.often(50)) bought.goals = { ...(isBranch(build.goals) ? build.goals : {}), parcels: '3' };
  const file: Branch = {
    dryfit: 'shops',
    currency: 'EUR',
    'rates-seen': '2026-11-20',
    shops: Object.fromEntries(
      shops.map((id, i) => [
        id,
        {
          currency: 'EUR',
          'tax-included': 'yes',
          flat: '1.50',
          'transit-days': String(luck.between(2, 6)),
          offers: offers[i],
        },
      ]),
    ),
  };
  return { build: bought, beside: [file, ...references] };
}

function referencesOf(luck: Luck, { craft, parts, packs }: Branch): readonly Branch[] {
  const motors = isBranch(parts) && isBranch(parts.motors) ? parts.motors : {};
  const pack = isBranch(packs) ? Object.values(packs).find(isBranch) : undefined;
  if (typeof craft !== 'string' || typeof motors.kv !== 'string' || !pack) return [];
  const kv = Number(motors.kv);
  return [0.95, 1, 1.05].map((share, i) => ({
    dryfit: 'build',
    name: `Reference ${i}`,
    craft,
    reference: 'yes',
    source: 'a survey',
    seen: `2026-10-0${luck.between(1, 9)}`,
    parts: { motors: { stator: motors.stator, kv: String(Math.round(kv * share)) } },
    packs: { main: { cells: pack.cells } },
  }));
}
