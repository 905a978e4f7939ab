/** One craft resolved: what fills each role, with which packs it flies and what its builder owns. Holds facts; compares nothing. */
import { own } from '../text/own';
import { roleKinds } from '../vocabulary/generated/fields';
import type { Facts } from './fact';
import type {
  BatteryFacts,
  BenchFileFacts,
  BuildFileFacts,
  RoleFacts,
  SettingsFileFacts,
  ShopsFileFacts,
} from './generated/facts';
import type { Place } from './place';
import { type FindPart, type Layer, placeOf, readMap, readWhole, underlaid } from './read-facts';
import { kidOf, type Slot } from './slot';
import type { FileDocument, SourceFile } from './source-file';

export type Role = keyof typeof roleKinds;

/** Roles that hold one part, not a table of parts. */
export type SingleRole = Exclude<Role, 'adapters' | 'fasteners' | 'extras'>;

export interface Pack {
  readonly name: string;
  readonly facts: BatteryFacts;
}

/** A role that two parts of the build fill. */
export interface Doubled {
  readonly role: Role;
  readonly by: readonly Place[];
}

/** A `use:` that leads nowhere. */
export interface LostUse {
  readonly id: string;
  readonly at: Place;
  /** The kind of part wanted there. */
  readonly kind: string;
}

export interface Craft {
  readonly file: string;
  /** The value of `name`, or the first key: where a finding about the whole craft is shown. */
  readonly where: Place;
  readonly said: BuildFileFacts;
  readonly roles: RoleFacts;
  readonly packs: readonly Pack[];
  readonly bench: BenchFileFacts | undefined;
  readonly settings: SettingsFileFacts | undefined;
  /** The shops files of the workspace. */
  readonly shops: readonly ShopsFileFacts[];
  /** Builds of the workspace that were written down to compare with. */
  readonly references: () => readonly Craft[];
  /** How flight controller and ESC come. */
  readonly boards: 'apart' | 'stack' | 'all-in-one' | 'none';
  readonly doubled: readonly Doubled[];
  readonly lost: readonly LostUse[];
}

export interface Surroundings {
  readonly find: FindPart;
  readonly bench: BenchFileFacts | undefined;
  readonly settings: SettingsFileFacts | undefined;
  readonly shops?: readonly ShopsFileFacts[];
  readonly references?: () => readonly Craft[];
}

/** The kind that a part in the library says it is. */
const kindOfLayer = (layer: Layer | undefined): string | undefined => {
  const node = kidOf(layer?.slot, 'kind')?.node;
  return node?.is === 'scalar' ? node.text : undefined;
};

export function resolveCraft(file: SourceFile, document: FileDocument, around: Surroundings): Craft | undefined {
  if (document.kind !== 'build' || !document.slot) return undefined;
  const lost: LostUse[] = [];
  const root: Layer = { slot: document.slot, document, file: file.uri };
  const said = readMap([root], around.find) as unknown as BuildFileFacts;
  const parts = (said.parts ?? {}) as RoleFacts & Facts;
  const partsSlot = kidOf(document.slot, 'parts');
  for (const kid of [...(partsSlot?.kids ?? []), ...(kidOf(document.slot, 'packs')?.kids ?? [])])
    collectLost(kid, file.uri, around.find, lost, partsSlot);
  const packs = [...(said.packs?.entries ?? [])].map(([name, facts]) => ({ name, facts }));
  const { roles, doubled, boards } = fillRoles(parts);
  return {
    file: file.uri,
    where: whereOf(document.slot, file.uri),
    said,
    roles,
    packs,
    bench: around.bench,
    settings: around.settings,
    shops: around.shops ?? [],
    references: around.references ?? (() => []),
    boards,
    doubled,
    lost,
  };
}

function collectLost(slot: Slot, file: string, find: FindPart, lost: LostUse[], parts: Slot | undefined): void {
  const use = kidOf(slot, 'use');
  if (use?.node.is === 'scalar' && use.field?.is === 'text' && use.field.reference === 'part') {
    const role = slot.pointer.split('/')[2]!;
    const kind = slot.pointer.startsWith('/packs/')
      ? 'battery'
      : (own(roleKinds, slot.key) ?? own(roleKinds, role) ?? slot.key);
    const found = find(use.node.text);
    if (!found || (kindOfLayer(found) !== kind && kindOfLayer(found) !== undefined))
      lost.push({ id: use.node.text, at: placeOf({ slot: use, file }), kind });
  }
  for (const kid of slot.kids) if (kid.node.is === 'map') collectLost(kid, file, find, lost, parts);
}

/** Stacks and all-in-one boards fill the roles of the boards they hold; a part of its own wins and the doubling is noted. */
function fillRoles(parts: RoleFacts): { roles: RoleFacts; doubled: Doubled[]; boards: Craft['boards'] } {
  const roles = readWhole(parts);
  const doubled: Doubled[] = [];
  const fill = (role: Role, facts: Facts | undefined, holder: Facts): void => {
    if (!facts) return;
    const own = parts[role as SingleRole] as Facts | undefined;
    const before = own ?? (roles[role] as Facts | undefined);
    if (before?.where && holder.where) doubled.push({ role, by: [before.where, holder.where] });
    if (!before) roles[role] = facts;
  };
  const { stack, 'all-in-one': board } = parts;
  if (stack) {
    fill('flight-controller', stack['flight-controller'], stack);
    fill('esc', stack.esc, stack);
  }
  if (board) {
    const shared = { mount: board.mount, hole: board.hole, grommets: board.grommets, outside: board.outside };
    fill('flight-controller', board['flight-controller'] && underlaid(board['flight-controller'], shared), board);
    fill('esc', board.esc, board);
    fill('receiver', board.receiver, board);
    fill('video-transmitter', board['video-transmitter'], board);
  }
  const boards = board ? 'all-in-one' : stack ? 'stack' : roles.esc || roles['flight-controller'] ? 'apart' : 'none';
  return { roles: roles as RoleFacts, doubled, boards };
}

function whereOf(root: Slot, file: string): Place {
  const name = kidOf(root, 'name') ?? root.kids[0];
  return name ? { ...placeOf({ slot: name, file }), path: 'name' } : placeOf({ slot: root, file });
}
