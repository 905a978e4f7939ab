/** The receiver listens on another band than the radio sends on. */
import { check } from '../check';

export default check({
  id: 'link-band-differs',
  group: 'radio',
  title: 'Receiver and radio use different bands',
  severity: 'error',
  needs: { receiver: 'receiver.band', radio: 'bench.radio.band' },
  judge({ receiver, radio }) {
    const sent = radio.items.map((item) => item.value);
    if (receiver.items.some((item) => sent.includes(item.value))) return undefined;
    return {
      with: [{ fact: radio, says: `the radio sends on ${radio.text}` }],
      message: `The receiver works on ${receiver.text}; your radio sends on ${radio.text}. They never hear one another. Use a receiver for ${radio.text}.`,
    };
  },
});

export const explanation = {
  why: 'A receiver for one band hears nothing of another, even of the same family.',
  remedy: 'Take a receiver for the band of your radio.',
  source: 'common practice',
  bad: `
dryfit: build
name: Wrong band
parts:
  receiver:
    band: «868 MHz»
---
dryfit: bench
radio:
  band: 2.4 GHz
`,
  good: `
dryfit: build
name: Two bands
parts:
  receiver:
    band: 868 MHz, 2.4 GHz
---
dryfit: bench
radio:
  band: 2.4 GHz
`,
};
