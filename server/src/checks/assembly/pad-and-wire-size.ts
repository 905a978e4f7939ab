/** The motors' own wires are thicker than even the battery pads of the ESC take. */

import { check } from '../check';

export default check({
  id: 'pad-and-wire-size',
  group: 'assembly',
  title: 'Motor wires too thick for the pads',
  severity: 'warning',
  needs: { wire: 'motors.wire', pads: 'esc.pads' },
  judge({ wire, pads }) {
    if (wire.value >= pads.value) return undefined;
    return {
      at: wire,
      with: [{ fact: pads, says: `its battery pads take up to ${pads.text}` }],
      message: `The motors come with ${wire.text} wires, and even the battery pads of this ESC take no more than ${pads.text}; its motor pads are no larger. Thick wire levers a small pad off. Take motors with thinner wires, or an ESC made for such motors.`,
    };
  },
});

export const explanation = {
  why: 'A wire that is wider than its pad hangs over, bridges to the next and levers the pad off.',
  remedy: 'Take motors with thinner wires, or an ESC made for such motors.',
  source: "common practice: an ESC's battery pads are its largest",
  bad: `
dryfit: build
name: Example
parts:
  motors:
    wire: «18 AWG»
  esc:
    pads: 20 AWG
`,
  good: `
dryfit: build
name: Example
parts:
  motors:
    wire: 20 AWG
  esc:
    pads: 20 AWG
`,
};
