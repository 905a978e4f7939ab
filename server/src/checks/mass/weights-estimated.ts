/** Some parts have no weight, and what is usual for them makes a good part of the whole. */

import { fallsShort } from '../beyond';
import { check } from '../check';
import { grams, percent } from '../words';

export default check({
  id: 'weights-estimated',
  group: 'mass',
  title: 'Part of the weight is only estimated',
  severity: 'information',
  needs: { weight: 'worked.pack-weight' },
  judge({ weight }, craft, pack) {
    if (weight.value.weighed || pack !== craft.packs[0]) return undefined;
    const { rows, packRow, ready } = weight.value;
    const open = [...rows, ...(packRow ? [packRow] : [])].filter(
      (row) => row.basis === 'estimate' && row.fact === undefined && !row.part.includes(','),
    );
    const sum = open.reduce((total, row) => total + row.mass.value, 0);
    if (open.length === 0 || fallsShort(sum, 0.08 * ready.value)) return undefined;
    const names = open
      .sort((a, b) => b.mass.value - a.mass.value)
      .slice(0, 4)
      .map((row) => row.part.replaceAll('-', ' '));
    return {
      at: { at: craft.where, text: 'name' },
      message: `${open.length === 1 ? 'One part has' : `${open.length} parts have`} no weight (${names.join(', ')}${open.length > 4 ? ' and more' : ''}); usual ones of ${grams(sum)} together were taken, ${percent(sum / ready.value)} of the craft. It weighs ${grams(ready.low)} to ${grams(ready.high)}. Weigh them to narrow that.`,
    };
  },
});

export const explanation = {
  why: 'Weight, thrust and flight time are only as sure as the weights they rest on.',
  remedy: "Weigh the parts, or take the sellers' figures.",
  source: 'usual weights of parts, said from 8 % of the craft on: common practice',
  bad: `
dryfit: build
name: «No weights»
parts:
  motors:
    stator: 2207
  frame:
    weight: 110 g
packs:
  main:
    cells: 6S
    weight: 200 g
`,
  good: `
dryfit: build
name: Example
parts:
  motors:
    stator: 2207
    weight: 32 g
  frame:
    weight: 110 g
packs:
  main:
    cells: 6S
    weight: 200 g
`,
};
