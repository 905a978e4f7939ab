/** Renaming, moving and writing-here as edits: only the meant lines change, comments and line ends stay. Text in, text out. */

import { describe, expect, it } from 'vitest';
import type { CodeAction, TextEdit, WorkspaceEdit } from 'vscode-languageserver-types';
import { analyse } from '../../server/src/analysis';
import { refactorings } from '../../server/src/language/refactor';
import { CannotRename, nameAt, rename } from '../../server/src/language/rename';
import { Workspace } from '../../server/src/library/workspace';
import { offsetAt } from '../../server/src/text/lines';
import { sampleUri, sampleWorkspace } from '../support/samples';

const files = (workspace: Workspace) => ({ get: (uri: string) => workspace.get(uri), spelled: (uri: string) => uri });

function applied(workspace: Workspace, edit: WorkspaceEdit): Map<string, string> {
  const all = new Map<string, TextEdit[]>(Object.entries(edit.changes ?? {}));
  for (const change of edit.documentChanges ?? [])
    if ('edits' in change) all.set(change.textDocument.uri, change.edits as TextEdit[]);
  const out = new Map<string, string>();
  for (const [uri, edits] of all) {
    const file = workspace.get(uri)!;
    const spans = edits
      .map((one) => ({
        start: offsetAt(file.text, file.lines, one.range.start),
        end: offsetAt(file.text, file.lines, one.range.end),
        text: one.newText,
      }))
      .sort((a, b) => b.start - a.start || b.end - a.end);
    let { text } = file;
    for (const span of spans) text = text.slice(0, span.start) + span.text + text.slice(span.end);
    out.set(uri, text);
  }
  return out;
}

/** Lines that differ, in the order of the longer text. */
function changedLines(before: string, after: string): string[] {
  const [a, b] = [before.split('\n'), after.split('\n')];
  const left = new Map<string, number>();
  for (const line of a) left.set(line, (left.get(line) ?? 0) + 1);
  return b.filter((line) => {
    const n = left.get(line) ?? 0;
    left.set(line, n - 1);
    return n <= 0;
  });
}

describe('rename of a part id', () => {
  const workspace = sampleWorkspace();
  const build = sampleUri('builds/ossel-5.dryfit.yaml');
  const at = workspace.get(build)!.text.indexOf('brunt-2207-1800') + 3;

  it('changes the name wherever it is said, and nothing else', () => {
    const out = applied(workspace, rename(workspace, files(workspace), build, at, 'brunt-2207-v2')!);
    expect([...out.keys()].map((uri) => uri.split('/').slice(-1)[0]).sort()).toEqual([
      'bench.dryfit.yaml',
      'first-five.dryfit.yaml',
      'hollow-lane.dryfit.yaml',
      'motors.dryfit.yaml',
      'ossel-5.dryfit.yaml',
      'pellam.dryfit.yaml',
      'tarn-works.dryfit.yaml',
    ]);
    for (const [uri, text] of out) {
      expect(text.replaceAll('brunt-2207-v2', 'brunt-2207-1800')).toBe(workspace.get(uri)!.text);
      expect(text).not.toMatch(/brunt-2207-1800/);
    }
  });

  it('finds nothing new to say afterwards', () => {
    const after = sampleWorkspace();
    for (const [uri, text] of applied(workspace, rename(workspace, files(workspace), build, at, 'brunt-2207-v2')!))
      after.set(uri, text);
    expect(analyse(after, build)!.findings.map((finding) => finding.check)).toEqual(
      analyse(workspace, build)!.findings.map((finding) => finding.check),
    );
  });

  it('refuses a name that is taken or none', () => {
    expect(() => rename(workspace, files(workspace), build, at, 'gannet-2807-1300')).toThrow(CannotRename);
    expect(() => rename(workspace, files(workspace), build, at, 'a name: with colon')).toThrow(CannotRename);
  });

  it('renames a pack with the choice of it', () => {
    const key = workspace.get(build)!.text.indexOf('  light:') + 3;
    expect(nameAt(workspace, build, key)?.text).toBe('light');
    const main = workspace.get(build)!.text.indexOf('  main:') + 3;
    const text = applied(workspace, rename(workspace, files(workspace), build, main, 'large')!).get(build)!;
    expect(changedLines(workspace.get(build)!.text, text)).toEqual(['  large:', '  pack: large']);
  });
});

describe.each(['\n', '\r\n'])('with line ends %j', (end) => {
  const text = (lines: string): string => lines.replace(/\n/g, end);
  const build = 'file:///w/builds/a.dryfit.yaml';
  const parts = 'file:///w/parts/straps.dryfit.yaml';

  function open(buildText: string): Workspace {
    const workspace = new Workspace();
    workspace.set(build, text(buildText));
    workspace.set(
      parts,
      text('dryfit: parts\nparts:\n  band-a:\n    kind: strap\n    length: 200 mm   # soft\n    width: 20 mm\n'),
    );
    return workspace;
  }
  const action = (workspace: Workspace, word: string, title: RegExp): CodeAction => {
    const found = refactorings(workspace, files(workspace), build, workspace.get(build)!.text.indexOf(word) + 1).find(
      (one) => title.test(one.title),
    );
    expect(found, String(title)).toBeDefined();
    return found!;
  };

  it("writes the library's values in place of the use", () => {
    const workspace = open(
      'dryfit: build\nname: A\nparts:\n  strap:   # the long one\n    use: band-a\n    width: 16 mm\n    count: 2\n  buzzer:\n    weight: 2 g\n',
    );
    const out = applied(workspace, action(workspace, 'band-a', /Write the values/).edit!);
    expect(out.get(build)).toBe(
      text(
        'dryfit: build\nname: A\nparts:\n  strap:   # the long one\n    length: 200 mm   # soft\n    width: 16 mm\n    count: 2\n  buzzer:\n    weight: 2 g\n',
      ),
    );
    expect([...out.keys()]).toEqual([build]);
  });

  it('moves a part to the parts file and uses it from there', () => {
    const workspace = open(
      'dryfit: build\nname: A\nparts:\n  strap:\n    name: Band B\n    length: 250 mm   # measured\n    count: 2\n  buzzer:\n    weight: 2 g\n',
    );
    const out = applied(workspace, action(workspace, 'length', /Move this strap/).edit!);
    expect(out.get(build)).toBe(
      text('dryfit: build\nname: A\nparts:\n  strap:\n    use: band-b\n    count: 2\n  buzzer:\n    weight: 2 g\n'),
    );
    expect(out.get(parts)).toBe(
      text(
        'dryfit: parts\nparts:\n  band-a:\n    kind: strap\n    length: 200 mm   # soft\n    width: 20 mm\n\n  band-b:\n    kind: strap\n    name: Band B\n    length: 250 mm   # measured\n',
      ),
    );
    const before = analyse(workspace, build)!.crafts[0]!.roles.strap!;
    for (const [uri, after] of out) workspace.set(uri, after);
    const moved = analyse(workspace, build)!;
    expect(moved.findings.filter((finding) => finding.severity === 'error')).toEqual([]);
    expect(moved.crafts[0]!.roles.strap!.length?.value).toBe(before.length?.value);
  });
});

it('replaces by parts that fit, and by no other', () => {
  const workspace = sampleWorkspace();
  const uri = sampleUri('builds/ossel-5.dryfit.yaml');
  const titles = refactorings(
    workspace,
    files(workspace),
    uri,
    workspace.get(uri)!.text.indexOf('brunt-2207-1800') + 1,
  ).map((one) => one.title);
  expect(titles.some((title) => title.includes('Replace by brunt-2207-2050'))).toBe(true);
  expect(titles.join()).not.toContain('gannet');
});
