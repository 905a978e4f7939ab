/** Every fix on every bad example, faulty sample and broken generated build: applied, its finding is gone, no error is new, all other bytes are as they were; in both kinds of line ends. */
import { describe, expect, it } from 'vitest';
import { analyse } from '../../server/src/analysis';
import type { Finding, Fix } from '../../server/src/build/finding';
import { allChecks } from '../../server/src/checks/generated/all';
import { explanationOf } from '../../server/src/checks/generated/explanations';
import { Workspace } from '../../server/src/library/workspace';
import { unmark } from '../support/marked';
import { sampleNames, sampleText, sampleUri } from '../support/samples';
import { buildUri } from './generated-build';
import type { Pair } from './lay-over';
import { filesOf, shownMistake } from './show-mistake';

type Files = ReadonlyMap<string, string>;

const withLineEnds = (files: Files, end: '\n' | '\r\n'): Files =>
  new Map([...files].map(([uri, text]) => [uri, text.replace(/\r?\n/g, end)]));

function findingsOf(files: Files, uri: string): readonly Finding[] {
  const workspace = new Workspace();
  for (const [name, text] of files) workspace.set(name, text);
  return analyse(workspace, uri)!.findings;
}

/** The edits applied from the back, and what is left when both sides lose what was edited. */
function applied(files: Files, fix: Fix): { after: Files; untouched: boolean } {
  const after = new Map(files);
  let untouched = true;
  for (const uri of new Set(fix.edits.map((edit) => edit.file))) {
    const before = files.get(uri)!;
    const edits = fix.edits.filter((edit) => edit.file === uri).sort((a, b) => a.span.start - b.span.start);
    let text = '';
    let rest = '';
    let from = 0;
    for (const { span, text: written } of edits) {
      if (span.start < from || span.end < span.start || span.end > before.length) untouched = false;
      text += before.slice(from, span.start) + written;
      rest += before.slice(from, span.start);
      from = span.end;
    }
    after.set(uri, text + before.slice(from));
    const lone = /(^|[^\r])\n/;
    if (before.includes('\r\n') && lone.test(after.get(uri)!)) untouched = false;
    rest += before.slice(from);
    // Only a few words are written anew: most of the file has to be what it was.
    if (rest.length + edits.reduce((sum, { span }) => sum + span.end - span.start, 0) !== before.length)
      untouched = false;
  }
  return { after, untouched };
}

let tried = 0;

/** `sound` is the build with the good example instead: errors that it has too are not the fix's doing. */
function tryAll(files: Files, uri: string, sound?: Files): void {
  for (const end of ['\n', '\r\n'] as const) {
    const ended = withLineEnds(files, end);
    const before = findingsOf(ended, uri);
    const elsewhere = sound ? findingsOf(withLineEnds(sound, end), uri) : [];
    const errors = new Set(
      [...before, ...elsewhere].filter(({ severity }) => severity === 'error').map(({ check }) => check),
    );
    for (const finding of before)
      for (const fix of finding.fixes) {
        tried++;
        const told = `${finding.check} at ${finding.at.path}: ${fix.title} (${end === '\n' ? 'LF' : 'CRLF'})`;
        const { after, untouched } = applied(ended, fix);
        expect(untouched, `${told}: other bytes or line ends changed`).toBe(true);
        const left = findingsOf(after, uri);
        expect(
          left.map((one) => one.fingerprint),
          `${told}: the finding is gone`,
        ).not.toContain(finding.fingerprint);
        const added = left.filter((one) => one.severity === 'error' && !errors.has(one.check));
        expect(
          added.map((one) => `${one.check}: ${one.message}`),
          `${told}: no new error`,
        ).toEqual([]);
      }
  }
}

describe('on each bad example', () => {
  it.each(allChecks.map((check) => [check.id, check] as const))('%s', (_, check) => {
    tryAll(
      new Map([['file:///club/example.dryfit.yaml', unmark(explanationOf(check).bad).text]]),
      'file:///club/example.dryfit.yaml',
    );
  });
});

describe('on each faulty sample', () => {
  const faulty = sampleNames.filter((name) => name.includes('faulty/'));
  it.each(faulty)('%s', (name) => {
    const files = new Map(sampleNames.map((one) => [sampleUri(one), sampleText(one)]));
    const before = tried;
    tryAll(files, sampleUri(name));
    expect(tried, 'a faulty sample offers fixes').toBeGreaterThan(before);
  });
});

describe('on a generated build with the mistake of each check', () => {
  it.each(allChecks.map((check) => [check.id, check] as const))('%s', { timeout: 60_000 }, (_, check) => {
    const shown = shownMistake(check);
    expect(shown).toBeDefined();
    if (!shown) return;
    const files = (pair: Pair): Files => filesOf(pair, shown.seed);
    const { way, base, bad, good } = shown;
    tryAll(files(way.lay(base, bad, bad)), buildUri, files(way.lay(base, good, bad)));
  });
});

it('tried many fixes', () => {
  expect(tried).toBeGreaterThan(100);
});
