/** A drawn build written down as files: inline or by parts files, with the bench beside it. The one door for the tests of this folder. */
import { type Analysis, analyse } from '../../server/src/analysis';
import { Workspace } from '../../server/src/library/workspace';
import { besideOf } from './draw/beside';
import { type Drawn, drawBuild } from './draw/build';
import { type Luck, luck } from './draw/luck';
import { type Branch, isBranch } from './tree';
import { writeYaml } from './write-yaml';

export interface GeneratedBuild extends Drawn {
  readonly seed: number;
  readonly files: ReadonlyMap<string, string>;
  readonly uri: string;
}

export const buildUri = 'file:///club/builds/generated.dryfit.yaml';
export const partsUri = 'file:///club/parts/generated.dryfit.yaml';
export const besideUri = (i: number): string => `file:///club/beside/${i}.dryfit.yaml`;
export const benchUri = 'file:///club/bench.dryfit.yaml';

export function generated(seed: number, craftName?: string): GeneratedBuild {
  const chance = luck(seed);
  const drawn = drawBuild(chance, craftName);
  return { ...drawn, seed, ...written(chance, drawn, luck(seed + 1_000_003)) };
}

function written(
  chance: Luck,
  { build, bench }: Drawn,
  other: Luck,
): { files: ReadonlyMap<string, string>; uri: string } {
  const library: Branch = {};
  const described = chance.often(30) ? build : { ...build, ...toLibrary(chance, build, library) };
  const { build: moved, beside } = besideOf(other, described, build);
  const files = new Map([
    [buildUri, writeYaml(moved, chance)],
    [benchUri, writeYaml(bench, chance)],
  ]);
  if (Object.keys(library).length > 0)
    files.set(
      partsUri,
      writeYaml({ dryfit: 'parts', name: 'Parts', source: "makers' sheets", parts: library }, chance),
    );
  for (const [i, one] of beside.entries()) files.set(besideUri(i), writeYaml(one, other));
  return { files, uri: buildUri };
}

const kinds: Readonly<Record<string, string>> = { motors: 'motor', propellers: 'propeller' };
/** Said in the build even when the part is in a parts file. */
const own = ['count', 'spares', 'screws', 'washer', 'soft-mount', 'at', 'between', 'distance'];

function toLibrary(chance: Luck, build: Branch, library: Branch): Branch {
  const parts = { ...(build.parts as Branch) };
  for (const [role, part] of Object.entries(parts)) {
    if (!isBranch(part) || /^(adapters|fasteners|extras)$/.test(role) || chance.often(40)) continue;
    parts[role] = used(chance, part, kinds[role] ?? role, `${role}-${chance.between(1, 99)}`, library);
  }
  const packs = { ...(build.packs as Branch) };
  for (const [name, pack] of Object.entries(packs)) {
    if (!isBranch(pack) || chance.often(40)) continue;
    packs[name] = used(chance, pack, 'battery', `pack-${name}`, library);
  }
  return { parts, packs };
}

/** Moves a part into the library; a few of its fields stay in the build, over another value in the library. */
function used(chance: Luck, part: Branch, kind: string, id: string, library: Branch): Branch {
  const here: Branch = { use: id };
  const there: Branch = { kind, name: `Sort ${chance.between(1, 99)}` };
  for (const [key, value] of Object.entries(part)) {
    if (own.includes(key)) here[key] = value;
    else there[key] = value;
  }
  if (typeof there.weight === 'string' && chance.often(10)) {
    here.weight = there.weight;
    there.weight = '11 g';
  }
  if (chance.often(15)) {
    // A variant: what differs is said over a base.
    const keys = Object.keys(there).filter((key) => typeof there[key] === 'string' && key !== 'kind' && key !== 'name');
    const kept = chance.few(keys, Math.min(2, keys.length));
    const base: Branch = { ...there, name: 'Base sort' };
    library[`${id}-base`] = base;
    library[id] = {
      use: `${id}-base`,
      kind,
      name: there.name,
      ...Object.fromEntries(kept.map((key) => [key, there[key]])),
    };
  } else library[id] = there;
  return here;
}

export function analysed(files: ReadonlyMap<string, string>, uri = buildUri): Analysis {
  const workspace = new Workspace();
  for (const [name, text] of files) workspace.set(name, text);
  return analyse(workspace, uri)!;
}
