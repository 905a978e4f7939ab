/** The mean current that was logged is too small to keep the craft in the air. */
import { airAt, idealHoverPower } from '../../physics';
import { motorCount } from '../../plan/weight';
import { fallsShort } from '../beyond';
import { check } from '../check';
import { amperes, apart, watts } from '../words';

export default check({
  id: 'logged-current-impossible',
  group: 'propulsion',
  title: 'Logged current is less than physics allows',
  severity: 'warning',
  needs: {
    logged: 'flight.logged.current',
    weight: 'worked.pack-weight',
    size: 'propellers.size',
    full: 'worked.pack-full-voltage',
  },
  when: (craft) => craft.said.flight?.logged?.current !== undefined,
  judge({ logged, weight, size, full }, craft, pack) {
    if ((craft.said.flight?.pack?.value ?? craft.packs[0]?.name) !== pack?.name) return undefined;
    const motors = motorCount(craft);
    const thrust = (weight.value.ready.low * 9.80665) / motors;
    const density = airAt(craft.said.flight?.altitude?.value ?? 0).density;
    const least = motors * idealHoverPower(thrust, size.value.diameter, density);
    const taken = logged.value * full.value;
    if (!fallsShort(taken, least)) return undefined;
    const [has, wants] = apart(watts, taken, least);
    return {
      at: logged,
      with: [{ fact: size, says: 'with these propellers' }],
      message: `A mean of ${logged.text} is at most ${has}; to hold this weight with these propellers takes ${wants} even without any loss, ${apart(amperes, least / full.value, logged.value)[0]}. The current sensor reads too low, or the weight is wrong. Correct its scale by what is charged back.`,
    };
  },
});

export const explanation = {
  why: 'The figures are narrowed by the log; a wrong log makes them wrong.',
  remedy: "Check the current sensor's scale, or the weight.",
  source: 'momentum theory: the least power that holds a weight with these propellers',
  bad: `
dryfit: build
name: Example
parts:
  frame:
    weight: 300 g
  propellers:
    size: 5.1x4.3x3
packs:
  main:
    cells: 6S
    weight: 200 g
flight:
  logged:
    current: «1 A»
`,
  good: `
dryfit: build
name: Example
parts:
  frame:
    weight: 300 g
  propellers:
    size: 5.1x4.3x3
packs:
  main:
    cells: 6S
    weight: 200 g
flight:
  logged:
    current: 14 A
`,
};
