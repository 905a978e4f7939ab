/** Receiver and radio run different major versions of the link's firmware. */

import { check } from '../check';
import { sameFamily } from '../families';

export default check({
  id: 'link-firmware-differs',
  group: 'radio',
  title: 'Link firmware of different major versions',
  severity: 'warning',
  needs: { receiver: 'receiver.firmware-major', radio: 'bench.radio.firmware-major' },
  may: { link: 'receiver.link', links: 'bench.radio.link' },
  judge({ receiver, radio, link, links }) {
    if (receiver.value === radio.value) return undefined;
    // Of a radio with several links the version belongs to one of them, and which is not said.
    if (links && (links.items.length > 1 || (link && !links.items.some((item) => sameFamily(item.value, link.value)))))
      return undefined;
    return {
      with: [{ fact: radio, says: `the radio runs version ${radio.value}` }],
      message: `The receiver runs version ${receiver.value} of the link, your radio version ${radio.value}. They will not bind. Flash both to the same major version.`,
    };
  },
});

export const explanation = {
  why: 'Open links bind only when the major versions are the same.',
  remedy: 'Flash both ends to the same major version.',
  source: 'common practice',
  bad: `
dryfit: build
name: Example
parts:
  receiver:
    firmware-major: «2»
---
dryfit: bench
radio:
  firmware-major: 3
`,
  good: `
dryfit: build
name: Example
parts:
  receiver:
    firmware-major: 3
---
dryfit: bench
radio:
  firmware-major: 3
`,
};
