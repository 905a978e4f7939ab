/** What a craft needs to be bought: pieces of each part that shops files can name, less what is owned. Prices nothing. */
import type { Craft, Role } from '../build/craft';
import type { Fact, Facts, Pointable } from '../build/fact';
import { roleKinds } from '../vocabulary/generated/fields';
import { usualMass } from './class-masses';
import { motorCount } from './weight';

export interface OrderNeed {
  /** Id in shops files. */
  readonly part: string;
  /** The role in the build, or the name of an entry or pack. */
  readonly role: string;
  readonly kind: string;
  /** Pieces that the craft takes, and those wanted besides. */
  readonly pieces: number;
  readonly spares: number;
  readonly owned: number;
  /** Pieces to buy; 0 when all are owned. */
  readonly need: number;
  /** kg of one; usual when the part doesn't say. */
  readonly mass: number;
  readonly from: Fact<string> | undefined;
  /** The word that names the part. */
  readonly at: Pointable;
  readonly facts: BoughtFacts;
}

export interface BoughtFacts extends Facts {
  readonly use?: Fact<string>;
  readonly 'sold-as'?: Fact<string>;
  readonly count?: Fact<number>;
  readonly spares?: Fact<number>;
  readonly weight?: Fact<number>;
  readonly owned?: Fact<boolean>;
  readonly from?: Fact<string>;
}

export function orderNeeds(craft: Craft): readonly OrderNeed[] {
  const left = new Map([...(craft.bench?.owned?.entries ?? [])].map(([id, count]) => [id, count.value]));
  return boughtParts(craft).flatMap(({ role, kind, facts, usual }) => {
    const id = facts['sold-as'] ?? facts.use;
    if (!id) return [];
    const pieces = facts.count?.value ?? usual;
    const spares = facts.spares?.value ?? 0;
    const wanted = pieces + spares;
    const owned = facts.owned?.value === true ? wanted : Math.min(wanted, left.get(id.value) ?? 0);
    if (facts.owned?.value !== true) left.set(id.value, (left.get(id.value) ?? 0) - owned);
    return [
      {
        part: id.value,
        role,
        kind,
        pieces,
        spares,
        owned,
        need: wanted - owned,
        mass: facts.weight?.value ?? usualMass(kind).value,
        from: facts.from,
        at: id,
        facts,
      },
    ];
  });
}

/** Parts that nobody can order from this file: without an id, and not owned. */
export const unnamedParts = (craft: Craft): readonly string[] =>
  boughtParts(craft).flatMap(({ role, facts }) =>
    (facts['sold-as'] ?? facts.use ?? (facts.owned?.value === true || undefined)) ? [] : [role],
  );

interface Bought {
  readonly role: string;
  readonly kind: string;
  readonly facts: BoughtFacts;
  readonly usual: number;
}

/** Parts as they are bought: a stack is one thing. */
export function boughtParts(craft: Craft): readonly Bought[] {
  const parts = (craft.said.parts ?? {}) as Readonly<Record<string, unknown>>;
  const found: Bought[] = [];
  for (const role of Object.keys(roleKinds) as Role[]) {
    const own = parts[role] as (BoughtFacts & { is?: string; entries?: ReadonlyMap<string, BoughtFacts> }) | undefined;
    if (!own) continue;
    const kind = roleKinds[role];
    if (own.is === 'table') for (const [name, facts] of own.entries!) found.push({ role: name, kind, facts, usual: 1 });
    else found.push({ role, kind, facts: own, usual: usualCount(craft, role) });
  }
  for (const pack of craft.packs)
    found.push({ role: pack.name, kind: 'battery', facts: pack.facts as BoughtFacts, usual: 1 });
  return found;
}

function usualCount(craft: Craft, role: Role): number {
  const many =
    role === 'motors' || role === 'propellers' || (role === 'esc' && craft.roles.esc?.type?.value === 'single');
  return many ? motorCount(craft) : 1;
}
