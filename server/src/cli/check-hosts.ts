/** The forms in which a host of repositories takes findings: code scanning, annotations, a comment. Chooses; writes nothing itself. */
import { existsSync } from 'node:fs';
import path from 'node:path';
import { version } from '../../../package.json';
import type { Analysis } from '../analysis';
import type { Finding } from '../build/finding';
import { allChecks } from '../checks/generated/all';
import { annotations } from '../report/annotations';
import type { Where } from '../report/findings-json';
import { findingsAsMarkdown } from '../report/markdown-findings';
import { type SarifRequest, sarif } from '../report/sarif';

const hostForms = ['sarif', 'annotations', 'markdown'] as const;
type HostForm = (typeof hostForms)[number];

export const isForHost = (format: string): format is HostForm => (hostForms as readonly string[]).includes(format);

export function forHost(format: HostForm, analyses: readonly Analysis[], where: Where): string {
  if (format === 'markdown') return findingsAsMarkdown(analyses, where);
  const findings = analyses.flatMap((analysis) => analysis.findings);
  return format === 'annotations' ? annotations(findings, where) : sarifText(findings, { where });
}

export function sarifText(findings: readonly Finding[], request: Pick<SarifRequest, 'where' | 'stateOf'>): string {
  const failed = findings.some(({ check }) => check === 'check-crashed');
  return `${JSON.stringify(sarif(findings, { ...request, version, checks: allChecks, failed }), null, 2)}\n`;
}

/** The top folder of the repository that a folder is in. */
export function repositoryAbove(folder: string): string | undefined {
  for (let at = folder; ; at = path.dirname(at)) {
    if (existsSync(path.join(at, '.git'))) return at;
    if (path.dirname(at) === at) return undefined;
  }
}
