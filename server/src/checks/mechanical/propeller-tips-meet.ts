/** Neighbouring propellers come too close to one another, by where the motors are. */
import { fallsShort } from '../beyond';
import { check } from '../check';
import { apart, inches, millimetres } from '../words';

export default check({
  id: 'propeller-tips-meet',
  group: 'mechanical',
  title: 'Propellers reach into one another',
  severity: 'error',
  danger: 'blades',
  needs: { gap: 'worked.propeller-gap', size: 'propellers.size' },
  judge({ gap, size }) {
    const { gap: room, axes, assumed, rests } = gap.value;
    if (!fallsShort(room, 6e-3)) return undefined;
    const touching = fallsShort(room, 2e-3);
    const name = size.value.diameter < 0.051 ? millimetres : inches;
    const [flown, most] = apart(name, size.value.diameter, axes - 6e-3);
    const ground = assumed ? ' The frame does not say its geometry; a true X was taken.' : '';
    return {
      at: size,
      with: [{ fact: rests, says: `neighbouring motors are ${millimetres(axes)} apart` }],
      severity: touching && !assumed ? 'error' : 'warning',
      danger: touching ? 'blades' : undefined,
      message: `${room < 0 ? `Two ${flown} propellers overlap by ${millimetres(-room)}` : `Between two ${flown} propellers remain ${millimetres(room)}`}: neighbouring motors are ${millimetres(axes)} apart.${ground} ${touching ? 'They strike one another.' : 'Arms flex by that much.'} Use propellers of at most ${most}, or a larger frame.`,
    };
  },
});

export const explanation = {
  why: 'Arms flex by a few millimetres in every punch; tips that meet break at full speed.',
  remedy: 'Take smaller propellers or a larger frame.',
  source:
    'geometry: neighbouring motors of a true X are the diagonal divided by the square root of two apart; gaps of 2 and 6 mm: common practice',
  bad: `
dryfit: build
name: Overlapping by a hair
parts:
  frame:
    wheelbase: 183 mm
    geometry: x
  propellers:
    size: «5.1x3.6x3»
`,
  good: `
dryfit: build
name: Room between the tips
parts:
  frame:
    wheelbase: 200 mm
    geometry: x
  propellers:
    size: 5.1x3.6x3
`,
};
