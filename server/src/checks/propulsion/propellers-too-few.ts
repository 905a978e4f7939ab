/** There are fewer propellers than motors. */
import { motorCount } from '../../plan/weight';
import { check } from '../check';
import { write } from '../edit';

export default check({
  id: 'propellers-too-few',
  group: 'propulsion',
  title: 'Fewer propellers than motors',
  severity: 'error',
  needs: { count: 'propellers.count' },
  when: (craft) => craft.roles.propellers?.count !== undefined && craft.roles.motors !== undefined,
  judge({ count }, craft) {
    const motors = motorCount(craft);
    if (count.value >= motors) return undefined;
    return {
      message: `${count.value} propellers for ${motors} motors. Write \`count: ${motors}\`; spares have a line of their own (\`spares\`).`,
      fixes: [write(count, String(motors))],
    };
  },
});

export const explanation = {
  why: 'Every motor needs one.',
  remedy: 'Write as many as there are motors; spares have a line of their own.',
  source: 'counting of motors, arms and channels',
  bad: `
dryfit: build
name: Example
parts:
  motors:
    count: 4
  propellers:
    count: «2»
`,
  good: `
dryfit: build
name: Example
parts:
  motors:
    count: 4
  propellers:
    count: 4
    spares: 12
`,
};
