/** The receiver speaks only protocols that flight controllers have no input for. */

import { check } from '../check';

export default check({
  id: 'receiver-protocol-unusable',
  group: 'radio',
  title: 'Flight controller has no input for this receiver',
  severity: 'error',
  needs: { protocols: 'receiver.protocols' },
  may: { chosen: 'receiver.protocol' },
  judge({ protocols, chosen }) {
    const able = chosen ? [chosen.value] : protocols.items.map((item) => item.value);
    if (able.some((protocol) => protocol !== 'PWM' && protocol !== 'PPM')) return undefined;
    const only = able.includes('PPM') ? 'PPM' : 'PWM';
    return {
      at: chosen ?? protocols,
      severity: only === 'PPM' ? 'warning' : 'error',
      message:
        only === 'PWM'
          ? 'This receiver has one wire for each channel; a flight controller has no inputs for that. Use one with CRSF, SBUS or another serial protocol.'
          : 'This receiver sends all channels on one pulse wire; current firmware hardly supports that. Use one with CRSF, SBUS or another serial protocol.',
    };
  },
});

export const explanation = {
  why: 'One wire a channel, or all channels on one pulse wire, is of the time before serial receivers.',
  remedy: 'Take a receiver with a serial protocol, CRSF or SBUS.',
  source: 'receiver documentation of widely used open flight firmware',
  bad: `
dryfit: build
name: Example
parts:
  receiver:
    protocols: «PWM»
`,
  good: `
dryfit: build
name: Example
parts:
  receiver:
    protocols: PWM, SBUS
`,
};
