/** The energy of the pack is above what airlines take without asking. */
import { packEnergy } from '../../plan/pack-energy';
import { exceeds } from '../beyond';
import { check } from '../check';
import { apart, wattHours } from '../words';

/** Wh that airlines take without asking, and when asked. */
const [free, most] = [100, 160];

export default check({
  id: 'pack-over-air-limit',
  group: 'battery',
  title: 'Pack and air travel',
  severity: 'information',
  needs: { cells: 'pack.cells', capacity: 'pack.capacity' },
  may: { printed: 'pack.energy', chemistry: 'pack.chemistry' },
  judge({ cells, capacity, printed, chemistry }) {
    const energy = printed ? printed.value / 3600 : packEnergy(cells.value, capacity.value, chemistry?.value);
    if (!exceeds(energy, free)) return undefined;
    const at = printed ?? capacity;
    const whence = printed ? '' : ' (the figure printed on the pack decides)';
    if (exceeds(energy, most))
      return {
        at,
        message: `This pack holds ${apart(wattHours, energy, most)[0]}${whence}; above 160 Wh it flies in no baggage. Send it by ground, or travel with smaller packs.`,
      };
    return {
      at,
      message: `This pack holds ${apart(wattHours, energy, free)[0]}${whence}; between 100 and 160 Wh airlines want to be asked and take two spares at most. Smaller packs travel freely.`,
    };
  },
});

export const explanation = {
  why: 'A pack above the limit is taken away at the airport.',
  remedy: 'Take smaller packs along, ask the airline, or send by ground.',
  source: 'US FAA pack safe and IATA passenger rules as reported: 100 Wh free, up to 160 Wh with approval, at most two',
  bad: `
dryfit: build
name: Example
packs:
  main:
    cells: 6S
    capacity: «4600 mAh»
    chemistry: LiPo
`,
  good: `
dryfit: build
name: Example
packs:
  main:
    cells: 6S
    capacity: 4500 mAh
    chemistry: LiPo
`,
};
