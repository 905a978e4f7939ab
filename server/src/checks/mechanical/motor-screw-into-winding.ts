/** The screws go deeper into the motor than its thread and cut the winding. */
import { engagement, leastEngagement, lengthFor, usualDepth } from '../../plan/motor-screw';
import { exceeds } from '../beyond';
import { check } from '../check';
import { screwFix, screwName } from '../screw-words';
import { apart, millimetres } from '../words';

export default check({
  id: 'motor-screw-into-winding',
  group: 'mechanical',
  title: 'Motor screw reaches the winding',
  severity: 'error',
  danger: 'fire',
  needs: { screw: 'worked.motor-screw', arm: 'frame.arm-thickness' },
  may: { depth: 'motors.thread-depth', washer: 'motors.washer', soft: 'motors.soft-mount' },
  // Without a depth from the maker only M2 and M3 have a usual one.
  when: (craft) =>
    craft.roles.motors?.['thread-depth'] !== undefined ||
    usualDepth(craft.roles.motors?.mount?.value.screw ?? craft.roles.motors?.screws?.value.thread ?? 3) !== undefined,
  judge({ screw, arm, depth, washer, soft }) {
    const most = depth?.value ?? usualDepth(screw.value.thread);
    if (most === undefined) return undefined;
    const inside = engagement(screw.value.length, arm.value, washer?.value, soft?.value);
    if (!exceeds(inside, most)) return undefined;
    const [deep, there] = apart(millimetres, inside, most);
    const better = lengthFor(leastEngagement(screw.value.thread), most, arm.value, washer?.value, soft?.value);
    const way =
      better === undefined
        ? 'No length that is sold fits; take the next shorter one that still holds, or add washers.'
        : `Use ${screwName({ ...screw.value, length: better })}.`;
    return {
      at: screw,
      with: [
        { fact: arm, says: `the arm is ${millimetres(arm.value)} thick` },
        ...(depth ? [{ fact: depth, says: `the motor has ${millimetres(depth.value)} of thread` }] : []),
      ],
      severity: depth ? 'error' : 'warning',
      message: `${screwName(screw.value)} through ${millimetres(arm.value)} of arm goes ${deep} into the motor; ${depth ? `it has ${there} of thread` : `${there} of thread is usual, and the motor does not say (\`thread-depth\`)`}. It would cut the winding. ${way}`,
      fixes: better === undefined ? [] : screwFix(screw, better),
    };
  },
});

export const explanation = {
  why: 'A screw that is too long presses into the winding: the motor shorts to the frame, often only when it is hot, and takes the ESC with it.',
  remedy:
    'Take shorter screws or add washers, and before the first power-up measure that no screw has contact with a motor wire.',
  source: 'geometry; usual depth of thread, 2 mm for M2 and 4 mm for M3: common practice',
  bad: `
dryfit: build
name: Screw too long
parts:
  frame:
    arm-thickness: 5 mm
  motors:
    mount: 16x16 M3
    thread-depth: 4 mm
    screws: «M3x10 button»
`,
  good: `
dryfit: build
name: Screw at the limit
parts:
  frame:
    arm-thickness: 6 mm
  motors:
    mount: 16x16 M3
    thread-depth: 4 mm
    screws: M3x10 button
`,
};
