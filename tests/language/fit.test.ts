/** Parts offered in one place of a build: those that fit first, also out of a library of thousands. */
import { describe, expect, it } from 'vitest';
import { complete } from '../../server/src/language/completion';
import { fitting, mostListed } from '../../server/src/language/fit';
import { sampleText, sampleUri, sampleWorkspace } from '../support/samples';

const build = sampleUri('builds/ossel-5.dryfit.yaml');
const place = { uri: build, pointer: '/parts/motors', kind: 'motor' };

const motor = (id: string, mount: string): string =>
  `  ${id}:\n    kind: motor\n    stator: 2207\n    kv: 1800\n    cells: 4S-6S\n    mount: ${mount}\n    shaft: M5\n    weight: 33 g\n`;

function withOthers(count: number) {
  const workspace = sampleWorkspace();
  const parts = Array.from({ length: count }, (_, i) => motor(`other-${i}`, i % 2 ? '16x16 M3' : '12x12 M2'));
  workspace.set(sampleUri('others.dryfit.yaml'), `dryfit: parts\nname: Others\n\nparts:\n${parts.join('')}`);
  return workspace;
}

describe('out of a few thousand motors', () => {
  const workspace = withOthers(3000);
  const fits = fitting(workspace, place);

  it('lists as many as a list is good for', () => {
    expect(fits).toHaveLength(mostListed);
    expect(new Set(fits.map(({ part }) => part.id)).size).toBe(mostListed);
  });

  it('judges some of each kind there is, and puts the rest with what they are like', () => {
    const judged = fits.filter((fit) => fit.judged);
    expect(judged.some(({ misfit }) => misfit)).toBe(true);
    expect(judged.some(({ misfit }) => !misfit)).toBe(true);
    const unjudged = fits.flatMap((fit, i) => (fit.judged ? [] : [{ i, odd: Number(fit.part.id.slice(6)) % 2 === 1 }]));
    expect(unjudged.length).toBeGreaterThan(100);
    const lastFitting = Math.max(...unjudged.filter(({ odd }) => odd).map(({ i }) => i));
    const firstOther = Math.min(...unjudged.filter(({ odd }) => !odd).map(({ i }) => i));
    expect(lastFitting).toBeLessThan(firstOther);
    expect(fits.at(-1)?.misfit).toBeDefined();
  });

  it('finds the one that is typed', () => {
    expect(fits.some(({ part }) => part.id === 'other-2991')).toBe(false);
    const typing = { typed: 'ot2991', word: { start: 0, end: 0 } };
    expect(fitting(workspace, place, typing).map(({ part }) => part.id)).toEqual(['other-2991']);
  });

  it('lists what there is where nothing holds the letters', () => {
    const typing = { typed: 'zzz', word: { start: 0, end: 0 } };
    expect(fitting(workspace, place, typing)).toHaveLength(mostListed);
  });
});

it('says the same while the id is typed as when it is asked anew', () => {
  const typedOn = sampleWorkspace();
  const text = sampleText('builds/ossel-5.dryfit.yaml');
  const line = 'use: brunt-2207-1800';
  for (let length = 0; length <= 'brunt-2207-1800'.length; length++) {
    const now = text.replace(line, line.slice(0, line.length - 'brunt-2207-1800'.length + length));
    const at = text.indexOf(line) + 'use: '.length + length;
    const anew = sampleWorkspace();
    typedOn.set(build, now);
    anew.set(build, now);
    expect(complete(typedOn, build, at)).toEqual(complete(anew, build, at));
  }
});

it('judges again when something else in the build has changed', () => {
  const workspace = withOthers(4);
  const fitsOf = (): readonly boolean[] =>
    fitting(workspace, place)
      .filter(({ part }) => part.id === 'other-1')
      .map(({ misfit }) => misfit === undefined);
  expect(fitsOf()).toEqual([true]);
  const frame = sampleText('builds/ossel-5.dryfit.yaml').replace(
    'use: ossel-225',
    'use: ossel-225\n    motor-mounts: 9x9 M2',
  );
  workspace.set(build, frame);
  expect(fitsOf()).toEqual([false]);
});

it('judges again when a part has changed', () => {
  const workspace = withOthers(4);
  const fitsOf = (id: string): readonly boolean[] =>
    fitting(workspace, place)
      .filter(({ part }) => part.id === id)
      .map(({ misfit }) => misfit === undefined);
  expect(fitsOf('other-0')).toEqual([false]);
  workspace.set(
    sampleUri('others.dryfit.yaml'),
    `dryfit: parts\nname: Others\n\nparts:\n${motor('other-0', '16x16 M3')}`,
  );
  expect(fitsOf('other-0')).toEqual([true]);
});
