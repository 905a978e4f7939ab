/** The quick reader against the whole parser: whenever it gives a tree, it is the very same; on the club's files it always does. */
import { describe, expect, it } from 'vitest';
import { readPlainYaml } from '../../server/src/text/read-plain-yaml';
import { readWholeYaml } from '../../server/src/text/read-yaml';
import { damage } from '../support/damage';
import { sampleNames, sampleText } from '../support/samples';
import { seeded } from '../support/seeded';

const seed = Number(process.env.DRYFIT_SEED ?? 77);

/** Whether the quick reader took it. */
function agree(text: string, where: string): boolean {
  const quick = readPlainYaml(text);
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
