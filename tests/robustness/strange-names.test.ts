/** Words that every object of the language knows, as names of parts, packs and values: they are words like any other. */
import { expect, it } from 'vitest';
import { type Analysis, analyse } from '../../server/src/analysis';
import { readQuantity } from '../../server/src/text/quantity';
import { sampleUri, sampleWorkspace } from '../support/samples';
import { throughEverything } from '../support/through-everything';

const words = ['constructor', 'toString', 'valueOf', 'hasOwnProperty', '__proto__', 'prototype'];

/** A build in which a word stands wherever one may stand. */
const buildOf = (word: string): string => `dryfit: build
name: ${word}
craft: ${word}
${word}: ${word}
parts:
  ${word}:
    use: ${word}
    weight: 5 g (${word})
  motors:
    ${word}: 4
    count: ${word}
    weight: 31 g (${word} 2026-10-02)
    stator: 2207
  frame:
    motor-positions: [40 mm ${word}, 20 mm forward]
    geometry: ${word}
  stack:
    ${word}:
      use: ${word}
  extras:
    ${word}:
      weight: 1 g
      from: ${word}
packs:
  ${word}:
    use: ${word}
    cells: 6S
    plug: ${word}
flight:
  pack: ${word}
wiring:
  ${word}: ${word}
accept:
  - check: ${word}
    because: ${word}
`;

it.each(words)('%s, at every place of a build', { timeout: 60_000 }, (word) => {
  const workspace = sampleWorkspace();
  const uri = sampleUri(`builds/strange-${word}.dryfit.yaml`);
  const text = buildOf(word);
  let before: Analysis | undefined;
  for (let offset = 0; offset <= text.length; offset++)
    before = throughEverything(workspace, uri, text, offset, before);
  for (let end = 0; end <= text.length; end++)
    before = throughEverything(workspace, uri, text.slice(0, end), end, before);
  expect(before!.findings).toEqual(analyse(workspace, uri)!.findings);
  for (const { message } of before!.findings) expect(message).not.toMatch(/native code|NaN|\[object/);
});

it('is no origin of a value either', () => {
  for (const word of words) expect(readQuantity(`5 g (${word})`, 'mass').ok, word).toBe(false);
});
