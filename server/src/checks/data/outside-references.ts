/** A value lies outside all reference craft of its class. */

import { enough } from '../../plan/consensus';
import { consensusFor, isOutside, standings } from '../../plan/consensus-craft';
import { check } from '../check';

const plain = (value: number | string, digits: number): string =>
  typeof value === 'number' ? Number(value.toFixed(digits)).toString() : value;

export default check({
  id: 'outside-references',
  group: 'data',
  title: 'Unlike all reference craft',
  severity: 'information',
  needs: { craft: 'build.craft' },
  when: (craft) => craft.said.reference?.value !== true && (consensusFor(craft)?.references.length ?? 0) >= enough,
  judge(_, craft) {
    return standings(craft)
      .filter(isOutside)
      .map(({ of, at, envelope, value, count, cells }) => {
        const on = cells === undefined ? '' : ` on ${cells}S`;
        const own = `${of.title} ${plain(value, 1)}${of.is === 'number' ? ` ${of.unit}` : ''}`;
        const theirs =
          envelope.is === 'term'
            ? `they have ${envelope.shares.map((share) => `${share.term} (${share.count})`).join(', ')}`
            : `they lie from ${plain(envelope.spread.least, 1)} to ${plain(envelope.spread.most, 1)}`;
        return {
          at,
          apart: of.title,
          message: `${own} is what none of ${count} references${on} has; ${theirs}. Look at it again, and keep it when it is meant.`,
        };
      });
  },
});

export const explanation = {
  why: 'What nobody flies may be new, or a slip of the pen.',
  remedy: 'Look at the value again; keep it when it is meant.',
  source: "the workspace's own reference builds, three or more of the class",
  bad: `
dryfit: build
name: Example
craft: freestyle-5
parts:
  motors:
    kv: «1300»
packs:
  main:
    cells: 6S
${[1750, 1800, 1850]
  .map(
    (kv) => `---
dryfit: build
name: Reference ${kv}
craft: freestyle-5
reference: yes
parts:
  motors:
    kv: ${kv}
packs:
  main:
    cells: 6S
`,
  )
  .join('')}`,
  good: `
dryfit: build
name: Example
craft: freestyle-5
parts:
  motors:
    kv: 1800
packs:
  main:
    cells: 6S
${[1750, 1800, 1850]
  .map(
    (kv) => `---
dryfit: build
name: Reference ${kv}
craft: freestyle-5
reference: yes
parts:
  motors:
    kv: ${kv}
packs:
  main:
    cells: 6S
`,
  )
  .join('')}`,
};
