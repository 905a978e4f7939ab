/** The pack that the figures are for is not one of the packs. */

import { check } from '../check';

export default check({
  id: 'flight-pack-unknown',
  group: 'data',
  title: 'Flight names a pack that is not there',
  severity: 'error',
  needs: { pack: 'flight.pack' },
  when: (craft) => craft.said.flight?.pack !== undefined,
  judge({ pack }, craft) {
    const names = craft.packs.map((one) => one.name);
    if (names.includes(pack.value)) return undefined;
    const fixes = names
      .slice(0, 3)
      .map((name) => ({ title: `Use \`${name}\``, edits: [{ file: pack.at.file, span: pack.at.span, text: name }] }));
    return {
      fixes,
      message:
        names.length > 0
          ? `There is no pack \`${pack.value}\`; this build has ${names.map((name) => `\`${name}\``).join(', ')}. Name one of them.`
          : `There is no pack \`${pack.value}\`: this build has no packs. Add it under \`packs\`.`,
    };
  },
});

export const explanation = {
  why: 'The figures would be for another pack than the reader thinks.',
  remedy: 'Name one of the packs.',
  source: 'the packs of the build',
  bad: `
dryfit: build
name: Example
packs:
  main:
    cells: 6S
flight:
  pack: «big»
`,
  good: `
dryfit: build
name: Example
packs:
  main:
    cells: 6S
flight:
  pack: main
`,
};
