/** What each device of a craft needs of a serial port: directions, inversion, speed. Assigns nothing. */
import type { Craft } from '../build/craft';
import type { Fact, Pointable } from '../build/fact';

export type SerialDevice = 'receiver' | 'video-transmitter' | 'gps' | 'remote-id' | 'esc';

export interface SerialNeed {
  readonly device: SerialDevice;
  /** How the device is spoken of. */
  readonly words: string;
  /** Pads of the flight controller that it needs. */
  readonly rx: boolean;
  readonly tx: boolean;
  readonly inverted: boolean;
  /** Slow enough, and of a kind that firmware allows, for a software serial port. */
  readonly softWillDo: boolean;
  readonly baud: number;
  readonly protocol: string;
  /** The fact that makes it so. */
  readonly because: Pointable;
  readonly said: Fact<{ readonly is: 'uart' | 'soft'; readonly number: number }> | undefined;
}

interface Way {
  readonly rx: boolean;
  readonly tx: boolean;
  readonly inverted: boolean;
  readonly baud: number;
}

/** Ways of serial receivers. Baud, directions and inversion: receiver drivers of widely used open flight firmware; inversion of FPort and SPort from memory. */
export const receiverWays: Readonly<Record<string, Way>> = {
  CRSF: { rx: true, tx: true, inverted: false, baud: 420_000 },
  GHST: { rx: false, tx: true, inverted: false, baud: 420_000 },
  SBUS: { rx: true, tx: false, inverted: true, baud: 100_000 },
  IBUS: { rx: true, tx: false, inverted: false, baud: 115_200 },
  DSM: { rx: true, tx: false, inverted: false, baud: 115_200 },
  SRXL2: { rx: false, tx: true, inverted: false, baud: 115_200 },
  SUMD: { rx: true, tx: false, inverted: false, baud: 115_200 },
  FPort: { rx: false, tx: true, inverted: true, baud: 115_200 },
  MAVLink: { rx: true, tx: true, inverted: false, baud: 460_800 },
};

export function serialNeeds(craft: Craft): readonly SerialNeed[] {
  const { receiver, gps, 'video-transmitter': video, 'remote-id': beacon } = craft.roles;
  const wiring = craft.said.wiring?.entries;
  const said = (device: SerialDevice): SerialNeed['said'] => wiring?.get(device)?.serial;
  const needs: SerialNeed[] = [];
  const protocol = receiver?.protocol ?? receiver?.protocols?.items[0];
  const way = protocol && receiverWays[protocol.value];
  // What sits on an all-in-one board is joined to it by the board's own tracks.
  const outside = (role: 'receiver' | 'video-transmitter'): boolean => craft.said.parts?.[role] !== undefined;
  if (protocol && way && outside('receiver')) {
    const inverted = way.inverted && receiver?.['plain-pad']?.value !== true;
    needs.push({
      device: 'receiver',
      words: `the receiver (${protocol.value})`,
      ...way,
      inverted,
      softWillDo: false,
      protocol: protocol.value,
      because: protocol,
      said: said('receiver'),
    });
  }
  const system = video?.system;
  const control = video?.control;
  const digital = system !== undefined && system.value !== 'analog';
  const unit = outside('video-transmitter');
  if (unit && (control?.value === 'MSP' || (digital && control === undefined))) {
    const because = control ?? system!;
    needs.push({
      device: 'video-transmitter',
      words: 'the video transmitter (figures in the picture)',
      rx: true,
      tx: true,
      inverted: false,
      softWillDo: false,
      baud: 115_200,
      protocol: 'MSP',
      because,
      said: said('video-transmitter'),
    });
  } else if (unit && control && control.value !== 'button') {
    const baud = control.value === 'one-wire 4800' ? 4800 : 9600;
    needs.push({
      device: 'video-transmitter',
      words: 'the video transmitter (channel and power)',
      rx: false,
      tx: true,
      inverted: false,
      softWillDo: true,
      baud,
      protocol: control.value,
      because: control,
      said: said('video-transmitter'),
    });
  }
  const gpsProtocol = gps?.protocol;
  if (gpsProtocol) {
    const both = gpsProtocol.value === 'UBX';
    needs.push({
      device: 'gps',
      words: `the satellite receiver (${gpsProtocol.value})`,
      rx: true,
      tx: both,
      inverted: false,
      softWillDo: false,
      baud: gps.baud?.value ?? 57_600,
      protocol: gpsProtocol.value,
      because: gpsProtocol,
      said: said('gps'),
    });
  }
  const beaconSerial = beacon?.serial;
  if (beaconSerial?.value)
    needs.push({
      device: 'remote-id',
      words: 'the identification module',
      rx: true,
      tx: true,
      inverted: false,
      softWillDo: false,
      baud: 57_600,
      protocol: 'MAVLink',
      because: beaconSerial,
      said: said('remote-id'),
    });
  const telemetry = said('esc');
  if (telemetry)
    needs.push({
      device: 'esc',
      words: 'ESC telemetry',
      rx: true,
      tx: false,
      inverted: false,
      softWillDo: false,
      baud: 115_200,
      protocol: 'ESC telemetry',
      because: telemetry,
      said: telemetry,
    });
  return needs;
}
