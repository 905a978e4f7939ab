/** Checks with a limit, on both sides of it: the last value on one side and the first on the other, as finely as a builder writes. */
import { describe, expect, it } from 'vitest';
import { allChecks } from '../../server/src/checks/generated/all';
import { explanationOf } from '../../server/src/checks/generated/explanations';
import { boundaries } from './boundaries/all';
import type { Boundary, Edge, Says, Turn } from './boundaries/boundary';
import { changed } from './boundaries/example';
import { named } from './boundaries/named';
import { decidedBy } from './boundaries/probe';
import { checkOf, type Spoken, spoken } from './boundaries/spoken';
import { hairBeyond, notNeighbours } from './boundaries/step';
import { twins } from './boundaries/twins';

/** The check's bad example with this value at the limit's place. */
function said(boundary: Boundary, value: string | undefined): Spoken {
  const check = checkOf(boundary.check);
  const its = spoken(check, changed(explanationOf(check).bad, { ...boundary.with, [boundary.at]: value }));
  expect(its.unread, `${boundary.check} with ${value}`).toEqual([]);
  return its;
}

/** What is compared must not look alike, unless it is the same: a limit that already counts as found, as it is written. */
function tellsApart({ findings }: Spoken, itself?: string): void {
  for (const { message } of findings) {
    const alike = twins(message);
    if (alike !== itself?.split(',')[0]) expect(alike, message).toBeUndefined();
  }
}

const edges = boundaries.filter((one): one is Edge => one.is === 'edge');
const turns = boundaries.filter((one): one is Turn => one.is === 'turn');

describe('a limit stands where the rule of the trade puts it', () => {
  it.each(edges.map((one) => [`${one.check}: ${one.at} of ${one.last[0]} and ${one.first[0]}`, one] as const))(
    '%s',
    (_, one) => {
      const [last, first] = [said(one, one.last[0]), said(one, one.first[0])];
      expect(last.says, `on ${one.last[0]}: ${last.findings[0]?.message}`).toBe(one.last[1]);
      expect(first.says, `on ${one.first[0]}: ${first.findings[0]?.message}`).toBe(one.first[1]);
      expect(notNeighbours(one.last[0], one.first[0]), 'the two values are neighbours').toBeUndefined();
      tellsApart(first, one.first[0]);
    },
  );

  it.each(
    edges.flatMap(({ last: [last], first: [first], ...one }) =>
      last === undefined || first === undefined ? [] : [[`${one.check}: ${last}`, one, last, first] as const],
    ),
  )('and a finding a hair beyond it says two values that differ: %s', (_, one, last, first) => {
    const check = checkOf(one.check);
    const its = spoken(check, changed(explanationOf(check).bad, { ...one.with, [one.at]: hairBeyond(last, first) }));
    // A notation of whole numbers or tenths has nothing between.
    if (its.unread.length === 0) tellsApart(its);
  });
});

const gravity: readonly Says[] = ['not asked', 'silent', 'information', 'warning', 'error'];
const graver = (says: Says, least: Says): boolean => gravity.indexOf(says) >= gravity.indexOf(least);

/** Places between the two ends at which nothing may contradict the one switch. */
const places = 6;

describe('a limit that a figure decides has one place, and the rule worked out apart agrees', () => {
  it.each(turns.map((one) => [`${one.check}: ${one.at}, ${one.grave}`, one] as const))('%s', (_, one) => {
    const steps = Math.round(Math.abs(one.found - one.silent) / one.step);
    const at = (step: number): string => one.say(one.silent + ((one.found - one.silent) * step) / steps);
    const isFound = (step: number): boolean => graver(said(one, at(step)).says, one.grave);
    let [silent, found] = [0, steps];
    expect([isFound(silent), isFound(found)], `${at(silent)} and ${at(found)}`).toEqual([false, true]);
    while (found - silent > 1) {
      const middle = Math.floor((silent + found) / 2);
      if (isFound(middle)) found = middle;
      else silent = middle;
    }
    for (let i = 1; i < places; i++) {
      const place = Math.round((steps * i) / places);
      expect(isFound(place), `${at(place)}, with the limit at ${at(silent)}`).toBe(place >= found);
    }
    const [inside, outside] = [said(one, at(silent)), said(one, at(found))];
    const rule = ({ analysis: { crafts } }: Spoken): boolean => one.broken(crafts[0]!, crafts[0]!.packs[0]);
    expect([rule(inside), rule(outside)], `the rule at ${at(silent)} and ${at(found)}`).toEqual([false, true]);
    tellsApart(outside);
  });
});

describe('no limit is without a boundary', () => {
  const covered = new Set(boundaries.map((one) => one.check));
  const open = allChecks.filter((check) => !covered.has(check.id)).map((check) => [check.id, check] as const);

  it.each(open)('%s', (id, check) => {
    const by = decidedBy(check);
    if (Object.hasOwn(named, id))
      return expect(by, `no number decides ${id}: take it out of boundaries/named.ts`).toBeDefined();
    expect(
      by,
      `a number decides what ${id} says. Write its last value on one side and the first on the other in boundaries/, or say in boundaries/named.ts why this number measures nothing`,
    ).toBeUndefined();
  });

  it.each([...covered])('%s has one between silence and a finding', (id) => {
    const quiet: readonly Says[] = ['silent', 'not asked'];
    const own = boundaries.filter((one) => one.check === id);
    expect(
      own.some((one) => (one.is === 'turn' ? one.grave === 'information' : quiet.includes(one.last[1]))),
      'the least of its limits',
    ).toBe(true);
  });

  it('and none is in the list of those without as well', () => {
    expect(Object.keys(named).filter((id) => covered.has(id))).toEqual([]);
    const known = allChecks.map((check) => check.id);
    expect([...covered, ...Object.keys(named)].filter((id) => !known.includes(id))).toEqual([]);
  });
});
