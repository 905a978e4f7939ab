/** The receiver's antenna is bought apart, and none is listed. */

import { check } from '../check';

export default check({
  id: 'receiver-antenna-missing',
  group: 'radio',
  title: 'Receiver without an antenna',
  severity: 'error',
  needs: { plug: 'receiver.antenna-plug', supplied: 'receiver.antenna-supplied' },
  when: (craft) =>
    craft.roles['receiver-antenna'] === undefined && craft.roles.receiver?.['antenna-plug']?.value !== 'soldered',
  judge({ plug, supplied }) {
    if (supplied.value) return undefined;
    return {
      at: supplied,
      with: [{ fact: plug, says: `it has ${plug.text}` }],
      message: `The receiver comes without antenna, and none is listed. The link would reach a few metres. Add a \`receiver-antenna\` with ${plug.text}.`,
    };
  },
});

export const explanation = {
  why: 'Without antenna the link reaches a few metres, and telemetry sends into the open.',
  remedy: 'Add an antenna with its plug.',
  source: 'common practice',
  bad: `
dryfit: build
name: Example
parts:
  receiver:
    antenna-plug: U.FL
    antenna-supplied: «no»
`,
  good: `
dryfit: build
name: Example
parts:
  receiver:
    antenna-plug: U.FL
    antenna-supplied: yes
`,
};
