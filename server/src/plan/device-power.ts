/** What everything but the motors draws, for the flight time. The ledger of rails is worked out elsewhere. */
import type { Craft } from '../build/craft';

/** W; figures used when a device doesn't say: common practice. */
export function devicePower(craft: Craft): number {
  const { camera, 'video-transmitter': video, receiver, gps, lights, 'flight-controller': controller } = craft.roles;
  let power = 0;
  if (controller) power += 0.6;
  if (camera) power += camera.current ? camera.current.value * 5 : 0.8;
  if (video) power += video.draw?.value ?? usualVideoPower(video.system?.value, video.level?.value);
  if (receiver) power += 5 * (receiver.current?.value ?? 0.1);
  if (gps) power += 5 * (gps.current?.value ?? 0.05);
  if (lights)
    power += 5 * (lights.current?.value ?? (lights.leds?.value ?? 4) * (lights['current-each']?.value ?? 0.03));
  return power;
}

/** W. Analog: about 4 W and four times the radio power; digital about 14 W. Common practice. */
export const usualVideoPower = (system: string | undefined, level: number | undefined): number =>
  system === undefined || system === 'analog' ? 1.5 + 5 * (level ?? 0.2) : 10;
