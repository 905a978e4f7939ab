/** The regulators of the flight controller draw more through the cable than its contacts carry. */
import { cellVoltage } from '../../plan/cell-voltage';
import { joinsBoards } from '../../plan/craft-harness';
import { exceeds } from '../beyond';
import { check } from '../check';
import { amperes, apart, watts } from '../words';

export default check({
  id: 'harness-contact-overloaded',
  group: 'power',
  title: 'Battery contact of the cable overloaded',
  severity: 'warning',
  needs: { rails: 'worked.rails', harness: 'worked.harness', cells: 'pack.cells' },
  may: { chemistry: 'pack.chemistry', own: 'pack.landing-voltage', series: 'harness.series' },
  when: joinsBoards,
  judge({ rails, harness, cells, chemistry, own, series }) {
    const { reading } = harness.value;
    const joined = reading.pairs.filter((pair) => pair.from === 'VBAT' && pair.to === 'VBAT').length;
    if (joined === 0) return undefined;
    const each = series?.value === 'PH 2.0' ? 2 : 1;
    const landing = cells.value.series * (own?.value ?? cellVoltage(chemistry?.value).landing);
    const current = rails.value.watts / 0.85 / landing / joined;
    if (!exceeds(current, each)) return undefined;
    const [taken, made] = apart(amperes, current, each);
    return {
      at: harness.value.at,
      // The usual plug of eight carries every digital unit through one contact, a little above its rating.
      severity: exceeds(current, 1.5 * each) ? undefined : 'information',
      with: [{ fact: rails, says: `the rails are asked for ${watts(rails.value.watts)}` }],
      message: `The rails are asked for ${watts(rails.value.watts)}, which at landing is ${taken} through ${joined === 1 ? 'one contact' : `each of ${joined} contacts`} made for ${made}. Run a wire of its own to the flight controller, or use a plug with more battery contacts.`,
    };
  },
});

export const explanation = {
  why: 'One SH or GH contact carries 1 A; above that it gets hot and its spring lets go.',
  remedy:
    'Run a wire of its own from the battery pads to the flight controller, or use a plug with two battery contacts.',
  source: 'JST ratings as reported: 1 A for SH and GH, 2 A for PH; 85 % regulator efficiency is common practice',
  bad: `
dryfit: build
name: Example
parts:
  esc:
    type: 4-in-1
    controller-socket:
      counted-from: marked pin
      pins: { 1: VBAT, 2: GND, 3: M1 }
  flight-controller:
    regulators:
      9V: { current: 3 A }
    esc-socket:
      counted-from: marked pin
      pins: { 1: VBAT, 2: GND, 3: M1 }
  harness:
    type: «straight»
    series: SH 1.0
  video-transmitter:
    draw: 18 W
    supply: 7 V - 26 V
packs:
  main:
    cells: 4S
`,
  good: `
dryfit: build
name: Example
parts:
  esc:
    type: 4-in-1
    controller-socket:
      counted-from: marked pin
      pins: { 1: VBAT, 2: GND, 3: M1 }
  flight-controller:
    regulators:
      9V: { current: 3 A }
    esc-socket:
      counted-from: marked pin
      pins: { 1: VBAT, 2: GND, 3: M1 }
  harness:
    type: straight
    series: SH 1.0
  video-transmitter:
    draw: 9 W
    supply: 7 V - 26 V
packs:
  main:
    cells: 4S
`,
};
