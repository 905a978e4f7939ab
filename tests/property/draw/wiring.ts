/** Feeds each device of a drawn build from a supply that suits it and has enough left. A builder's ledger on paper; knows nothing of the checker's. */
import type { Branch } from '../tree';
import type { Rails } from './boards';
import type { Choices } from './choices';
import { isAnalog, type VideoWays } from './devices';
import type { Luck } from './luck';
import { volts } from './words';

export interface Feeds {
  /** The camera's supply as its maker prints it, chosen so that its feed suits. */
  readonly cameraSupply: string;
  readonly camera: string;
  readonly video: string;
  /** The video lead is plugged into the board's socket, whose first contact carries this. */
  readonly videoSocket: string | undefined;
  readonly filter: boolean;
}

export function feedsOf(luck: Luck, choices: Choices, rails: Rails, ways: VideoWays): Feeds {
  const { unit, full, empty } = choices;
  const high = rails.high && `${rails.high.volts}V`;
  const lowVolts = unit.most < 6;
  const enough = rails.high !== undefined && choices.level[1] < rails.high.volts * rails.high.amperes * 0.75;
  const onBattery = full <= unit.most && empty >= unit.least && !lowVolts;
  const video = lowVolts ? '5V' : high && enough && (!onBattery || luck.often(75)) ? high : 'battery';
  const analog = isAnalog(choices);
  const fromUnit = ways.cameraSupply && (!analog || luck.often(60));
  const camera = fromUnit ? 'video-transmitter 5V' : high && luck.often(25) ? high : '5V';
  const wide = camera === high && rails.high ? volts(4.5, rails.high.volts + 8) : undefined;
  return {
    cameraSupply:
      wide ?? luck.pick(choices.board === 'whoop' ? ['3.3 V - 5.5 V', '5 V'] : ['5 V', '4.5 V - 20 V', '5 V - 36 V']),
    camera,
    video,
    videoSocket: !analog && video === high && rails.high?.volts === 9 && luck.often(85) ? '9 V' : undefined,
    filter: analog && video === 'battery',
  };
}

/** Whether a unit that has no suitable supply on this craft was drawn. */
export const feedable = (choices: Choices, rails: Rails): boolean => {
  const { unit, full, empty, level } = choices;
  if (unit.most < 6) return true;
  if (rails.high && level[1] < rails.high.volts * rails.high.amperes * 0.75) return true;
  return full <= unit.most && empty >= unit.least;
};

export const socketOfBoard = (pinOne: string): Branch => ({
  series: 'SH 1.0',
  contacts: '6',
  'counted-from': 'marked pin',
  'seen-from': 'mating face',
  'pin-1-voltage': pinOne,
  pins: { '1': '9V', '2': 'GND', '3': 'TX', '4': 'RX', '5': 'GND', '6': 'SBUS' },
});
