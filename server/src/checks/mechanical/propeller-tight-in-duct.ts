/** The propeller touches its duct, or leaves so much air that the duct does nothing. */
import { exceeds, fallsShort } from '../beyond';
import { check } from '../check';
import { millimetres } from '../words';

export default check({
  id: 'propeller-tight-in-duct',
  group: 'mechanical',
  title: 'Propeller and duct',
  severity: 'error',
  needs: { size: 'propellers.size', duct: 'frame.duct-diameter' },
  when: (craft) =>
    craft.roles.frame?.['duct-diameter'] !== undefined || /^(whoop|ducted)-/.test(craft.said.craft?.value ?? ''),
  judge({ size, duct }) {
    const side = (duct.value - size.value.diameter) / 2;
    const base = { at: size, with: [{ fact: duct, says: `the duct is ${millimetres(duct.value)} wide inside` }] };
    const best = millimetres(duct.value - 2e-3);
    if (!exceeds(side, 0))
      return {
        ...base,
        danger: 'blades' as const,
        message: `The propeller is ${millimetres(size.value.diameter)} across, the duct ${millimetres(duct.value)}; it does not turn. Use a duct propeller of about ${best}.`,
      };
    if (fallsShort(side, 0.5e-3))
      return {
        ...base,
        severity: 'warning' as const,
        message: `There is ${millimetres(side, 1)} between propeller and duct on each side; it rubs as soon as the duct flexes. Use a duct propeller of about ${best}.`,
      };
    if (exceeds(side, 3e-3))
      return {
        ...base,
        severity: 'information' as const,
        message: `There is ${millimetres(side)} between propeller and duct on each side, so the duct costs weight and gives little. A duct propeller of about ${best} fills it.`,
      };
    return undefined;
  },
});

export const explanation = {
  why: 'Ducts are soft and go oval in the first crash; a propeller without room rubs, heats and stops the motor.',
  remedy: 'Take a propeller one to two and a half millimetres smaller than the duct.',
  source: 'geometry; half a millimetre a side at least and three at most: common practice',
  bad: `
dryfit: build
name: Propeller rubs
parts:
  frame:
    duct-diameter: 40.4 mm
  propellers:
    size: «40 mm, 3 blades»
`,
  good: `
dryfit: build
name: Just enough room
parts:
  frame:
    duct-diameter: 41 mm
  propellers:
    size: 40 mm, 3 blades
`,
};
