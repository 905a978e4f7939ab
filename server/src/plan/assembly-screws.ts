/** The screws and nuts of a craft, with how many and which key or driver turns them. Judges nothing. */
import type { Craft } from '../build/craft';
import type { Pointable } from '../build/fact';
import type { Screw } from '../text/notation/screw';
import { keyFor, nutFor } from './fastener-keys';
import { motorScrew } from './motor-screw';
import { stackScrew } from './stack';
import { motorCount } from './weight';

export interface ScrewUse {
  readonly for: string;
  readonly screw: Screw;
  readonly text: string;
  readonly count: number | undefined;
  /** mm; nothing when the head isn't said or no table has it. */
  readonly key: number | undefined;
  /** Whether a standard has it; the trade may sell another drive. */
  readonly sure: boolean;
  readonly at: Pointable;
}

export function screwsOf(craft: Craft): readonly ScrewUse[] {
  const found: ScrewUse[] = [];
  const use = (
    what: string,
    screw: (Pointable & { readonly value: Screw }) | undefined,
    count: number | undefined,
  ): void => {
    if (screw) {
      const key = keyFor(screw.value);
      found.push({
        for: what,
        screw: screw.value,
        text: screw.text,
        count,
        key: key?.size,
        sure: key?.basis === 'standard',
        at: screw,
      });
    }
  };
  const { motors, frame, fasteners } = craft.roles;
  const each = motors?.['screws-each']?.value ?? (motors?.mount?.value.is === 'circle' ? motors.mount.value.holes : 4);
  use('motors', motorScrew(craft), each * motorCount(craft));
  use('stack', stackScrew(craft), 4);
  for (const screw of frame?.['frame-screws']?.items ?? []) use('frame', screw, undefined);
  for (const [name, one] of fasteners?.entries ?? [])
    if (one.screw && one.for?.value !== 'motors' && one.for?.value !== 'stack') use(name, one.screw, one.count?.value);
  return found;
}

export interface NutUse {
  readonly for: string;
  readonly thread: number;
  readonly count: number;
  /** mm across flats */
  readonly driver: number | undefined;
  readonly at: Pointable;
}

export function nutsOf(craft: Craft): readonly NutUse[] {
  const found: NutUse[] = [];
  const shaft = craft.roles.motors?.shaft;
  if (shaft?.value.is === 'threaded') {
    const thread = Math.round(shaft.value.diameter * 1e4) / 10;
    found.push({ for: 'propellers', thread, count: motorCount(craft), driver: nutFor(thread), at: shaft });
  }
  for (const [name, one] of craft.roles.fasteners?.entries ?? [])
    if (one.nut)
      found.push({
        for: name,
        thread: one.nut.value,
        count: one.count?.value ?? 1,
        driver: nutFor(one.nut.value),
        at: one.nut,
      });
  return found;
}

/** Sizes that the screws ask for, smallest first. */
export const keysOf = (screws: readonly ScrewUse[]): readonly number[] =>
  [...new Set(screws.flatMap((one) => one.key ?? []))].sort((a, b) => a - b);
