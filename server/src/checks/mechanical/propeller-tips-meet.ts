/** Neighbouring propellers come too close to one another, by where the motors are. */
import { check } from '../check';
import { inches, millimetres } from '../words';

export default check({
  id: 'propeller-tips-meet',
  group: 'mechanical',
  title: 'Propellers reach into one another',
  severity: 'error',
  danger: 'blades',
  why: 'Arms flex by a few millimetres in every punch; tips that meet break at full speed.',
  remedy: 'Take smaller propellers or a larger frame.',
  source:
    'geometry: neighbouring motors of a true X are the diagonal divided by the square root of two apart; gaps of 2 and 6 mm: common practice',
  needs: { gap: 'worked.propeller-gap', size: 'propellers.size' },
  judge({ gap, size }) {
    const { gap: room, axes, assumed, rests } = gap.value;
    const least = Math.max(2e-3, 0);
    if (room >= 6e-3 - 1e-6) return undefined;
    const touching = room < least;
    const most = axes - 6e-3;
    const name = size.value.diameter < 0.051 ? millimetres : inches;
    const ground = assumed ? ' The frame does not say its geometry; a true X was taken.' : '';
    return {
      at: size,
      with: [{ fact: rests, says: `neighbouring motors are ${millimetres(axes)} apart` }],
      severity: touching && !assumed ? 'error' : 'warning',
      danger: touching ? 'blades' : undefined,
      message: `${room < 0 ? `Two ${name(size.value.diameter)} propellers overlap by ${millimetres(-room)}` : `Between two ${name(size.value.diameter)} propellers remain ${millimetres(room)}`}: neighbouring motors are ${millimetres(axes)} apart.${ground} ${room < 2e-3 ? 'They strike one another.' : 'Arms flex by that much.'} Use propellers of at most ${name(most)}, or a larger frame.`,
    };
  },
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
});
