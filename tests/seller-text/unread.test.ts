/** What a page holds and no field was read from: it is listed, and nothing is said or estimated in its place. */
import { expect, it } from 'vitest';
import { kindsMeant } from '../../server/src/library/seller-text/kind-words';
import { partKinds, proposeFields } from '../../server/src/library/seller-text/propose';
import { partDraft } from '../../server/src/report/part-draft';

const today = '2026-11-26';

const draft = (kind: string, text: string, typical = false) =>
  partDraft(kind, text, { today, typical, taken: () => false });

it('lists lines and clauses with a number that no field came from', () => {
  const { unread } = proposeFields(
    'flight-controller',
    'Rill 3\nUARTs ........ 6\nWeight ........ 8.4 g\nIt blinks at 3 Hz, and the LED glows.\nFree shipping over 75.',
    today,
  );
  expect(unread).toEqual(['UARTs ........ 6', 'It blinks at 3 Hz']);
});

it('lists a known label whose value was not understood, number or not', () => {
  expect(proposeFields('frame', 'Rill 5\nGeometry: Squashed X', today).unread).toEqual(['Geometry: Squashed X']);
});

it('does not list what was read twice, a title, or the halves of a value', () => {
  const text = 'Osprel 2207 1750KV motor\nKV: 1750\nStator Diameter: 22mm\nStator Height: 7mm';
  expect(proposeFields('motor', text, today).unread).toEqual([]);
});

it('names the line that may say a missing field, and says of none that it is not on the page', () => {
  const { missing, notes } = draft('flight-controller', 'Rill 3\nUARTs ........ 6\nWeight ........ 8.4 g');
  expect(missing.find(({ path }) => path === 'uarts')?.perhaps).toBe('UARTs ........ 6');
  const heads = notes.filter((note) => !note.startsWith(' '));
  expect(heads).toEqual([
    'Not said on the page, what most checks look at first:',
    'Not read, but a line of the page may say it:',
    'Not read:',
  ]);
  const at = notes.indexOf(heads[1]!);
  expect(notes.slice(0, at).join('\n')).not.toMatch(/uarts/);
  expect(notes.slice(at).join('\n')).toMatch(/uarts: \d+ checks; see "UARTs \.+ 6"/);
});

it('estimates nothing that a line which was not read may state', () => {
  const usual = draft('motor', 'Osprel 2207 1750KV motor', true).proposed.fields.map(({ path }) => path);
  const careful = draft('motor', 'Osprel 2207 1750KV motor\nWithout wires it is 31 to 33 g light: 31-33 g', true);
  expect(usual).toContain('weight');
  expect(careful.proposed.fields.map(({ path }) => path)).not.toContain('weight');
  expect(careful.notes.join('\n')).toMatch(/Not read:[\s\S]*31-33 g/);
});

it('keeps pasted line ends out of the notes', () => {
  const { notes } = draft('motor', 'Osprel\nPoles: 14\u2028parts: x');
  expect(notes.join('\n')).not.toMatch(/[\u2028\u2029]/);
});

it.each([
  ['fc', ['flight-controller']],
  ['FC', ['flight-controller']],
  ['vtx', ['video-transmitter']],
  ['aio', ['all-in-one']],
  ['4in1', ['esc']],
  ['flight controller', ['flight-controller']],
  ['motors', ['motor']],
  ['antenna', ['video-antenna', 'receiver-antenna']],
  ['anchor', []],
  ['constructor', []],
])('takes %s for %j', (word, kinds) => expect(kindsMeant(word)).toEqual(kinds));

it.each(partKinds)('takes the kind %s for itself', (kind) => expect(kindsMeant(kind)).toEqual([kind]));

it.each([`a${' '.repeat(20_000)}b`, '1 and '.repeat(3_000), '1x1 '.repeat(5_000), '1,'.repeat(10_000)])(
  'reads one endless line in reasonable time (%#)',
  (text) => {
    const start = performance.now();
    proposeFields('video-transmitter', text, today);
    expect(performance.now() - start).toBeLessThan(5_000);
  },
);
