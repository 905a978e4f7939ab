/** The card's answer to "how far does it reach?": upper bounds in free space, where the receiver's sensitivity is said. */
import type { Craft } from '../build/craft';
import { controlReach, type Reach, videoReach } from '../plan/link-reach';
import { type CardFigure, type CardGroup, ranged } from './card-figure';

export function reachGroup(craft: Craft): CardGroup {
  const reaches = [controlReach(craft), videoReach(craft)].filter((one): one is Reach => one !== undefined);
  const remarks =
    reaches.length > 0
      ? ['Upper bounds: free space, no ground, no trees, no other transmitters. Expect a fraction.']
      : [];
  for (const { link, loss, assumed } of reaches) {
    if (loss[0] > 3)
      remarks.push(
        `The ${link} link loses at least ${loss[0].toFixed(0)} dB because its antennas differ in polarisation.`,
      );
    if (assumed.length > 0)
      remarks.push(
        `For the ${link} link a usual value stands in for ${assumed.map((path) => `\`${path}\``).join(', ')}.`,
      );
  }
  return { question: 'How far does it reach?', figures: reaches.map(figure), remarks };
}

const figure = ({ link, least, most }: Reach): CardFigure =>
  ranged(
    `${link}-reach`,
    link === 'control' ? 'radio control, at most' : 'picture, at most',
    { value: most, low: least, high: most },
    'm',
    'modelled',
  );
