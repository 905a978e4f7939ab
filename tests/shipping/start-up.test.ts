/** What every session loads before its first findings: small, of letters of one byte, and nothing of it a second time in what is loaded later. Needs `npm run build`. */
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, it } from 'vitest';

const dist = path.resolve(import.meta.dirname, '../../dist');
const textOf = (name: string): string => readFileSync(path.join(dist, name), 'utf8');

it('is small', () => {
  expect(textOf('server.cjs').length).toBeLessThan(950_000);
});

it.each(['server.cjs', 'requests.cjs', 'seldom.cjs', 'whole-yaml.cjs'])('%s takes one byte a letter', (name) => {
  expect(/[\u0080-\uffff]/.exec(textOf(name))).toBeNull();
});

it.each(['requests.cjs', 'seldom.cjs', 'whole-yaml.cjs'])('%s borrows and brings no check of its own', (name) => {
  expect(textOf(name)).toContain('require("./server.cjs").lent');
  expect(textOf(name)).not.toContain('id:"battery-plug-differs"');
  expect(textOf('server.cjs')).toContain('id:"battery-plug-differs"');
});

it('leaves the whole parser and the words of sellers for later', () => {
  expect(textOf('whole-yaml.cjs')).toContain('BLOCK_AS_IMPLICIT_KEY');
  expect(textOf('server.cjs')).not.toContain('BLOCK_AS_IMPLICIT_KEY');
  expect(textOf('seldom.cjs')).toMatch(/gewicht/i);
  expect(textOf('server.cjs')).not.toMatch(/gewicht/i);
});
