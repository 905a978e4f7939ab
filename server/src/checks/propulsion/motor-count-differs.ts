/** There are more or fewer motors than the frame carries. */
import { check } from '../check';
import { write } from '../edit';

export default check({
  id: 'motor-count-differs',
  group: 'propulsion',
  title: 'Number of motors does not fit the craft',
  severity: 'error',
  needs: { count: 'motors.count' },
  may: { arms: 'frame.motors', geometry: 'frame.geometry' },
  when: (craft) => craft.roles.frame?.motors !== undefined || craft.roles.frame?.geometry !== undefined,
  judge({ count, arms, geometry }) {
    const frame = arms ?? geometry;
    const carried = arms?.value ?? (geometry?.value === 'hexa' ? 6 : geometry?.value === 'octo' ? 8 : 4);
    if (!frame || carried === count.value) return undefined;
    return {
      at: count,
      with: [{ fact: frame, says: `the frame carries ${carried}` }],
      message: `${count.value} motors for a frame that carries ${carried}. Write \`count: ${carried}\`; spares have a line of their own (\`spares\`).`,
      fixes: [write(count, String(carried))],
    };
  },
});

export const explanation = {
  why: 'A craft with a motor missing does not fly.',
  remedy: 'Count again: motors and arms have to agree.',
  source: 'counting of motors and arms',
  bad: `
dryfit: build
name: Example
parts:
  frame:
    geometry: x
  motors:
    count: «3»
`,
  good: `
dryfit: build
name: Example
parts:
  frame:
    geometry: hexa
  motors:
    count: 6
`,
};
