/** Whole builds of parts that fit: clean from the workspace's library, clean from the samples, and honest where neither has the parts. */
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it, vi } from 'vitest';
import { analyse } from '../../server/src/analysis';
import { complete } from '../../server/src/language/completion';
import { filledBuild, newBuild } from '../../server/src/language/new-build';
import { addToParts, draftPart } from '../../server/src/language/new-part';
import { beginningOf, usualWish } from '../../server/src/language/wish';
import { Workspace } from '../../server/src/library/workspace';

const parts = path.resolve(import.meta.dirname, '../../samples/parts');
const uri = 'file:///w/my.dryfit.yaml';
const today = '2026-11-25';
// A build is chosen among thousands, which takes a while on a busy machine.
vi.setConfig({ testTimeout: 60_000 });

const made = Object.keys(usualWish);

function library(change: (text: string) => string = (text) => text): Workspace {
  const workspace = new Workspace();
  for (const name of readdirSync(parts))
    workspace.set(`file:///w/parts/${name}`, change(readFileSync(path.join(parts, name), 'utf8')));
  return workspace;
}

const grave = (workspace: Workspace): readonly string[] =>
  analyse(workspace, uri, { today })!
    .findings.filter(({ severity }) => severity !== 'information')
    .map(({ message }) => message);

describe.each(made)('%s', (craft) => {
  const wish = { craft, ...usualWish[craft]! };

  it('is made of the parts of the workspace and checks clean', () => {
    const workspace = library();
    const before = workspace.uris();
    const build = newBuild(workspace, wish, uri, today)!;
    expect(build).toMatchObject({ from: 'workspace', left: [] });
    expect(workspace.uris()).toEqual(before);
    workspace.set(uri, build.text);
    expect(analyse(workspace, uri, { today })!.crafts).toHaveLength(1);
    expect(grave(workspace)).toEqual([]);
  });

  it('is written out from the samples where the workspace has no parts, and checks clean', () => {
    const workspace = new Workspace();
    const build = newBuild(workspace, wish, uri, today)!;
    expect(build).toMatchObject({ from: 'samples', left: [] });
    expect(build.text).not.toContain('use:');
    workspace.set(uri, build.text);
    expect(grave(workspace)).toEqual([]);
  });

  it('has the cells and the propellers that were asked for', () => {
    const { text } = newBuild(new Workspace(), wish, uri, today)!;
    expect(text).toMatch(new RegExp(`^    cells: ${wish.cells}S`, 'm'));
  });
});

it('is not made where neither has the parts', () => {
  expect(newBuild(library(), { craft: 'lifter-10', cells: 6, propeller: 12 }, uri, today)).toBeUndefined();
  expect(newBuild(library(), { craft: 'freestyle-5', cells: 13, propeller: 5.1 }, uri, today)).toBeUndefined();
});

it('turns to the samples when the only packs of the workspace would not fit', () => {
  const workspace = library((text) =>
    text.replace(/plug: XT60\b/g, 'plug: XT90').replace(/cells: 3S-6S/g, 'cells: 3S-4S'),
  );
  expect(newBuild(workspace, { craft: 'freestyle-5', cells: 6, propeller: 5.1 }, uri, today)?.from).toBe('samples');
});

it('offers whole builds in an empty file, and nowhere else', () => {
  const workspace = library();
  workspace.set(uri, '\n');
  const offered = complete(workspace, uri, 0).filter((item) => item.label.startsWith('a whole build'));
  expect(offered.map((item) => item.label.split(': ')[1])).toEqual(Object.keys(usualWish));
  for (const item of offered) expect(item.command?.arguments).toEqual([uri, item.label.split(': ')[1]]);
  workspace.set(uri, 'dryfit: build\n\n');
  expect(complete(workspace, uri, 14).some((item) => item.label.startsWith('a whole build'))).toBe(false);
});

it.each(['\n', '\r\n'])('fills what was taken in an empty file with parts, and no file that says more (%j)', (end) => {
  const workspace = library();
  const begun = beginningOf('freestyle-5').replaceAll('\n', end);
  workspace.set(uri, begun);
  const build = filledBuild(workspace, uri, 'freestyle-5', today)!;
  expect(build.text.startsWith(beginningOf('freestyle-5'))).toBe(true);
  expect(workspace.get(uri)!.text).toBe(begun);
  workspace.set(uri, build.text);
  expect(analyse(workspace, uri, { today })!.findings.filter(({ severity }) => severity !== 'information')).toEqual([]);
  workspace.set(uri, `${begun}parts:${end}`);
  expect(filledBuild(workspace, uri, 'freestyle-5', today)).toBeUndefined();
  workspace.set(uri, begun);
  expect(filledBuild(workspace, uri, 'race-5', today)).toBeUndefined();
});

describe('a new part', () => {
  it.each(['\n', '\r\n'])('goes behind the last of the nearest parts file and touches nothing else (%j)', (end) => {
    const workspace = library((text) => text.replaceAll('\n', end));
    const { text } = draftPart(workspace, 'motor', 'KV: 1750\nStator: 2207', today, false);
    const added = addToParts(workspace, 'file:///w/parts/motors.dryfit.yaml', text)!;
    const file = workspace.get(added.uri)!;
    const after = file.text + added.edit.newText;
    expect(added.edit.range.start).toEqual(added.edit.range.end);
    expect(after.split(end).join('').includes('\r') || after.split(end).join('').includes('\n')).toBe(false);
    workspace.set(added.uri, after);
    expect(analyse(workspace, added.uri, { today })!.findings).toEqual([]);
    expect(
      [...workspace.parts().values()].flat().some((part) => part.layer.file === added.uri && part.kind === 'motor'),
    ).toBe(true);
  });

  it('gets an id that no other part has', () => {
    const workspace = library();
    expect(draftPart(workspace, 'motor', 'Brunt 2207 1800', today, false).id).toBe('brunt-2207-1800-2');
  });

  it('has nowhere to go without a parts file', () => {
    expect(
      addToParts(new Workspace(), uri, draftPart(new Workspace(), 'motor', 'KV: 1750', today, false).text),
    ).toBeUndefined();
  });
});
