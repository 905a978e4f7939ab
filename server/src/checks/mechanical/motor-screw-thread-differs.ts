/** The screws at hand have another thread than the motor, or don't pass the holes of the arm. */
import { motorFit } from '../../plan/mounts';
import { check } from '../check';

export default check({
  id: 'motor-screw-thread-differs',
  group: 'mechanical',
  title: 'Motor screws of another thread',
  severity: 'error',
  needs: { screws: 'worked.motor-screw', motor: 'motors.mount' },
  may: { arms: 'frame.motor-mounts' },
  when: (craft) => craft.roles.motors?.mount?.value.screw !== undefined,
  judge({ screws, motor, arms }) {
    const wanted = motor.value.screw!;
    const given = screws.value.thread;
    if (given !== wanted)
      return {
        at: screws,
        with: [{ fact: motor, says: `the motor takes M${wanted}` }],
        message: `The motor takes M${wanted} screws; these are M${given}. Use M${wanted}x${screws.value.length * 1000} if the arm allows that length.`,
      };
    const arm = arms?.items.find((one) => motorFit(motor.value, one.value) === 'same' && one.value.screw !== undefined);
    if (arm?.value.screw !== undefined && arm.value.screw < given)
      return {
        at: motor,
        with: [{ fact: arm, says: `the arm is drilled for M${arm.value.screw}` }],
        message: `The motor is held by M${given} screws; the arm is drilled for M${arm.value.screw}, so they do not pass. Use a motor with M${arm.value.screw}, or other arms.`,
      };
    return undefined;
  },
});

export const explanation = {
  why: 'A screw of another thread either falls through or strips the motor.',
  remedy: 'Take screws with the thread of the motor, four for each (three on a 6.6 mm circle).',
  source: 'ISO 261 metric threads; common practice for which motor takes which',
  bad: `
dryfit: build
name: Screws of the frame kit
parts:
  motors:
    mount: 12x12 M2
    screws: «M3x8 button»
`,
  good: `
dryfit: build
name: Right thread
parts:
  motors:
    mount: 12x12 M2
    screws: M2x8 button
`,
};
