/** The quick reader against the whole parser: whenever it gives a tree, it is the very same; on the club's files it always does. */
import { describe, expect, it } from 'vitest';
import { readPlainYaml } from '../../server/src/text/read-plain-yaml';
import { readWholeYaml } from '../../server/src/text/read-whole-yaml';
import { damage } from '../support/damage';
import { sampleNames, sampleText } from '../support/samples';
import { seeded } from '../support/seeded';

const seed = Number(process.env.DRYFIT_SEED ?? 77);

/** Whether the quick reader took it. */
function agree(text: string, where: string): boolean {
  const quick = readPlainYaml(text, readWholeYaml);
  if (!quick) return false;
  const whole = readWholeYaml(text);
  if (JSON.stringify(quick) !== JSON.stringify(whole)) expect(quick, `${where}\n${text}`).toEqual(whole);
  return true;
}

describe.each(sampleNames)('%s', (name) => {
  it('is read alike, in LF and CRLF', () => {
    expect(agree(sampleText(name), name)).toBe(true);
    expect(agree(sampleText(name).replace(/\n/g, '\r\n'), name)).toBe(true);
  });

  it('is read alike at every beginning', () => {
    const text = sampleText(name).slice(0, 1500);
    let taken = 0;
    for (let end = 0; end <= text.length; end++) if (agree(text.slice(0, end), `${name} to ${end}`)) taken++;
    expect(taken).toBeGreaterThan(text.length / 3);
  });

  it('is read alike when damaged', () => {
    const chance = seeded(seed + name.length);
    const text = sampleText(name)
      .slice(0, 1200)
      .replace(/[^\n]*$/, '');
    let taken = 0;
    for (let i = 0; i < 400; i++) if (agree(damage(text, chance), `seed ${seed}, ${name}, ${i}`)) taken++;
    expect(taken).toBeGreaterThan(20);
  });
});

it.each([20, 31, 40, 58, 62, 63, 64, 70])('is read alike with a part of %i levels inside others', (levels) => {
  const inner = `${'['.repeat(levels)}1${']'.repeat(levels)}`;
  for (const outer of [1, 5, 20, 40, 62]) {
    const lines = Array.from({ length: outer }, (_, i) => `${'  '.repeat(i)}a:`);
    agree(`${[...lines, `${'  '.repeat(outer)}n: ${inner}`].join('\n')}\nz: 1\n`, `${outer} and ${levels}`);
  }
});

/** What may stand in the middle of a file while a line is typed, harmless or not. */
const typed = [
  'wei',
  'weight',
  'weight:',
  'weight: 3:',
  'note: a: b',
  'a b: c: d',
  '"x',
  'n: "x',
  "n: 'x",
  "n: it's",
  "n: it's Bo's",
  "k'a: 'b",
  'n: "a" b',
  'n: "a # b"',
  'size: 5" and 6"',
  'n: [1, 2]',
  'n: [1, 2',
  'n: [a"b, c]',
  'n: {a: 1}',
  'n: {a: 1',
  'n: a ] b',
  'n: [1 # ]',
  'n: |',
  'n: >-',
  'n: |2',
  '- x',
  '- ',
  '-',
  '- - x',
  '- a: 1',
  '&a x',
  'n: &a',
  'n: *a',
  '<<: {a: 1}',
  '? x',
  ': x',
  '!t',
  '%',
  '@',
  '`',
  '\tx: 1',
  'n: 1\t',
  '---',
  '...',
  '# c',
  'n: ~',
  'n:: 1',
  'n : 1',
  '=',
  ', x',
  'n: x,',
  '"q": 1',
  "'q': 1",
  '"q" 1',
];

it.each([
  'parts:\n  a:\n    k: x: y\n    p: 8\n   -  w: 1\n\n  b:\n    k: 2\n',
  'parts:\n  a:\n    k: x: y\n    p: 8\n   - 1\n  b:\n    k: 2\n',
  'parts:\n  a:\n    - 1\n    - k: x: y\n      p: 8\n   - 1\n  b:\n    k: 2\n',
])('is read alike with a dash left of its lines: %j', (text) => {
  agree(text, 'dash');
  agree(text.replaceAll('\n', '\r\n'), 'dash, CRLF');
});

it('is read alike with a half-typed line anywhere in a file', { timeout: 240_000 }, () => {
  const chance = seeded(seed);
  let aside = 0;
  for (const name of sampleNames) {
    const lines = sampleText(name).slice(0, 3000).split('\n');
    for (let i = 0; i < 60; i++) {
      const at = chance.below(lines.length);
      const indent = ' '.repeat(chance.below(5) * 2 + (chance.below(6) === 0 ? 1 : 0));
      const own = lines[at]!.match(/^ */)![0];
      const line = (chance.below(3) === 0 ? indent : own) + chance.pick(typed);
      const text = [...lines.slice(0, at), line, ...lines.slice(at + chance.below(2))].join('\n');
      if (agree(text, `seed ${seed}, ${name}, ${i}`) && !readPlainYaml(text)) aside++;
    }
  }
  expect(aside).toBeGreaterThan(500);
});

describe('small texts made at random', () => {
  const pieces = [
    'a',
    'b c',
    'k: ',
    'k:',
    '- ',
    '-',
    '\n',
    '\n  ',
    '\n    ',
    '  ',
    '"x"',
    "'y'",
    '#',
    ' # c',
    '12',
    '0802',
    '~',
    ':',
    '{',
    '}',
    '[',
    ']',
    ',',
    '&a ',
    '*a',
    '|',
    '>',
    '!t ',
    '\t',
    '\r\n',
    '---',
    '...',
    '%',
    'null',
    'é',
    '\u00a0',
    '?',
    '=',
    '<<: ',
    '5.1x3.6x3',
    'a:b',
    'http://x',
    '-1',
    '- - ',
  ];
  it('20,000 of them', { timeout: 120_000 }, () => {
    const chance = seeded(seed);
    let taken = 0;
    for (let i = 0; i < 20_000; i++) {
      let text = '';
      for (let n = 1 + chance.below(14); n > 0; n--) text += chance.pick(pieces);
      if (agree(text, `seed ${seed}, ${i}`)) taken++;
    }
    expect(taken).toBeGreaterThan(100);
  });
});
