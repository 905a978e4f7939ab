/** Runs checks over one craft: what was found, what ran, and what could not run for want of which fact. Words nothing itself. */
import type { Craft, Pack } from '../build/craft';
import { type Pointable, shownAt } from '../build/fact';
import { type Danger, type Finding, fingerprintOf, type Related } from '../build/finding';
import { restsOn, type WorkedAt } from '../plan/worked';
import type { Check, Need, Verdict } from './check';
import { type FindFact, finderOf, headFinder } from './find-fact';

export interface NotChecked {
  readonly check: string;
  readonly missing: readonly Need[];
}

export interface CheckRun {
  readonly findings: readonly Finding[];
  /** Ids of checks that compared something. */
  readonly ran: readonly string[];
  readonly notChecked: readonly NotChecked[];
}

export const runChecks = (checks: readonly Check[], craft: Craft): CheckRun =>
  together(
    checks,
    checks.map((check) => runCheck(check, craft)),
  );

/** What came of one check. */
export interface Outcome {
  readonly findings: readonly Finding[];
  readonly ran: boolean;
  readonly missing: ReadonlySet<Need>;
}

/** @param outcomes one a check, in the same order */
export function together(checks: readonly Check[], outcomes: readonly Outcome[]): CheckRun {
  const ran: string[] = [];
  const notChecked: NotChecked[] = [];
  for (const [i, check] of checks.entries()) {
    const outcome = outcomes[i]!;
    if (outcome.ran) ran.push(check.id);
    if (outcome.missing.size > 0) notChecked.push({ check: check.id, missing: [...outcome.missing] });
  }
  return { findings: foundBy(outcomes), ran, notChecked };
}

export function foundBy(outcomes: readonly Outcome[]): readonly Finding[] {
  const findings: Finding[] = [];
  for (const outcome of outcomes) if (outcome.findings.length > 0) findings.push(...outcome.findings);
  return distinct(findings);
}

/** What of a check never changes from craft to craft, taken apart once. */
interface Prepared {
  readonly needs: readonly Wanted[];
  readonly may: readonly Wanted[];
  /** Parts that must be there for the check to mean anything. */
  readonly heads: readonly FindFact[];
  readonly needsPack: boolean;
  readonly asksPack: boolean;
}

interface Wanted {
  readonly name: string;
  readonly need: Need;
  readonly find: FindFact;
}

const prepared = new WeakMap<Check, Prepared>();

function prepare(check: Check): Prepared {
  const known = prepared.get(check);
  if (known) return known;
  const needs = wantedOf(check.needs);
  const may = wantedOf(check.may);
  const made = {
    needs,
    may,
    heads: [...new Set(needs.flatMap(({ need }) => headsOf(need)))].map(headFinder),
    needsPack: needs.some(({ need }) => isOfPack(need)),
    asksPack: may.some(({ need }) => isOfPack(need)),
  };
  prepared.set(check, made);
  return made;
}

const wantedOf = (needs: Check['needs']): readonly Wanted[] =>
  Object.entries(needs).map(([name, need]) => ({ name, need, find: finderOf(need) }));

const headsOf = (need: Need): readonly string[] =>
  isWorked(need) ? restsOn[need].flatMap(headsOf) : [need.split('.', 1)[0]!];

const once: readonly undefined[] = [undefined];

export function runCheck(check: Check, craft: Craft): Outcome {
  const { needs, may, heads, needsPack, asksPack } = prepare(check);
  const perPack = needsPack || (asksPack && craft.packs.length > 0);
  const packs: readonly (Pack | undefined)[] = perPack ? craft.packs : once;
  let findings: readonly Finding[] = none;
  let missing: Set<Need> | undefined;
  let ran = false;
  for (const pack of packs) {
    if (!allThere(heads, craft, pack)) continue;
    try {
      if (check.when && !check.when(craft, pack)) continue;
      const facts: Record<string, unknown> = {};
      let complete = true;
      for (const { name, need, find } of needs) {
        const fact = find(craft, pack);
        facts[name] = fact;
        if (fact !== undefined) continue;
        missing ??= new Set();
        for (const fact of wantedFor(need, craft, pack)) missing.add(fact);
        complete = false;
      }
      if (!complete) continue;
      for (const { name, find } of may) facts[name] = find(craft, pack);
      ran = true;
      const verdict = check.judge(facts, craft, pack);
      if (verdict === undefined) continue;
      const found = ([verdict].flat() as Verdict[]).map((one) => toFinding(check, one, facts, craft, pack));
      findings = [...findings, ...found];
    } catch (error) {
      ran = true;
      findings = [...findings, crashed(check, craft, error)];
    }
  }
  return { findings, ran, missing: missing ?? noNeeds };
}

function allThere(heads: readonly FindFact[], craft: Craft, pack: Pack | undefined): boolean {
  for (const find of heads) if (find(craft, pack) === undefined) return false;
  return true;
}

const none: readonly Finding[] = [];
const noNeeds: ReadonlySet<Need> = new Set();

const isOfPack = (need: Need): boolean => need.startsWith('pack.') || need.startsWith('worked.pack');

const isWorked = (need: Need): need is keyof WorkedAt => need.startsWith('worked.');

/** A figure that cannot be worked out is asked for by the facts it rests on. */
function wantedFor(need: Need, craft: Craft, pack: Pack | undefined): readonly Need[] {
  if (!isWorked(need)) return [need];
  const wanted = restsOn[need].filter((fact) => finderOf(fact)(craft, pack) === undefined);
  return wanted.length > 0 ? wanted : restsOn[need];
}

function toFinding(
  check: Check,
  verdict: Verdict,
  facts: Readonly<Record<string, unknown>>,
  craft: Craft,
  pack: Pack | undefined,
): Finding {
  const first = Object.keys(check.needs)[0];
  const target = verdict.at ?? (first === undefined ? undefined : (facts[first] as Pointable | undefined));
  const at = target?.at ? shownAt(target) : craft.where;
  const related: Related[] = [];
  if (target?.through) related.push({ place: target.at, message: `\`${target.text}\` is said here` });
  for (const { fact, says } of verdict.with ?? []) if (fact.at) related.push({ place: fact.at, message: says });
  const path = target?.at?.path ?? 'name';
  const danger = 'danger' in verdict ? verdict.danger : check.danger;
  return {
    check: check.id,
    severity: verdict.severity ?? check.severity,
    danger,
    message: danger ? `${dangerLead[danger]}: ${lowerFirst(verdict.message)}` : verdict.message,
    at,
    related,
    fixes: verdict.fixes ?? [],
    fingerprint: fingerprintOf(
      check.id,
      { ...at, path: target?.through ? `${at.path}>${path.split('.').slice(2).join('.')}` : at.path },
      [pack?.name, verdict.apart].filter(Boolean).join('/'),
    ),
  };
}

/** Danger is named first, in every face. */
const dangerLead: Readonly<Record<Danger, string>> = {
  fire: 'Fire risk',
  burns: 'Burn risk',
  blades: 'Blade risk',
  radio: 'Radio risk',
};

const lowerFirst = (text: string): string =>
  /^(?:[A-Z][a-z]|A )/.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text;

/** The same words at the same place for several packs are one finding. */
function distinct(findings: readonly Finding[]): readonly Finding[] {
  const seen = new Set<string>();
  return findings.filter((finding) => {
    const key = `${finding.check} ${finding.at.file} ${finding.at.span.start} ${finding.message}`;
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}

/** A check that fails must not look like a clean build. */
function crashed(check: Check, craft: Craft, error: unknown): Finding {
  return {
    check: 'check-crashed',
    severity: 'error',
    message: `The check ${check.id} failed on this build, so nothing is known about "${check.title}". This is a fault of Dryfit; please report it with this file (${error instanceof Error ? error.message : String(error)}).`,
    at: craft.where,
    related: [],
    fixes: [],
    fingerprint: fingerprintOf('check-crashed', craft.where, check.id),
  };
}
