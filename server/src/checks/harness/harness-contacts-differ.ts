/** The ESC socket and the flight controller socket have unequal numbers of contacts. */

import { joinsBoards } from '../../plan/craft-harness';
import { check } from '../check';

export default check({
  id: 'harness-contacts-differ',
  group: 'harness',
  title: 'Sockets have different numbers of contacts',
  severity: 'error',
  needs: { esc: 'worked.esc-contacts', controller: 'worked.controller-contacts' },
  may: { cable: 'harness.contacts' },
  // Wire by wire, or soldered, the numbers need not be equal.
  when: (craft) => joinsBoards(craft) && craft.roles.harness?.soldered?.value !== true && !craft.roles.harness?.wires,
  judge({ esc, controller, cable }) {
    const says = { fact: controller, says: `the flight controller has ${controller.value}` };
    if (esc.value !== controller.value) {
      const doubled =
        Math.max(esc.value, controller.value) === 10 && Math.min(esc.value, controller.value) === 8
          ? ' Ten contacts double battery and ground; with one of each the cable carries half.'
          : '';
      return {
        at: cable ?? esc,
        with: [...(cable ? [{ fact: esc, says: `the ESC has ${esc.value}` }] : []), says],
        message: `The ESC socket has ${esc.value} contacts, the flight controller ${controller.value}; no plug fits both.${doubled} Use a cable made for this pair and write its \`wires\`, or solder them.`,
      };
    }
    if (cable && cable.value !== esc.value)
      return {
        at: cable,
        with: [{ fact: esc, says: `the sockets have ${esc.value}` }],
        message: `The cable has ${cable.value} contacts, the sockets ${esc.value}. It does not fit. Use a cable with ${esc.value}.`,
      };
    return undefined;
  },
});

export const explanation = {
  why: 'A plug with more contacts does not go into a smaller socket, and one with fewer leaves it to chance which contacts meet.',
  remedy: 'Use a cable made for this pair, or solder the wires; insulate what is left over.',
  source: 'the open flight controller connector standard knows 8 and 10 contacts: as reported',
  bad: `
dryfit: build
name: Ten and eight
parts:
  esc:
    controller-socket:
      contacts: «10»
  flight-controller:
    esc-socket:
      contacts: 8
`,
  good: `
dryfit: build
name: Eight and eight
parts:
  esc:
    controller-socket:
      contacts: 8
  flight-controller:
    esc-socket:
      contacts: 8
  harness:
    contacts: 8
`,
};
