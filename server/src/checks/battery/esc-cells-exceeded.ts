/** More cells, or more volts, than the ESC is rated for. */
import { exceeds } from '../beyond';
import { check } from '../check';
import { apart, cellsOf, volts } from '../words';

export default check({
  id: 'esc-cells-exceeded',
  group: 'battery',
  title: 'Pack has more cells than the ESC takes',
  severity: 'error',
  danger: 'fire',
  needs: { cells: 'pack.cells', rating: 'esc.cells' },
  may: { full: 'worked.pack-full-voltage', limit: 'esc.voltage-limit', chemistry: 'pack.chemistry' },
  judge({ cells, rating, full, limit, chemistry }) {
    const fullVoltage = full?.value ?? cells.value.series * 4.2;
    const says = [{ fact: rating, says: `the ESC is rated ${rating.text}` }];
    if (cells.value.series > rating.value.most)
      return {
        at: cells,
        with: says,
        message: `The ESC is rated for ${cellsOf(rating.value.most)}; this pack is ${cellsOf(cells.value.series)}, ${volts(fullVoltage)} full. It will fail at plug-in. Use an ESC rated for ${cellsOf(cells.value.series)}, or a ${cellsOf(rating.value.most)} pack.`,
      };
    if (limit && exceeds(fullVoltage, limit.value)) {
      const [charged, stands] = apart(volts, fullVoltage, limit.value);
      return {
        at: cells,
        with: [{ fact: limit, says: `the ESC stands ${limit.text}` }],
        message: `The full pack has ${charged}; the ESC stands at most ${stands}. Use an ESC with a higher limit, or a pack with a lower full voltage.`,
      };
    }
    if (!limit && chemistry?.value === 'LiHV' && cells.value.series === rating.value.most && cells.value.series > 1)
      return {
        at: chemistry,
        with: says,
        severity: 'warning',
        danger: undefined,
        message: `The ESC is rated for ${cellsOf(rating.value.most)}, which promises ${volts(rating.value.most * 4.2)}; this high-voltage pack has ${volts(fullVoltage)} full. Look for the limit in volts and write it as \`voltage-limit\`, or charge to 4.20 V a cell.`,
      };
    if (cells.value.series < rating.value.least)
      return {
        at: cells,
        with: says,
        severity: 'warning',
        danger: undefined,
        message: `The ESC starts at ${cellsOf(rating.value.least)}; this pack is ${cellsOf(cells.value.series)}. It may not start or may cut out. Use a pack of ${cellsOf(rating.value.least)}, or another ESC.`,
      };
    return undefined;
  },
});

export const explanation = {
  why: 'The transistors and the capacitors of an ESC fail at the first plug-in above their voltage, often with flame.',
  remedy: 'Take an ESC rated for the pack, or a pack with fewer cells and motors of higher Kv.',
  source: 'common practice: full voltage is 4.20 V a cell for LiPo and Li-ion, 4.35 V for high-voltage LiPo',
  bad: `
dryfit: build
name: Too many cells
parts:
  esc:
    cells: 3S-4S
packs:
  main:
    cells: «6S»
    chemistry: LiPo
`,
  good: `
dryfit: build
name: Right cells
parts:
  esc:
    cells: 3S-6S
packs:
  main:
    cells: 6S
    chemistry: LiPo
`,
};
