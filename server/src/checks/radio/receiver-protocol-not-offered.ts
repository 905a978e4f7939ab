/** The protocol to be used is not among those the receiver speaks. */

import { check } from '../check';
import { write } from '../edit';

export default check({
  id: 'receiver-protocol-not-offered',
  group: 'radio',
  title: 'Protocol that the receiver does not speak',
  severity: 'error',
  needs: { chosen: 'receiver.protocol', protocols: 'receiver.protocols' },
  when: (craft) => craft.roles.receiver?.protocol !== undefined,
  judge({ chosen, protocols }) {
    if (protocols.items.some((item) => item.value === chosen.value)) return undefined;
    return {
      with: [{ fact: protocols, says: `it speaks ${protocols.text}` }],
      message: `The receiver speaks ${protocols.text}; ${chosen.text} is not among them. Choose one of those.`,
      fixes: protocols.items.slice(0, 3).map((item) => write(chosen, item.value)),
    };
  },
});

export const explanation = {
  why: 'Flight controller and receiver never understand one another.',
  remedy: "Choose one of the receiver's protocols.",
  source: "the maker's list of protocols",
  bad: `
dryfit: build
name: Example
parts:
  receiver:
    protocol: «SBUS»
    protocols: CRSF
`,
  good: `
dryfit: build
name: Example
parts:
  receiver:
    protocol: CRSF
    protocols: CRSF, SBUS
`,
};
