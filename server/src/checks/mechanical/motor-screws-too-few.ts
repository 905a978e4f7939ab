/** Fewer screws a motor than it has holes, or a bag of screws that does not reach for all motors. */
import { motorCount } from '../../plan/weight';
import { check } from '../check';
import { write } from '../edit';

export default check({
  id: 'motor-screws-too-few',
  group: 'mechanical',
  title: 'Too few motor screws',
  severity: 'warning',
  needs: { mount: 'motors.mount' },
  may: { each: 'motors.screws-each' },
  judge({ mount, each }, craft) {
    const holes = mount.value.is === 'circle' ? mount.value.holes : 4;
    if (each && each.value < holes)
      return {
        at: each,
        with: [{ fact: mount, says: `the motor has ${holes} holes` }],
        message: `${each.value} screws for a motor with ${holes} holes. It works loose. Use ${holes}.`,
        fixes: [write(each, String(holes))],
      };
    const motors = motorCount(craft);
    const bag = [...(craft.roles.fasteners?.entries.values() ?? [])].find(
      (one) => one.for?.value === 'motors' && one.screw && one.count,
    );
    const wanted = motors * Math.min(each?.value ?? holes, holes);
    if (!bag?.count || bag.count.value >= wanted) return undefined;
    return {
      at: bag.count,
      with: [{ fact: mount, says: `the motor has ${holes} holes` }],
      message: `${bag.count.value} screws for ${motors} motors; ${wanted} are needed. Add ${wanted - bag.count.value}.`,
      fixes: [write(bag.count, String(wanted))],
    };
  },
});

export const explanation = {
  why: 'A motor held by half of its screws works loose and takes the propeller into the arm.',
  remedy: 'Use a screw for every hole.',
  source: 'common practice: four for each motor, three on a 6.6 mm circle',
  bad: `
dryfit: build
name: Example
parts:
  motors:
    mount: 16x16 M3
    screws-each: «2»
`,
  good: `
dryfit: build
name: Example
parts:
  motors:
    mount: 3 holes on 6.6 mm M1.4
    screws-each: 3
`,
};
