/** The receiver's antenna is made for none of the bands of the receiver. */

import { check } from '../check';

export default check({
  id: 'receiver-antenna-off-band',
  group: 'radio',
  title: 'Receiver antenna is made for another band',
  severity: 'error',
  needs: { antenna: 'receiver-antenna.band', receiver: 'receiver.band' },
  judge({ antenna, receiver }) {
    const near = (band: string): string => (band === '868 MHz' || band === '915 MHz' ? '900' : band);
    if (receiver.items.some((item) => item.value === antenna.value)) return undefined;
    const close = receiver.items.some((item) => near(item.value) === near(antenna.value));
    return {
      with: [{ fact: receiver, says: `the receiver works on ${receiver.text}` }],
      severity: close ? 'information' : 'error',
      message: close
        ? `The antenna is made for ${antenna.text}, the receiver works on ${receiver.text}: near enough to work, a little range is lost. An antenna for the exact band is better.`
        : `The antenna is made for ${antenna.text}, the receiver works on ${receiver.text}. Most of the range is lost. Use an antenna for that band.`,
    };
  },
});

export const explanation = {
  why: 'An antenna for another band costs nine tenths of the range and more.',
  remedy: "Take an antenna for the receiver's band.",
  source: 'common practice',
  bad: `
dryfit: build
name: Example
parts:
  receiver:
    band: 868 MHz
  receiver-antenna:
    band: «2.4 GHz»
`,
  good: `
dryfit: build
name: Example
parts:
  receiver:
    band: 868 MHz, 2.4 GHz
  receiver-antenna:
    band: 2.4 GHz
`,
};
