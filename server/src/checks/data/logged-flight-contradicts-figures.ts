/** The logged flight is farther from what this craft can do than craft of one parts list differ. */
import { chosenPack } from '../../plan/weight';
import { check } from '../check';
import { amperes, throttle } from '../stand-words';

export default check({
  id: 'logged-flight-contradicts-figures',
  group: 'data',
  title: 'Logged flight contradicts the craft',
  severity: 'warning',
  needs: { figures: 'worked.pack-figures' },
  // The log is of a flight with the pack that the figures are for.
  when: (craft, pack) => craft.said.flight?.logged !== undefined && pack === chosenPack(craft),
  judge({ figures }, craft) {
    const log = craft.said.flight?.logged;
    return figures.value.notices.flatMap(({ code, details }) => {
      if (code !== 'log-contradicts-figures') return [];
      const mean = details.quantity === 'mean-current';
      const fact = mean ? (log?.used ?? log?.current) : log?.['hover-throttle'];
      if (!fact) return [];
      const say = mean ? amperes : throttle;
      const what = mean
        ? `${log?.used && log.minutes ? `${fact.text} in ${log.minutes.text} are ${say(details.measured as number)} on average` : `${fact.text} on average`}`
        : `${fact.text} of throttle while hovering`;
      const used = details.used ? 'It still counts in the figures.' : 'It is too far off to count in the figures.';
      return [
        {
          at: fact,
          apart: String(details.quantity),
          with: log?.used && log.minutes && mean ? [{ fact: log.minutes, says: 'over this time' }] : [],
          message: `${what}; for this craft, flown as the file says, about ${say(details.predicted as number)} are expected. Craft of one parts list differ less than that. ${used} Look at the log, the weight and how the flight is described.`,
        },
      ];
    });
  },
});

export const explanation = {
  why: 'The logged flight outweighs the model in flight time and current, so a slipped digit spoils them.',
  remedy: 'Look at the log again: minutes in the air, what was charged back, what the craft weighed then.',
  source:
    'the model of this program, from the parts alone; a reading beyond twice the typical range, which holds about four of five craft',
  bad: `
dryfit: build
name: Example
craft: freestyle-5
parts:
  motors:
    stator: 2207
    kv: 1850
  propellers:
    size: 5.1x4.3x3
packs:
  main:
    cells: 6S
    capacity: 1300 mAh
flight:
  logged:
    minutes: 14 min
    used: «400 mAh»
`,
  good: `
dryfit: build
name: Example
craft: freestyle-5
parts:
  motors:
    stator: 2207
    kv: 1850
  propellers:
    size: 5.1x4.3x3
packs:
  main:
    cells: 6S
    capacity: 1300 mAh
flight:
  logged:
    minutes: 4.5 min
    used: 1050 mAh
`,
};
