/** Turns places and findings into protocol types; the only file where offsets become LSP positions. Decides nothing. */
import {
  type Diagnostic,
  DiagnosticSeverity,
  DiagnosticTag,
  type Location,
  type Range,
} from 'vscode-languageserver-types';
import type { Finding } from '../build/finding';
import type { Place } from '../build/place';
import type { SourceFile } from '../build/source-file';
import { positionAt } from '../text/lines';
import type { Span } from '../text/span';

export interface Files {
  get(uri: string): SourceFile | undefined;
  /** The spelling of a URI that the client itself uses. */
  spelled(uri: string): string;
  /** Where a check is explained, if anywhere. */
  explains?(check: string): string | undefined;
}

export const rangeOf = (file: Pick<SourceFile, 'lines'>, span: Span): Range => ({
  start: positionAt(file.lines, span.start),
  end: positionAt(file.lines, span.end),
});

export function locationOf(files: Files, place: Place): Location {
  const file = files.get(place.file);
  return {
    uri: files.spelled(place.file),
    range: file ? rangeOf(file, place.span) : { start: { line: 0, character: 0 }, end: { line: 0, character: 0 } },
  };
}

const severities = {
  error: DiagnosticSeverity.Error,
  warning: DiagnosticSeverity.Warning,
  information: DiagnosticSeverity.Information,
} as const;

export function diagnosticOf(files: Files, file: SourceFile, finding: Finding): Diagnostic {
  const accepted = finding.accepted !== undefined;
  const href = files.explains?.(finding.check);
  // What is dangerous stays as visible as before, accepted or not.
  const severity = accepted && !finding.danger ? DiagnosticSeverity.Hint : severities[finding.severity];
  return {
    range: rangeOf(file, finding.at.span),
    severity,
    source: 'dryfit',
    code: finding.check,
    codeDescription: href === undefined ? undefined : { href },
    message: accepted ? `${finding.message} (Accepted: ${finding.accepted})` : finding.message,
    relatedInformation: finding.related.map((related) => ({
      location: locationOf(files, related.place),
      message: related.message,
    })),
    ...(finding.check === 'accepted-needlessly' ? { tags: [DiagnosticTag.Unnecessary] } : {}),
    data: { fingerprint: finding.fingerprint },
  };
}
