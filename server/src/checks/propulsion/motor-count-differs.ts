/** There are more or fewer motors than the frame carries, or than the ESC drives. */
import type { Verdict } from '../check';
import { check } from '../check';
import { write } from '../edit';

export default check({
  id: 'motor-count-differs',
  group: 'propulsion',
  title: 'Number of motors does not fit the craft',
  severity: 'error',
  why: 'A craft with a motor missing does not fly.',
  remedy: 'Count again: motors, arms and ESC channels have to agree.',
  source: 'counting of motors, arms and channels',
  needs: { count: 'motors.count' },
  may: {
    arms: 'frame.motors',
    geometry: 'frame.geometry',
    channels: 'esc.channels',
    pieces: 'esc.count',
    type: 'esc.type',
  },
  judge({ count, arms, geometry, channels, pieces, type }) {
    const found: Verdict[] = [];
    const each = channels?.value ?? (type?.value === 'single' ? 1 : type?.value === '4-in-1' ? 4 : undefined);
    const driven =
      each === undefined ? undefined : each * (pieces?.value ?? (type?.value === 'single' ? count.value : 1));
    const carried =
      arms?.value ?? (geometry ? (geometry.value === 'hexa' ? 6 : geometry.value === 'octo' ? 8 : 4) : undefined);
    const frame = arms ?? geometry;
    if (carried !== undefined && frame && carried !== count.value)
      found.push({
        at: count,
        apart: 'frame',
        with: [{ fact: frame, says: `the frame carries ${carried}` }],
        message: `${count.value} motors for a frame that carries ${carried}. Write \`count: ${carried}\`; spares have a line of their own (\`spares\`).`,
        fixes: driven === undefined || driven >= carried ? [write(count, String(carried))] : [],
      });
    const esc = pieces ?? channels ?? type;
    if (driven !== undefined && esc && driven < count.value)
      found.push({
        at: esc,
        apart: 'esc',
        with: [{ fact: count, says: `${count.value} motors` }],
        message: `The ESC drives ${driven} motors, the craft has ${count.value}. Add another ESC, or use one with ${count.value} channels.`,
      });
    return found;
  },
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
  esc:
    type: single
    count: 6
`,
});
