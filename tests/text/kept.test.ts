/** What was read of a short text is kept, for a while and not for ever. */
import { expect, it } from 'vitest';
import { kept } from '../../server/src/text/kept';

function counting() {
  const read: string[] = [];
  const ask = kept((text) => {
    read.push(text);
    return { text };
  });
  return { read, ask };
}

it('reads a short text once', () => {
  const { read, ask } = counting();
  const file = 'weight: 31.8 g\nweight: 31.8 g\n';
  const first = ask(file.slice(8, 14));
  expect(first).toEqual({ text: '31.8 g' });
  expect(ask(file.slice(23, 29))).toBe(first);
  expect(read).toEqual(['31.8 g']);
});

it('reads a long text anew', () => {
  const { read, ask } = counting();
  const long = 'x'.repeat(81);
  expect(ask(long)).toEqual(ask(long));
  expect(read).toEqual([long, long]);
});

it('keeps what is asked for again and again, and forgets the rest', () => {
  const { read, ask } = counting();
  const first = ask('always');
  ask('once');
  for (let i = 0; i < 5000; i++) {
    ask(`${i} g`);
    expect(ask('always')).toBe(first);
  }
  ask('once');
  expect(read.filter((text) => text === 'always')).toHaveLength(1);
  expect(read.filter((text) => text === 'once')).toHaveLength(2);
});
