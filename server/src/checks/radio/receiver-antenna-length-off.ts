/** The length of the antenna's arm is not that of a quarter wave of its band. */
import { bandMiddle } from '../../plan/link-bands';
import { exceeds } from '../beyond';
import { check } from '../check';
import { millimetres } from '../words';

export default check({
  id: 'receiver-antenna-length-off',
  group: 'radio',
  title: 'Antenna arm is not a quarter wave',
  severity: 'information',
  needs: { arm: 'receiver-antenna.arm-length', band: 'receiver-antenna.band' },
  when: (craft) => craft.roles['receiver-antenna']?.['arm-length'] !== undefined,
  judge({ arm, band }) {
    const quarter = 299_792_458 / (4 * bandMiddle(band.value));
    if (!exceeds(Math.abs(arm.value / quarter - 1), 0.15)) return undefined;
    return {
      with: [{ fact: band, says: `a quarter wave of ${band.text} is ${millimetres(quarter)}` }],
      message: `An arm of ${millimetres(arm.value)}; a quarter wave of ${band.text} is ${millimetres(quarter)}. It hears less than it could. Replace it, or correct the length that is written.`,
    };
  },
});

export const explanation = {
  why: 'Cut or torn arms hear less without anybody noticing.',
  remedy: 'Replace an antenna whose arm is short; never lengthen it.',
  source:
    'a quarter wave is the speed of light divided by four times the frequency; jackets shorten it by a few percent, 15 % are too much: common practice',
  bad: `
dryfit: build
name: Example
parts:
  receiver-antenna:
    band: 868 MHz
    arm-length: «31 mm»
`,
  good: `
dryfit: build
name: Example
parts:
  receiver-antenna:
    band: 2.4 GHz
    arm-length: 30 mm
`,
};
