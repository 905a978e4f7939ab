/** How far the radio control and the picture reach at most: free space only, and only where the receiver's sensitivity is said. Knows no law and no ground. */
import type { Craft } from '../build/craft';
import { dBmOfWatts, eirp, freeSpaceRange, type Polarisation, polarisationLoss } from '../physics';
import { bandMiddle } from './link-bands';
import { channelOf } from './video-channels';

export interface Reach {
  readonly link: 'control' | 'video';
  /** m with the antennas as they lie best, an upper bound. */
  readonly most: number;
  /** m with the antennas as they lie worst while the craft rolls and yaws, still in free space. */
  readonly least: number;
  /** dB lost by polarisation at best and at worst. */
  readonly loss: readonly [least: number, most: number];
  /** What was taken for granted, by the field that would say it. */
  readonly assumed: readonly string[];
}

/** dBi of a plain wire antenna. */
const PLAIN_GAIN = 2;
/** A good circular antenna in its best direction. From memory. */
const USUAL_AXIAL_RATIO = 1.5; // dB
/** A craft that flies rarely turns a straight antenna farther from the other one than this. Common practice. */
const USUAL_TILT = Math.PI / 3;

/** From the radio in the hands to the receiver on the craft. */
export function controlReach(craft: Craft): Reach | undefined {
  const { receiver, 'receiver-antenna': antenna } = craft.roles;
  const radio = craft.bench?.radio;
  if (!receiver?.sensitivity || !radio?.power) return undefined;
  const own = receiver.band?.items.map(({ value }) => value);
  const band =
    radio.band?.items.map(({ value }) => value).find((one) => own === undefined || own.includes(one)) ?? own?.[0];
  if (!band) return undefined;
  const assumed = [...(radio.gain ? [] : ['bench.radio.gain']), ...(antenna?.gain ? [] : ['receiver-antenna.gain'])];
  const straight = (tilt: number): Polarisation => ({ kind: 'linear', tilt });
  const least = polarisationLoss(straight(0), straight(0));
  const most = polarisationLoss(straight(0), straight(USUAL_TILT));
  const power = eirp(dBmOfWatts(radio.power.value), radio.gain?.value ?? PLAIN_GAIN);
  const range = (loss: number): number =>
    freeSpaceRange(bandMiddle(band), power, antenna?.gain?.value ?? PLAIN_GAIN, receiver.sensitivity!.value, loss);
  return { link: 'control', most: range(least), least: range(most), loss: [least, most], assumed };
}

/** From the video transmitter to the goggles. */
export function videoReach(craft: Craft): Reach | undefined {
  const { 'video-transmitter': video, 'video-antenna': antenna } = craft.roles;
  const goggles = craft.bench?.goggles;
  if (!goggles?.sensitivity || !video?.level || !video.channel) return undefined;
  const channel = channelOf(video.channel.value);
  if (channel.is !== 'known') return undefined;
  const assumed = [
    ...(antenna?.gain ? [] : ['video-antenna.gain']),
    ...(goggles.gain ? [] : ['bench.goggles.gain']),
    ...(antenna?.polarisation ? [] : ['video-antenna.polarisation']),
    ...(goggles.polarisation ? [] : ['bench.goggles.polarisation']),
  ];
  const mine = antenna?.polarisation?.value ?? 'RHCP';
  const theirs = goggles.polarisation?.items.map(({ value }) => value) ?? [mine];
  const wave = (said: 'RHCP' | 'LHCP' | 'linear', axialRatio: number, tilt: number): Polarisation =>
    said === 'linear'
      ? { kind: 'linear', tilt }
      : { kind: 'circular', hand: said === 'RHCP' ? 'right' : 'left', axialRatioDB: axialRatio };
  const sent = wave(mine, antenna?.['axial-ratio']?.value ?? USUAL_AXIAL_RATIO, 0);
  // Goggles with several antennas listen with the one that hears best.
  const loss = (alignment: 'largest' | 'smallest', tilt: number): number =>
    Math.min(...theirs.map((one) => polarisationLoss(sent, wave(one, USUAL_AXIAL_RATIO, tilt), alignment)));
  const [least, most] = [loss('smallest', 0), loss('largest', USUAL_TILT)];
  const power = eirp(dBmOfWatts(video.level.value), antenna?.gain?.value ?? PLAIN_GAIN);
  const range = (lost: number): number =>
    freeSpaceRange(channel.megahertz * 1e6, power, goggles.gain?.value ?? PLAIN_GAIN, goggles.sensitivity!.value, lost);
  return { link: 'video', most: range(least), least: range(most), loss: [least, most], assumed };
}
