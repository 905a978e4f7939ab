/** A satellite receiver starts at a speed at which losses were seen. */
import { check } from '../check';

export default check({
  id: 'gps-baud-lossy',
  group: 'signals',
  title: 'Satellite receiver at 115200 baud',
  severity: 'information',
  needs: { baud: 'gps.baud', protocol: 'gps.protocol' },
  judge({ baud, protocol }) {
    if (baud.value < 115_200) return undefined;
    return {
      at: baud,
      with: [{ fact: protocol, says: protocol.value }],
      message: `The satellite receiver talks at ${baud.value} baud; losses were seen at that speed. If positions come in gaps, try 57600.`,
    };
  },
});

export const explanation = {
  why: 'Losses of position data were seen at 115,200 baud.',
  remedy: 'Try 57,600 baud if positions come in gaps.',
  source: 'satellite receiver guide of widely used open flight firmware',
  bad: `
dryfit: build
name: Example
parts:
  gps:
    protocol: UBX
    baud: «115200»
`,
  good: `
dryfit: build
name: Example
parts:
  gps:
    protocol: UBX
    baud: 57600
`,
};
