/** The antennas of craft and goggles turn their waves differently. */
import { polarisationLoss } from '../../physics';
import { check } from '../check';

/** dB: how round the wave of an ordinary antenna is when nothing was said. Common practice. */
const usualAxialRatio = 1.5;

const hand = (polarisation: 'RHCP' | 'LHCP', axialRatioDB: number) => ({
  kind: 'circular' as const,
  hand: polarisation === 'RHCP' ? ('right' as const) : ('left' as const),
  axialRatioDB,
});

export default check({
  id: 'polarisation-differs',
  group: 'video',
  title: 'Polarisation of craft and goggles',
  severity: 'warning',
  needs: { craft: 'video-antenna.polarisation', goggles: 'bench.goggles.polarisation' },
  may: { round: 'video-antenna.axial-ratio' },
  judge({ craft, goggles, round }) {
    const worn = goggles.items.map((item) => item.value);
    if (worn.includes(craft.value)) return undefined;
    const other = worn[0]!;
    const says = [{ fact: goggles, says: `the goggles have ${goggles.text}` }];
    if (craft.value === 'linear' || other === 'linear')
      return {
        with: says,
        severity: 'information',
        message: `The craft's antenna is ${craft.value}, those of the goggles ${goggles.text}: about 3 dB less, which takes a third of the range. A matched pair gives it back.`,
      };
    const ratio = round?.value ?? usualAxialRatio;
    const least = polarisationLoss(hand(craft.value, ratio), hand(other, usualAxialRatio), 'smallest');
    const low = Math.round(Math.min(least, 20));
    return {
      with: says,
      message: `The craft's antenna is ${craft.value}, those of the goggles ${goggles.text}: opposite hands lose about ${low} dB or more, which leaves less than ${Math.ceil(100 / 10 ** (low / 20))} % of the range. Use ${other} on the craft, or ${craft.value} on the goggles.`,
    };
  },
});

export const explanation = {
  why: 'Antennas of opposite hand hardly hear one another, and the picture breaks up close by.',
  remedy: 'Use antennas of the same hand on the craft and on the goggles.',
  source: 'IEEE Std 145 terms; the loss follows from the axial ratios of both antennas',
  bad: `
dryfit: build
name: Left and right
parts:
  video-antenna:
    polarisation: «LHCP»
---
dryfit: bench
goggles:
  polarisation: RHCP
`,
  good: `
dryfit: build
name: One of two matches
parts:
  video-antenna:
    polarisation: LHCP
---
dryfit: bench
goggles:
  polarisation: RHCP, LHCP
`,
};
