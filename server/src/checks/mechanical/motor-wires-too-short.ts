/** The wires of the motors are shorter than the way along the arm to a board in the middle. */

import { fallsShort } from '../beyond';
import { check } from '../check';
import { apart, millimetres } from '../words';

export default check({
  id: 'motor-wires-too-short',
  group: 'mechanical',
  title: 'Motor wires do not reach the ESC',
  severity: 'information',
  needs: { wires: 'motors.wire-length', wheelbase: 'frame.wheelbase' },
  when: (craft) => craft.roles.esc !== undefined && craft.roles.esc.type?.value !== 'single',
  judge({ wires, wheelbase }) {
    const way = wheelbase.value / 2 - 25e-3;
    if (!fallsShort(wires.value, way)) return undefined;
    const [long, wanted] = apart(millimetres, wires.value, way);
    return {
      at: wires,
      with: [{ fact: wheelbase, says: `${millimetres(wheelbase.value)} between opposite motors` }],
      message: `The motor wires are ${long} long; from the motor to the board in the middle it is about ${wanted}. Lengthen them with the same gauge, or take motors with longer wires.`,
    };
  },
});

export const explanation = {
  why: 'Wires under tension break at the solder joint.',
  remedy: 'Lengthen them with the same gauge, or take motors with longer wires.',
  source: 'geometry: half the wheelbase less what the board reaches out, about 25 mm: common practice',
  bad: `
dryfit: build
name: Example
parts:
  frame:
    wheelbase: 295 mm
  motors:
    wire-length: «120 mm»
  esc:
    type: 4-in-1
`,
  good: `
dryfit: build
name: Example
parts:
  frame:
    wheelbase: 290 mm
  motors:
    wire-length: 120 mm
  esc:
    type: 4-in-1
`,
};
