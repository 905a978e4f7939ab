/** What is found after an edit, with what could be taken over from before, is what a run from the start finds. */
import { expect, it } from 'vitest';
import { type Analysis, analyse } from '../../server/src/analysis';
import { addPiece, changedPieces, piecesOf } from '../../server/src/build/pieces';
import type { Slot } from '../../server/src/build/slot';
import { allChecks } from '../../server/src/checks/generated/all';
import { explanationOf } from '../../server/src/checks/generated/explanations';
import { Workspace } from '../../server/src/library/workspace';
import { unmark } from '../support/marked';
import { faultyBuilds, sampleText, sampleUri, sampleWorkspace, soundBuilds } from '../support/samples';

const said = ({ findings, ran, notChecked }: Analysis): unknown => ({ findings, ran, notChecked });

/** Sets one text after another and holds each analysis against a fresh one. */
function follow(workspace: Workspace, uri: string, texts: readonly string[]): void {
  let before: Analysis | undefined;
  for (const text of texts) {
    workspace.set(uri, text);
    before = analyse(workspace, uri, before ? { before } : {})!;
    expect(said(before), text).toEqual(said(analyse(workspace, uri)!));
  }
}

it.each(allChecks.map((check) => [check.id, check] as const))('%s, between its examples', (_, check) => {
  const [bad, good] = [unmark(explanationOf(check).bad).text, unmark(explanationOf(check).good).text];
  follow(new Workspace(), 'file:///club/example.dryfit.yaml', [good, `${good}\n`, bad, `# \n${bad}`, good, bad]);
});

const scalars = (slot: Slot | undefined): readonly Slot[] =>
  slot ? [...(slot.node.is === 'scalar' ? [slot] : []), ...slot.kids.flatMap(scalars)] : [];

it.each([...soundBuilds, ...faultyBuilds])('%s, each value in turn', { timeout: 120_000 }, (name) => {
  const workspace = sampleWorkspace();
  const [uri, text] = [sampleUri(name), sampleText(name)];
  const values = scalars(workspace.get(uri)!.documents[0]!.slot);
  expect(values.length).toBeGreaterThan(20);
  const texts = values.flatMap(({ node: { span } }) => {
    const put = (value: string): string => text.slice(0, span.start) + value + text.slice(span.end);
    const value = text.slice(span.start, span.end);
    return [put(''), put(value.replace(/\d/, (digit) => String((Number(digit) + 3) % 10))), put(`${value} g`), text];
  });
  follow(workspace, uri, [text, text.replace('\n', '\n\n'), ...texts]);
});

it('takes over what an edit of a value leaves as it was', () => {
  const workspace = sampleWorkspace();
  const name = soundBuilds.find((one) => one.includes('ossel'))!;
  const [uri, text] = [sampleUri(name), sampleText(name)];
  const first = analyse(workspace, uri, { before: analyse(workspace, uri)! })!;
  workspace.set(uri, text.replace('length: 100 mm', 'length: 130 mm'));
  const second = analyse(workspace, uri, { before: first })!;
  const again = second.left.run!.outcomes.filter((outcome, i) => outcome !== first.left.run!.outcomes[i]);
  expect(again.length).toBeGreaterThan(0);
  expect(again.length).toBeLessThan(allChecks.length / 10);
});

it('tells a changed value, one that can no longer be read, and a part that comes or goes', () => {
  // What nobody has ever looked at is no difference to anybody.
  for (const [head, key] of [
    ['motors', 'kv'],
    ['said', 'name'],
  ] as const)
    addPiece([], piecesOf(head), key);
  const workspace = new Workspace();
  const documentOf = (text: string) => {
    workspace.set('file:///one.dryfit.yaml', `dryfit: build\n${text}`);
    return workspace.get('file:///one.dryfit.yaml')!.documents[0]!;
  };
  const one = documentOf('name: A\nparts:\n  motors:\n    kv: 1800\n');
  expect(changedPieces(one, documentOf('# moved\n\nname: A\nparts:\n  motors:\n    kv: 1800\n'))).toEqual([]);
  const changed = (text: string): boolean => changedPieces(one, documentOf(text))!.some((bits) => bits !== 0);
  expect(changed('name: B\nparts:\n  motors:\n    kv: 1800\n')).toBe(true);
  expect(changed('name: A\nparts:\n  motors:\n    kv: so\n')).toBe(true);
  expect(changedPieces(one, documentOf('name: A\nparts:\n  motors: so\n'))).toBeUndefined();
  expect(
    changedPieces(one, documentOf('name: A\nparts:\n  motors:\n    kv: 1800\n  esc:\n    count: 4\n')),
  ).toBeUndefined();
  expect(changedPieces(one, documentOf('parts:\n  motors:\n    kv: 1800\n'))).toBeUndefined();
});
