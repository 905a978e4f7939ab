/** What is remembered beside an object is its own: unseen in its keys, and not carried over to a copy. */
import { expect, it } from 'vitest';
import { beside } from '../../server/src/build/beside';

it('remembers for the object alone', () => {
  const [weight, note] = [beside<object, number>('weight'), beside<object, string>('note')];
  const craft = { name: 'Pip' };
  expect(weight.get(craft)).toBeUndefined();
  weight.set(craft, 1);
  weight.set(craft, 2);
  note.set(craft, 'light');
  expect([weight.get(craft), note.get(craft)]).toEqual([2, 'light']);
  expect(Object.keys(craft)).toEqual(['name']);
  expect(JSON.stringify(craft)).toBe('{"name":"Pip"}');
  expect(weight.get({ ...craft })).toBeUndefined();
});
