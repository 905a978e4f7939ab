/** The receiver hears another radio link than the radio sends. */
import { check } from '../check';
import { sameFamily } from '../families';

export default check({
  id: 'link-family-differs',
  group: 'radio',
  title: 'Receiver and radio speak different links',
  severity: 'error',
  needs: { receiver: 'receiver.link', radio: 'bench.radio.link' },
  judge({ receiver, radio }) {
    if (radio.items.some((item) => sameFamily(item.value, receiver.value))) return undefined;
    return {
      with: [{ fact: radio, says: `the radio sends ${radio.text}` }],
      message: `The receiver hears ${receiver.text}; your radio sends ${radio.text}. They will not bind. Use a receiver for ${radio.text}, or add a module to the radio.`,
    };
  },
});

export const explanation = {
  why: 'Receivers bind only to their own family of link.',
  remedy: 'Take a receiver of a family your radio sends, or a module for the radio.',
  source: 'common practice: the family is a word of your own files, the same on both ends',
  bad: `
dryfit: build
name: Another link
parts:
  receiver:
    link: «farlink»
---
dryfit: bench
radio:
  link: openlink
`,
  good: `
dryfit: build
name: Same link
parts:
  receiver:
    link: openlink
---
dryfit: bench
radio:
  link: farlink, openlink
`,
};
