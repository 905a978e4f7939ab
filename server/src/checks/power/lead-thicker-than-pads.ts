/** The battery wire is thicker than the ESC's battery pads are made for. */

import { check } from '../check';

export default check({
  id: 'lead-thicker-than-pads',
  group: 'power',
  title: 'Battery wire is thicker than the pads',
  severity: 'information',
  needs: { wire: 'battery-lead.wire', pads: 'esc.pads' },
  judge({ wire, pads }) {
    if (wire.value >= pads.value) return undefined;
    return {
      at: wire,
      with: [{ fact: pads, says: `the pads take up to ${pads.text}` }],
      message: `The lead is ${wire.text}, the battery pads of the ESC take up to ${pads.text}. A wire wider than its pad levers it off. Use ${pads.text}.`,
    };
  },
});

export const explanation = {
  why: 'A wire that is wider than its pad hangs over, and levers the pad off.',
  remedy: 'Use the gauge the pads take, or split the strands over both sides of the board.',
  source: 'common practice',
  bad: `
dryfit: build
name: Example
parts:
  esc:
    pads: 14 AWG
  battery-lead:
    wire: «12 AWG»
`,
  good: `
dryfit: build
name: Example
parts:
  esc:
    pads: 12 AWG
  battery-lead:
    wire: 12 AWG
`,
};
