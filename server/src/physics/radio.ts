/**
 * A radio link in free space: powers, loss, polarisation, and the farthest distance they allow. It must not know any
 * band plan or law; every range it gives is an upper bound, without ground, trees or noise.
 *
 * Sources: ITU-R P.525-4 (free-space loss); polarisation mismatch by the axial-ratio form of IEEE Std 145 terms.
 */

/** dBm of a power in W. Zero or less gives −300 dBm, below any real noise. */
export const dBmOfWatts = (watts: number): number => (watts > 1e-33 ? 10 * Math.log10(watts * 1000) : -300);

/** W of a power in dBm. */
export const wattsOfDBm = (dBm: number): number => 10 ** (dBm / 10) / 1000;

/** Equivalent isotropically radiated power in dBm. */
export const eirp = (transmitterDBm: number, antennaDBi: number, cableLossDB = 0): number =>
  transmitterDBm + antennaDBi - cableLossDB;

const SPEED_OF_LIGHT = 299_792_458; // m/s

/**
 * Free-space basic transmission loss in dB: 20 log(4πdf/c), the exact form (32.448 in MHz and km).
 * @param frequency Hz
 * @param distance m; closer than a wavelength over 4π counts as no loss
 */
export function freeSpaceLoss(frequency: number, distance: number): number {
  const ratio = (4 * Math.PI * distance * frequency) / SPEED_OF_LIGHT;
  return ratio > 1 ? 20 * Math.log10(ratio) : 0;
}

/** Sense of an antenna: `linear` carries no hand, its tilt is given apart. */
export type Polarisation =
  | { readonly kind: 'linear'; readonly tilt: number }
  | { readonly kind: 'circular'; readonly hand: 'left' | 'right'; readonly axialRatioDB: number };

const MAX_LOSS = 60; // dB; real antennas leak more than this

/**
 * Polarisation loss in dB between two antennas that face each other. The craft rolls and yaws, so two ellipses may meet
 * with their long axes crossed (`largest` loss) or aligned (`smallest`). A linear antenna is an ellipse of infinite
 * axial ratio; two linear ones use their tilt (rad) instead.
 */
export function polarisationLoss(
  a: Polarisation,
  b: Polarisation,
  alignment: 'largest' | 'smallest' = 'largest',
): number {
  if (a.kind === 'linear' && b.kind === 'linear') return lossOfFraction(Math.cos(a.tilt - b.tilt) ** 2);
  // Signed inverse axial ratio: +1 pure right, −1 pure left, 0 linear. Poincaré latitude is 2·atan of it.
  const latitude = (p: Polarisation): number =>
    p.kind === 'linear' ? 0 : 2 * Math.atan((p.hand === 'right' ? 1 : -1) / 10 ** (Math.max(0, p.axialRatioDB) / 20));
  const la = latitude(a);
  const lb = latitude(b);
  const longitude = alignment === 'largest' ? -1 : 1;
  const cosAngle = Math.sin(la) * Math.sin(lb) + longitude * Math.cos(la) * Math.cos(lb);
  return lossOfFraction((1 + cosAngle) / 2);
}

const lossOfFraction = (fraction: number): number =>
  fraction > 0 ? Math.min(MAX_LOSS, Math.max(0, -10 * Math.log10(fraction))) : MAX_LOSS;

/**
 * Distance in m at which a received power falls to the sensitivity in free space.
 * @param eirpDBm radiated power
 * @param receiverDBi gain of the receiving antenna
 * @param sensitivityDBm the receiver's, as its maker states it
 * @param lossDB polarisation and any other fixed loss and margin
 */
export function freeSpaceRange(
  frequency: number,
  eirpDBm: number,
  receiverDBi: number,
  sensitivityDBm: number,
  lossDB = 0,
): number {
  const budget = eirpDBm + receiverDBi - sensitivityDBm - lossDB;
  return frequency > 0 ? (10 ** (Math.min(budget, 400) / 20) * SPEED_OF_LIGHT) / (4 * Math.PI * frequency) : 0;
}
