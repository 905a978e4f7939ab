/** A step-down rail needs more than the pack gives at landing. */
import { cellVoltage } from '../../plan/cell-voltage';
import { fallsShort } from '../beyond';
import { check } from '../check';
import { apart, volts } from '../words';

export default check({
  id: 'rail-drops-before-landing',
  group: 'power',
  title: 'Rail drops out before landing',
  severity: 'warning',
  needs: { cells: 'pack.cells', rails: 'worked.rails' },
  may: { chemistry: 'pack.chemistry', own: 'pack.landing-voltage' },
  judge({ cells, rails, chemistry, own }) {
    const landing = cells.value.series * (own?.value ?? cellVoltage(chemistry?.value).landing);
    return rails.value.ledgers.flatMap((ledger) => {
      if (
        ledger.boost ||
        ledger.draws.length === 0 ||
        !fallsShort(landing, ledger.volts + 1) ||
        cells.value.series === 1
      )
        return [];
      const [gives, needs] = apart(volts, landing, ledger.volts + 1);
      const devices = ledger.draws.map((draw) => draw.device.replaceAll('-', ' ')).join(' and ');
      return [
        {
          at: cells,
          with: [{ fact: rails, says: `the ${ledger.rail} rail feeds ${devices}` }],
          apart: ledger.rail,
          message: `At landing this pack gives ${gives}; the ${ledger.rail} rail needs about ${needs} and feeds ${devices}. It drops out in punches. Use a lower rail, one that can raise the voltage, or more cells.`,
        },
      ];
    });
  },
});

export const explanation = {
  why: 'A step-down regulator needs about a volt above its output; below that the video breaks up in every punch.',
  remedy: 'Use a lower rail, a regulator that can raise the voltage, or a pack with more cells.',
  source: 'design guidelines of widely used open flight firmware; the one volt is common practice',
  bad: `
dryfit: build
name: Example
parts:
  flight-controller:
    regulators:
      9V:
        current: 2 A
  video-transmitter:
    draw: 5 W
    supply: 7 V - 26 V
packs:
  main:
    cells: «3S»
`,
  good: `
dryfit: build
name: Example
parts:
  flight-controller:
    regulators:
      9V:
        current: 2 A
  video-transmitter:
    draw: 5 W
    supply: 7 V - 26 V
packs:
  main:
    cells: 4S
`,
};
