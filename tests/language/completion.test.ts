/** Completion, by text with the cursor marked |: what is offered, in half-typed lines too. */
import { describe, expect, it } from 'vitest';
import { complete } from '../../server/src/language/completion';
import { sampleWorkspace } from '../support/samples';

function offered(marked: string) {
  const offset = marked.indexOf('|');
  const text = marked.slice(0, offset) + marked.slice(offset + 1);
  const workspace = sampleWorkspace();
  const uri = 'file:///samples/builds/typing.dryfit.yaml';
  workspace.set(uri, text);
  return { items: complete(workspace, uri, offset), text, offset };
}

const labels = (marked: string): string[] => offered(marked).items.map((item) => item.label);

describe('keys', () => {
  it.each([
    ['dryfit: build\n|', 'name', 'dryfit'],
    ['dryfit: build\nname: A\nparts:\n  |', 'frame', 'name'],
    ['dryfit: build\nname: A\nparts:\n  mo|', 'motors', 'kv'],
    ['dryfit: build\nname: A\nparts:\n  motors:\n    |', 'kv', 'wheelbase'],
    ['dryfit: build\nname: A\nparts:\n  motors:\n    kv: 1800\n    |\n    stator: 2207\n', 'use', 'kv'],
    ['dryfit: build\nname: A\nparts:\n  motors: { kv: 1800, | }\n', 'stator', 'kv'],
    ['dryfit: build\nname: A\nparts:\n  stack:\n    esc:\n      |', 'current', 'mcu'],
    ['dryfit: build\nname: A\nparts:\n  motors:\n    thrust-table:\n      - |', 'propeller', 'kv'],
    [
      'dryfit: build\nname: A\nparts:\n  motors:\n    thrust-table:\n      - propeller: 5x4x3\n        |',
      'thrust',
      'propeller',
    ],
    ['dryfit: build\nname: A\npacks:\n  main:\n    |', 'capacity', 'kv'],
    ['dryfit: build\nname: A\nwiring:\n  |', 'receiver', 'motors'],
    ['dryfit: parts\nparts:\n  a-motor:\n    |', 'kind', 'kv'],
    ['dryfit: parts\nparts:\n  a-motor:\n    kind: motor\n    |', 'stator', 'kind'],
    ['dryfit: parts\nparts:\n  a-motor:\n    |\n    kind: motor\n', 'stator', 'kind'],
    ['dryfit: bench\ntools:\n  |', 'hex', 'radio'],
    ['|', 'dryfit: build', 'name'],
    ['dryfit: parts\nparts:\n  a:\n    kind: strap\n---\ndryfit: build\n|', 'craft', 'motors'],
  ])('%j offers %s, not %s', { timeout: 30_000 }, (marked, wanted, unwanted) => {
    expect(labels(marked)).toContain(wanted);
    expect(labels(marked)).not.toContain(unwanted);
  });

  it('keeps the order of the trade, not of the alphabet', () => {
    const list = labels('dryfit: build\nname: A\nparts:\n  |');
    expect(list.slice(0, 3)).toEqual(['frame', 'motors', 'propellers']);
  });
});

describe('values', () => {
  it.each([
    ['dryfit: build\nname: A\ncraft: |', 'freestyle-5'],
    ['dryfit: build\nname: A\ncraft:|', 'freestyle-5'],
    ['dryfit: build\nname: A\nparts:\n  battery-lead:\n    plug: X|', 'XT60'],
    ['dryfit: build\nname: A\nparts:\n  motors:\n    use: |', 'brunt-2207-1800'],
    ['dryfit: build\nname: A\nparts:\n  motors: { use: | }', 'brunt-2207-1800'],
    ['dryfit: build\nname: A\npacks:\n  main:\n    use: |', 'marl-6s-1300'],
    ['dryfit: build\nname: A\nparts:\n  receiver:\n    link: |', 'openlink'],
    ['dryfit: build\nname: A\nparts:\n  camera:\n    system: |', 'clearview'],
    ['dryfit: build\nname: A\nparts:\n  buzzer:\n    self-powered: |', 'yes'],
    ['dryfit: build\nname: A\nparts:\n  esc:\n    protocols: DShot300, |', 'DShot600'],
    ['dryfit: build\nname: A\nparts:\n  frame:\n    weight: |', '31.8 g'],
    ['dryfit: build\nname: A\nparts:\n  harness:\n    between: |', 'esc'],
    ['dryfit: |', 'build'],
    ['dryfit: parts\nparts:\n  x:\n    kind: |', 'all-in-one'],
    ['dryfit: build\nname: A\nparts:\n  esc:\n    controller-socket:\n      pins:\n        1: |', 'VBAT'],
    ['dryfit: build\nname: A\naccept:\n  - check: |', 'battery-plug-differs'],
    ['dryfit: build\nname: A\nflight:\n  pack: |\npacks:\n  main:\n    cells: 6S\n', 'main'],
  ])('%j offers %s', (marked, wanted) => {
    expect(labels(marked)).toContain(wanted);
  });

  it('replaces the whole word and adds the blank that YAML needs', () => {
    const { items } = offered('dryfit: build\nname: A\ncraft:|');
    expect((items[0]!.textEdit as { newText: string }).newText).toMatch(/^ /);
    const inWord = offered('dryfit: build\nname: A\nparts:\n  battery-lead:\n    plug: XT|30\n').items.find(
      (item) => item.label === 'XT60',
    )!;
    expect((inWord.textEdit as { range: object }).range).toEqual({
      start: { line: 4, character: 10 },
      end: { line: 4, character: 14 },
    });
  });

  it('explains each trade term', () => {
    for (const item of offered('dryfit: build\nname: A\nparts:\n  video-antenna:\n    polarisation: |').items)
      expect(item.labelDetails?.description?.length).toBeGreaterThan(5);
  });
});
