/** Findings as SARIF 2.1.0 for code scanning: one run, relative addresses, lines from 1, fingerprints that outlive moved lines. Judges nothing. */

import type { Finding } from '../build/finding';
import type { Place } from '../build/place';
import type { Check } from '../checks/check';
import { explanationOf } from '../checks/generated/explanations';
import { positionAt } from '../text/lines';
import type { Where } from './findings-json';
import { cut, visible } from './markdown-safe';

export interface SarifRequest {
  readonly version: string;
  readonly checks: readonly Check[];
  readonly where: Where;
  /** In reviews: what the change brought about, and what was there before. */
  readonly stateOf?: (finding: Finding) => 'new' | 'unchanged';
  /** The run could not finish its work. */
  readonly failed?: boolean;
}

/** What code scanning takes of one run; beyond it drops results without a word, so the gravest come first. */
const most = { results: 5000, related: 50, message: 2000 } as const;

const order = { error: 0, warning: 1, information: 2 } as const;
const levels = { error: 'error', warning: 'warning', information: 'note' } as const;

export function sarif(findings: readonly Finding[], request: SarifRequest): unknown {
  const prints = fingerprints(findings, request.where);
  const shown = [...findings].sort((a, b) => order[a.severity] - order[b.severity]).slice(0, most.results);
  const ids = [...new Set(shown.map((finding) => finding.check))].sort();
  const left = findings.length - shown.length;
  return {
    $schema: 'https://json.schemastore.org/sarif-2.1.0.json',
    version: '2.1.0',
    runs: [
      {
        tool: {
          driver: {
            name: 'Dryfit',
            semanticVersion: request.version,
            rules: ids.map((id) => rule(id, request.checks)),
          },
        },
        columnKind: 'utf16CodeUnits',
        invocations: [
          {
            executionSuccessful: request.failed !== true,
            ...(left > 0
              ? {
                  toolExecutionNotifications: [
                    { level: 'warning', message: { text: `${left} findings of less weight are left out.` } },
                  ],
                }
              : {}),
          },
        ],
        results: shown.map((finding) => result(finding, ids.indexOf(finding.check), prints.get(finding)!, request)),
      },
    ],
  };
}

function rule(id: string, checks: readonly Check[]): unknown {
  const check = checks.find((one) => one.id === id);
  if (!check) return { id, shortDescription: { text: id.replaceAll('-', ' ') } };
  return {
    id,
    shortDescription: { text: check.title },
    fullDescription: { text: explanationOf(check).why },
    help: { text: explanationOf(check).remedy },
    defaultConfiguration: { level: levels[check.severity] },
    properties: { tags: [check.group, ...(check.danger ? [check.danger] : [])] },
  };
}

function result(finding: Finding, ruleIndex: number, print: string, { where, stateOf }: SarifRequest): unknown {
  const related = finding.related
    .filter(({ place }) => isInside(where.name(place.file)))
    .slice(0, most.related)
    .map(({ place, message }, id) => ({
      id,
      ...location(place, where),
      message: { text: cut(visible(message), most.message) },
    }));
  return {
    ruleId: finding.check,
    ruleIndex,
    level: levels[finding.severity],
    message: { text: cut(visible(finding.message), most.message) },
    locations: [location(finding.at, where)],
    ...(related.length > 0 ? { relatedLocations: related } : {}),
    partialFingerprints: { 'dryfit/v1': print },
    ...(stateOf ? { baselineState: stateOf(finding) } : {}),
    ...(finding.accepted === undefined
      ? {}
      : { suppressions: [{ kind: 'inSource', justification: cut(visible(finding.accepted), most.message) }] }),
  };
}

function location(place: Place, where: Where): { physicalLocation: unknown } {
  const lines = where.file(place.file)?.lines ?? [0];
  const [start, end] = [positionAt(lines, place.span.start), positionAt(lines, place.span.end)];
  return {
    physicalLocation: {
      artifactLocation: { uri: relativeUri(where.name(place.file)), uriBaseId: '%SRCROOT%' },
      region: {
        startLine: start.line + 1,
        startColumn: start.character + 1,
        endLine: end.line + 1,
        endColumn: end.character + 1,
      },
    },
  };
}

/** Files outside the repository have no address there. */
export const isInside = (name: string): boolean => !name.startsWith('../') && !name.startsWith('/');

export const relativeUri = (name: string): string => name.split('/').map(encodeURIComponent).join('/');

/** The same whatever lines move; numbered in the order of the file where several would be the same. */
function fingerprints(findings: readonly Finding[], where: Where): ReadonlyMap<Finding, string> {
  const seen = new Map<string, number>();
  const inOrder = [...findings].sort((a, b) =>
    a.at.file === b.at.file ? a.at.span.start - b.at.span.start : a.at.file < b.at.file ? -1 : 1,
  );
  return new Map(
    inOrder.map((finding) => {
      const print = hash(`${where.name(finding.at.file)}\n${finding.fingerprint}`);
      const n = (seen.get(print) ?? 0) + 1;
      seen.set(print, n);
      return [finding, `${print}:${n}`] as const;
    }),
  );
}

/** FNV-1a over UTF-16 units, 64 bits as two halves of different seeds: short, and the same on every machine. */
function hash(text: string): string {
  const half = (seed: number): string => {
    let h = seed >>> 0;
    for (let i = 0; i < text.length; i++) {
      const unit = text.charCodeAt(i);
      h = Math.imul(h ^ (unit & 0xff), 0x01000193);
      h = Math.imul(h ^ (unit >>> 8), 0x01000193);
    }
    h ^= h >>> 15;
    h = Math.imul(h, 0x85ebca6b);
    return ((h ^ (h >>> 13)) >>> 0).toString(16).padStart(8, '0');
  };
  return half(0x811c9dc5) + half(0x9747b28c);
}
