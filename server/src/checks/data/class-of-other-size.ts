/** The class that the build names flies propellers of another size. */
import { classDiameter } from '../../plan/class-sizes';
import { exceeds, fallsShort } from '../beyond';
import { check } from '../check';
import { inches, millimetres } from '../words';

export default check({
  id: 'class-of-other-size',
  group: 'data',
  title: 'Class of craft and propeller differ',
  severity: 'warning',
  needs: { craft: 'build.craft', size: 'propellers.size' },
  judge({ craft, size }) {
    const range = classDiameter(craft.value);
    const diameter = size.value.diameter;
    if (!range || (!fallsShort(diameter, range[0]) && !exceeds(diameter, range[1]))) return undefined;
    const name = diameter < 0.051 ? millimetres : inches;
    return {
      at: craft,
      with: [{ fact: size, says: `propellers of ${name(diameter)}` }],
      message: `${craft.text} flies propellers of ${name(range[0])} to ${name(range[1])}; these have ${name(diameter)}. Its targets would mislead. Name the class that fits, or leave the line out.`,
    };
  },
});

export const explanation = {
  why: 'Targets and habits are taken from the class; with the wrong one they mislead.',
  remedy: 'Name the class of the craft, or leave it out.',
  source: 'common practice',
  bad: `
dryfit: build
name: Example
craft: «freestyle-5»
parts:
  propellers:
    size: 7x4x2
`,
  good: `
dryfit: build
name: Example
craft: freestyle-5
parts:
  propellers:
    size: 5.1x4.3x3
`,
};
