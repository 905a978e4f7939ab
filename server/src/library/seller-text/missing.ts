/** What a part does not say yet, the facts first that most checks wait for. Knows checks only by the paths they need. */
import { fieldsOfKind, type Proposed } from './propose';
import { mayStandIn } from './unread';

export interface Missing {
  readonly path: string;
  /** How many checks look at it. */
  readonly checks: number;
  readonly description: string;
  readonly example: string | undefined;
  /** A line of the page that was not read and may state it. */
  readonly perhaps?: string;
}

/** What a check asks for; `needs` must be there, `may` sharpens. */
export interface Asking {
  readonly needs: Readonly<Record<string, string>>;
  readonly may: Readonly<Record<string, string>>;
}

/** How a part of this kind is called in the paths of facts. */
const roleOf: Readonly<Record<string, string>> = { motor: 'motors', propeller: 'propellers', battery: 'pack' };

const buildsOwn: ReadonlySet<string> = new Set([
  'use',
  'kind',
  'name',
  'count',
  'spares',
  'at',
  'owned',
  'from',
  'source',
  'seen',
  'note',
  'supplied',
]);

const facts = (path: string, restsOn: Readonly<Record<string, readonly string[]>>): readonly string[] =>
  restsOn[path]?.flatMap((one) => facts(one, restsOn)) ?? [path];

/** @param restsOn what a figure that is worked out is worked out from; a check of the figure waits for those too */
export function missingFields(
  proposed: Proposed,
  checks: readonly Asking[],
  restsOn: Readonly<Record<string, readonly string[]>>,
): readonly Missing[] {
  const table = fieldsOfKind(proposed.kind);
  if (!table) return [];
  const said = new Set(proposed.fields.map(({ path }) => path));
  const asked = new Map<string, number>();
  for (const check of checks)
    for (const path of new Set(
      [...Object.values(check.needs), ...Object.values(check.may)].flatMap((one) => facts(one, restsOn)),
    ))
      asked.set(path, (asked.get(path) ?? 0) + 1);
  const sum = (start: string): number =>
    [...asked].reduce(
      (total, [path, count]) => total + (path === start || path.startsWith(`${start}.`) ? count : 0),
      0,
    );
  const role = roleOf[proposed.kind] ?? proposed.kind;
  const out: Missing[] = [];
  for (const [key, field] of Object.entries(table.fields)) {
    if (buildsOwn.has(key)) continue;
    // The boards of a stack are judged as what they are.
    const half = field.is === 'map' && (key === 'flight-controller' || key === 'esc') ? field : undefined;
    const rows = half
      ? Object.entries(half.fields).map(([name, inner]) => ({
          path: `${key}.${name}`,
          fact: `${key}.${name}`,
          inner,
          name,
        }))
      : [{ path: key, fact: `${role}.${key}`, inner: field, name: key }];
    for (const { path, fact, inner, name } of rows) {
      if (buildsOwn.has(name) || said.has(path)) continue;
      const count = sum(fact);
      if (count === 0) continue;
      const perhaps = mayStandIn(half ? key : proposed.kind, name, inner, proposed.unread);
      out.push({
        path,
        checks: count,
        description: inner.about.description,
        example: inner.about.examples?.[0],
        ...(perhaps === undefined ? {} : { perhaps }),
      });
    }
  }
  return out.sort((a, b) => b.checks - a.checks);
}
