/** The screws reach too little thread in the motor. */
import { engagement, leastEngagement, lengthFor, poorEngagement, usualDepth } from '../../plan/motor-screw';
import { fallsShort } from '../beyond';
import { check } from '../check';
import { screwFix, screwName } from '../screw-words';
import { apart, millimetres } from '../words';

export default check({
  id: 'motor-screw-too-short',
  group: 'mechanical',
  title: 'Motor screw holds by too little thread',
  severity: 'warning',
  needs: { screw: 'worked.motor-screw', arm: 'frame.arm-thickness' },
  may: { depth: 'motors.thread-depth', washer: 'motors.washer', soft: 'motors.soft-mount' },
  judge({ screw, arm, depth, washer, soft }) {
    const { thread, length } = screw.value;
    const inside = engagement(length, arm.value, washer?.value, soft?.value);
    const least = leastEngagement(thread);
    if (!fallsShort(inside, least)) return undefined;
    const poor = fallsShort(inside, poorEngagement(thread));
    const [held, wanted] = apart(millimetres, inside, least);
    const most = depth?.value ?? usualDepth(thread);
    const better = most === undefined ? undefined : lengthFor(least, most, arm.value, washer?.value, soft?.value);
    const way =
      better === undefined
        ? most === undefined
          ? 'Use a longer one that stays clear of the winding.'
          : 'No length that is sold both holds and stays clear of the winding; take the next longer one with washers.'
        : `Use ${screwName({ ...screw.value, length: better })}.`;
    return {
      at: screw,
      with: [{ fact: arm, says: `the arm is ${millimetres(arm.value)} thick` }],
      severity: poor ? 'error' : 'warning',
      message:
        inside <= 0
          ? `${screwName(screw.value)} does not reach the motor through ${millimetres(arm.value)} of arm. ${way}`
          : `${screwName(screw.value)} through ${millimetres(arm.value)} of arm holds the motor by ${held} of thread; M${thread} wants ${wanted}. It works loose. ${way}`,
      fixes: better === undefined ? [] : screwFix(screw, better),
    };
  },
});

export const explanation = {
  why: 'A few turns of thread in aluminium work loose from vibration or strip in a crash.',
  remedy: 'Take the next length that still stays clear of the winding.',
  source: 'common practice: about 0.8 of the diameter in aluminium; 2.5 mm for M3, 1.5 mm for M2',
  bad: `
dryfit: build
name: Screw too short
parts:
  frame:
    arm-thickness: 6 mm
  motors:
    mount: 16x16 M3
    screws: «M3x8 button»
`,
  good: `
dryfit: build
name: Screw long enough
parts:
  frame:
    arm-thickness: 5.5 mm
  motors:
    mount: 16x16 M3
    screws: M3x8 button
`,
};
