/** Findings as data for other programs: positions 0-based as in LSP, files by the name the caller gives. The form is a promise. */
import type { Analysis } from '../analysis';
import type { Finding } from '../build/finding';
import type { Place } from '../build/place';
import type { SourceFile } from '../build/source-file';
import { positionAt } from '../text/lines';

export interface Where {
  /** How a file is called in the output. */
  name(uri: string): string;
  file(uri: string): Pick<SourceFile, 'lines'> | undefined;
}

export function findingsAsJson(analyses: readonly Analysis[], where: Where): unknown {
  const findings = analyses.flatMap((analysis) => analysis.findings);
  return {
    files: analyses.length,
    checks: {
      ran: new Set(analyses.flatMap((analysis) => analysis.ran)).size,
      found: new Set(findings.map((finding) => finding.check)).size,
      notChecked: new Set(analyses.flatMap((analysis) => analysis.notChecked.map((one) => one.check))).size,
    },
    findings: findings.map((finding) => findingAsJson(finding, where)),
    notChecked: analyses.flatMap((analysis) => notCheckedAsJson(analysis, where)),
  };
}

/** One file for itself, for output of a line a file. */
export const fileAsJson = (analysis: Analysis, where: Where): unknown => ({
  file: where.name(analysis.file.uri),
  findings: analysis.findings.map((finding) => findingAsJson(finding, where)),
  notChecked: notCheckedAsJson(analysis, where),
});

const notCheckedAsJson = (analysis: Analysis, where: Where): readonly unknown[] =>
  analysis.notChecked.map((one) => ({
    check: one.check,
    file: where.name(analysis.file.uri),
    missing: one.missing,
  }));

export function findingAsJson(finding: Finding, where: Where): unknown {
  return {
    check: finding.check,
    severity: finding.severity,
    danger: finding.danger ?? null,
    accepted: finding.accepted ?? null,
    fingerprint: finding.fingerprint,
    message: finding.message,
    ...placeAsJson(finding.at, where),
    related: finding.related.map((related) => ({ ...placeAsJson(related.place, where), message: related.message })),
    fixes: finding.fixes.map((fix) => fix.title),
  };
}

function placeAsJson(place: Place, where: Where): { file: string; range: unknown } {
  const lines = where.file(place.file)?.lines ?? [0];
  return {
    file: where.name(place.file),
    range: { start: positionAt(lines, place.span.start), end: positionAt(lines, place.span.end) },
  };
}
