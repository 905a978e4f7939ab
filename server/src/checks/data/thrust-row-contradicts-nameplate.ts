/** A row of the thrust table is farther from what motor and propeller can do than motors of one name differ. */
import { standRows } from '../../plan/flight-input';
import { check } from '../check';
import { amperes, rotationSpeed, thrust } from '../stand-words';

const words = {
  current: { fact: 'current', say: amperes, of: 'draw' },
  thrust: { fact: 'thrust', say: thrust, of: 'give' },
  rpm: { fact: 'speed', say: rotationSpeed, of: 'turn' },
} as const;

export default check({
  id: 'thrust-row-contradicts-nameplate',
  group: 'data',
  title: 'Thrust-stand row contradicts the motor',
  severity: 'warning',
  needs: { figures: 'worked.pack-figures', table: 'motors.thrust-table' },
  when: (craft) => standRows(craft).length > 0,
  judge({ figures }, craft) {
    const rows = standRows(craft);
    return figures.value.notices.flatMap(({ code, details }) => {
      const row = code === 'row-contradicts-nameplate' ? rows[details.row as number] : undefined;
      const word = words[details.quantity as keyof typeof words];
      const fact = row && word && row[word.fact];
      if (!row || !fact) return [];
      const predicted = word.say(details.predicted as number);
      const more = (details.measured as number) > (details.predicted as number) ? 'more' : 'less';
      const used = details.used ? 'It still counts in the figures.' : 'It is too far off to count in the figures.';
      return [
        {
          at: fact,
          apart: `${details.row} ${details.quantity}`,
          message: `This row reads ${fact.text}; by stator, Kv and propeller such a motor would ${word.of} about ${predicted}${word.fact === 'thrust' ? ` at ${row.throttle?.text} and ${row.voltage?.text}` : ` at ${row.thrust?.text}`}. That is ${more} than motors of one name differ. ${used} Look at the reading, the propeller and the motor on the stand again.`,
        },
      ];
    });
  },
});

export const explanation = {
  why: 'Rows of a thrust stand outweigh the model in every figure, so a slipped digit or another motor spoils them all.',
  remedy: 'Look at the row again: the reading, the propeller, the voltage, the Kv of the motor on the stand.',
  source:
    'the model of this program, from nameplate alone; a reading beyond twice the typical range, which holds about four of five motors of one nameplate',
  bad: `
dryfit: build
name: Example
parts:
  motors:
    stator: 2207
    kv: 1850
    thrust-table:
      - propeller: 5.1x4.3x3
        voltage: 24 V
        thrust: 480 g
        current: «31 A»
  propellers:
    size: 5.1x4.3x3
packs:
  main:
    cells: 6S
    capacity: 1300 mAh
`,
  good: `
dryfit: build
name: Example
parts:
  motors:
    stator: 2207
    kv: 1850
    thrust-table:
      - propeller: 5.1x4.3x3
        voltage: 24 V
        thrust: 480 g
        current: 5.3 A
  propellers:
    size: 5.1x4.3x3
packs:
  main:
    cells: 6S
    capacity: 1300 mAh
`,
};
