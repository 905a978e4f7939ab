/** Every check, by its own examples: the bad one is found exactly where it is marked, the good one stays silent, both are sound files. */
import { describe, expect, it } from 'vitest';
import { allChecks } from '../../server/src/checks/generated/all';
import { explanationOf } from '../../server/src/checks/generated/explanations';
import { analyseMarked } from '../support/marked';

describe.each(allChecks.map((check) => [check.id, check] as const))('%s', (id, check) => {
  it('finds its bad example exactly as marked', () => {
    const { analysis, spans, text } = analyseMarked(explanationOf(check).bad);
    const found = analysis.findings.filter((finding) => finding.check === id);
    expect(spans.length, 'a bad example marks what is found').toBeGreaterThan(0);
    expect(found.map((finding) => text.slice(finding.at.span.start, finding.at.span.end)).sort()).toEqual(
      spans.map((span) => text.slice(span.start, span.end)).sort(),
    );
    expect(found.map((finding) => finding.at.span.start).sort((a, b) => a - b)).toEqual(
      spans.map((span) => span.start).sort((a, b) => a - b),
    );
    expect(structural(analysis.findings), 'the example itself is a sound file').toEqual([]);
    expect(analysis.ran).toContain(id);
  });

  it('is silent on its good example, and really ran', () => {
    const { analysis } = analyseMarked(explanationOf(check).good);
    expect(analysis.findings.filter((finding) => finding.check === id)).toEqual([]);
    expect(structural(analysis.findings)).toEqual([]);
    expect(analysis.ran).toContain(id);
  });

  it('says what, why and what to do', () => {
    const { analysis } = analyseMarked(explanationOf(check).bad);
    for (const finding of analysis.findings.filter((one) => one.check === id)) {
      expect(finding.message).toMatch(/[.!]$/);
      expect(finding.message).not.toMatch(/undefined|NaN|\[object/);
    }
    expect(id).toMatch(/^[a-z0-9]+(-[a-z0-9]+)+$/);
    const { why, remedy, source } = explanationOf(check);
    for (const text of [check.title, why, remedy, source]) expect(text.length).toBeGreaterThan(9);
  });
});

it('has no id twice', () => {
  expect(new Set(allChecks.map((check) => check.id)).size).toBe(allChecks.length);
});

const shapes = new Set([
  'yaml-syntax',
  'key-unknown',
  'key-missing',
  'key-twice',
  'value-misread',
  'value-shape',
  'value-empty',
  'term-unknown',
  'file-kind-missing',
  'file-kind-unknown',
  'part-unknown',
  'check-crashed',
]);
const structural = (findings: readonly { check: string; message: string }[]): string[] =>
  findings.filter((finding) => shapes.has(finding.check)).map((finding) => `${finding.check}: ${finding.message}`);
