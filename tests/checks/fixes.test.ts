/** Every fix of every check, applied to its bad example: the finding is gone, nothing worse came, and no other byte changed. */
import { expect, it } from 'vitest';
import { analyse } from '../../server/src/analysis';
import type { Finding, Fix } from '../../server/src/build/finding';
import { allChecks } from '../../server/src/checks/generated/all';
import { explanationOf } from '../../server/src/checks/generated/explanations';
import { Workspace } from '../../server/src/library/workspace';
import { unmark } from '../support/marked';

const uri = 'file:///club/example.dryfit.yaml';

function findingsOf(text: string): readonly Finding[] {
  const workspace = new Workspace();
  workspace.set(uri, text);
  return analyse(workspace, uri)!.findings;
}

function apply(text: string, fix: Fix): string {
  const edits = [...fix.edits].sort((a, b) => b.span.start - a.span.start);
  return edits.reduce((done, edit) => done.slice(0, edit.span.start) + edit.text + done.slice(edit.span.end), text);
}

const cases = allChecks.flatMap((check) => {
  const { text } = unmark(explanationOf(check).bad);
  return findingsOf(text)
    .filter((finding) => finding.check === check.id)
    .flatMap((finding) => finding.fixes.map((fix) => [`${check.id}: ${fix.title}`, text, finding, fix] as const));
});

it('there are fixes to try', () => {
  expect(cases.length).toBeGreaterThan(15);
});

it.each(cases)('%s', (_, text, finding, fix) => {
  const before = findingsOf(text);
  const mended = apply(text, fix);
  const after = findingsOf(mended);
  expect(after.filter((one) => one.check === finding.check && one.fingerprint === finding.fingerprint)).toEqual([]);
  const errors = (all: readonly Finding[]): string[] =>
    all.filter((one) => one.severity === 'error').map((one) => one.check);
  expect(errors(after).filter((id) => !errors(before).includes(id))).toEqual([]);
  for (const edit of fix.edits) expect(edit.file).toBe(uri);
});
