/** The firmware guesses the number of cells from the voltage at plug-in and would guess wrong on a full pack. */
import { cellVoltage } from '../../plan/cell-voltage';
import { check } from '../check';
import { write } from '../edit';
import { cellsOf, volts } from '../words';

export default check({
  id: 'cell-count-misread',
  group: 'battery',
  title: 'Firmware counts the cells wrong',
  severity: 'warning',
  needs: { cells: 'pack.cells', chemistry: 'pack.chemistry' },
  may: { full: 'setup.cell-full', fixed: 'setup.cell-count' },
  judge({ cells, chemistry, full, fixed }, craft) {
    const { series } = cells.value;
    if (fixed) {
      if (fixed.value === 0 || fixed.value === series) return undefined;
      // One set number cannot be right for packs of several sizes.
      return {
        at: fixed,
        with: [{ fact: cells, says: `this pack is ${cellsOf(series)}` }],
        message: `The firmware is told ${cellsOf(fixed.value)}; this pack is ${cellsOf(series)}. Every voltage warning is wrong with it. Set ${cellsOf(series)}${craft.packs.length > 1 ? ', let the firmware count, or keep a profile for each pack' : ''}.`,
        fixes: craft.packs.length === 1 ? [write(fixed, String(series))] : [],
      };
    }
    const charged = series * cellVoltage(chemistry.value).full;
    const most = full?.value ?? 4.3;
    const guess = Math.floor(charged / most + 1e-9) + 1;
    if (guess === series) return undefined;
    return {
      at: full ?? chemistry,
      with: full ? [{ fact: chemistry, says: `${volts(charged)} full` }] : [],
      severity: full ? 'warning' : 'information',
      message: `A full pack has ${volts(charged)}; with ${volts(most)} as the highest cell voltage${full ? '' : ', which is usual,'} the firmware takes it for ${cellsOf(guess)}. Its warnings are wrong then. Set \`cell-count: ${series}\` under \`setup\`, or a highest cell voltage of 4.40 V (\`cell-full\`).`,
      // A higher limit would misread packs that are no longer full.
      fixes: full && Math.floor(charged / 4.4 + 1e-9) + 1 === series && full.value < 4.4 ? [write(full, '4.4 V')] : [],
    };
  },
});

export const explanation = {
  why: 'With a wrong number of cells every warning comes far too early or far too late.',
  remedy: 'Write the number of cells into the firmware, or raise its highest cell voltage to 4.40 V.',
  source:
    'widely used open flight firmware: cells are the voltage divided by the highest cell voltage, rounded down, plus one; 4.30 V by default',
  bad: `
dryfit: build
name: Example
packs:
  main:
    cells: 4S
    chemistry: «LiHV»
`,
  good: `
dryfit: build
name: Example
packs:
  main:
    cells: 4S
    chemistry: LiHV
setup:
  cell-full: 4.4 V
`,
};
