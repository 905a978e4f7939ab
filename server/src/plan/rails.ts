/** Supplies worked out: what each device takes from which rail, and what is left. Wiring in the file is kept; the rest goes where it fits. */
import type { Craft } from '../build/craft';
import type { Fact, Pointable } from '../build/fact';
import type { Rail } from '../text/notation/rail';
import type { SupplyRange } from '../text/notation/voltage-range';
import { usualVideoPower } from './device-power';
import { wiringOf } from './feeds';

export interface Draw {
  readonly device: string;
  /** A from the rail */
  readonly current: number;
  /** Whether the part says what it draws; otherwise a usual figure stands in. */
  readonly known: boolean;
  /** Whether the file says where it is fed from. */
  readonly said: boolean;
  /** What the current, or else the device itself, is said by. */
  readonly rests: Pointable | undefined;
}

export interface Ledger {
  /** `5V`, as the board calls it */
  readonly rail: string;
  readonly volts: number;
  /** A over all pads, when the board says it */
  readonly limit: Fact<number> | undefined;
  readonly boost: boolean;
  readonly onUsb: boolean | undefined;
  readonly draws: readonly Draw[];
  /** A */
  readonly sum: number;
}

export interface Rails {
  readonly ledgers: readonly Ledger[];
  /** Devices on the battery itself, with W instead of A. */
  readonly onBattery: readonly { readonly device: string; readonly watts: number }[];
  /** Devices that the file feeds from a rail which nobody gives. */
  readonly lost: readonly { readonly device: string; readonly said: Fact<Rail> }[];
  /** W from all regulators of the flight controller */
  readonly watts: number;
}

interface Device {
  readonly name: string;
  readonly supply: Fact<SupplyRange> | undefined;
  readonly current: Fact<number> | undefined;
  /** A at 5 V, or W for video, when the part doesn't say. Common practice. */
  readonly usual: number;
  readonly watts?: Fact<number>;
  readonly isVideo?: boolean;
  readonly rests: Pointable | undefined;
}

export function planRails(craft: Craft): Rails | undefined {
  const board = craft.roles['flight-controller'];
  if (!board?.regulators) return undefined;
  const rails = [...board.regulators.entries].flatMap(([name, facts]) => {
    const volts = facts.voltage?.value ?? Number.parseFloat(name);
    return Number.isFinite(volts) ? [{ name, volts, facts }] : [];
  });
  const placed = devices(craft).map((device) => ({ device, ...feed(craft, device, rails) }));
  const ledgers = rails.map(({ name, volts, facts }): Ledger => {
    const draws = placed
      .filter((one) => one.rail === name)
      .map((one) => drawOf(one.device, volts, one.said !== undefined));
    return {
      rail: name,
      volts,
      limit: facts.current,
      boost: facts.boost?.value === true,
      onUsb: facts['on-usb']?.value,
      draws,
      sum: draws.reduce((sum, draw) => sum + draw.current, 0),
    };
  });
  return {
    ledgers,
    onBattery: placed
      .filter((one) => one.rail === 'battery')
      .map(({ device }) => ({
        device: device.name,
        watts: device.watts?.value ?? device.usual * (device.isVideo ? 1 : 5),
      })),
    lost: placed.flatMap((one) =>
      one.rail === 'lost' && one.said ? [{ device: one.device.name, said: one.said }] : [],
    ),
    watts: ledgers.reduce((sum, ledger) => sum + ledger.sum * ledger.volts, 0),
  };
}

function drawOf(device: Device, volts: number, said: boolean): Draw {
  const { current, watts } = device;
  const amperes =
    current?.value ?? (watts ? watts.value / volts : device.isVideo ? device.usual / volts : device.usual);
  return {
    device: device.name,
    current: amperes,
    known: current !== undefined || watts !== undefined,
    said,
    rests: current ?? watts ?? device.rests,
  };
}

interface FedFrom {
  /** Name of a rail, `battery`, `elsewhere` (another device feeds it), `lost`, or nothing when it cannot be told. */
  readonly rail: string | undefined;
  readonly said: Fact<Rail> | undefined;
}

function feed(craft: Craft, device: Device, rails: readonly { name: string; volts: number }[]): FedFrom {
  const said = wiringOf(craft, device.name)?.power;
  if (said) {
    const { volts, of } = said.value;
    if (volts === undefined) return { rail: 'battery', said };
    if (of !== undefined && of !== 'flight-controller') return { rail: 'elsewhere', said };
    return { rail: rails.find((rail) => Math.abs(rail.volts - volts) < 0.05)?.name ?? 'lost', said };
  }
  // A digital camera hangs on the cable of its transmitter.
  if (device.name === 'camera' && craft.roles.camera?.system && craft.roles.camera.system.value !== 'analog')
    return { rail: 'elsewhere', said: undefined };
  const supply = device.supply?.value;
  const wanted = [...rails].sort((a, b) =>
    device.isVideo ? b.volts - a.volts : Math.abs(a.volts - 5) - Math.abs(b.volts - 5),
  );
  const fits = wanted.find((rail) =>
    supply
      ? rail.volts >= supply.least - 1e-6 && rail.volts <= supply.most + 1e-6
      : Math.abs(rail.volts - (device.isVideo ? 9 : 5)) < 1.1,
  );
  return { rail: fits?.name, said: undefined };
}

function devices(craft: Craft): readonly Device[] {
  const {
    camera,
    'video-transmitter': video,
    receiver,
    gps,
    buzzer,
    lights,
    'remote-id': beacon,
    'action-camera': recorder,
  } = craft.roles;
  const list: Device[] = [];
  if (camera)
    list.push({ name: 'camera', supply: camera.supply, current: camera.current, usual: 0.2, rests: camera.system });
  if (video)
    list.push({
      name: 'video-transmitter',
      supply: video.supply,
      current: undefined,
      watts: video.draw,
      usual: usualVideoPower(video.system?.value, video.level?.value),
      isVideo: true,
      rests: video.system,
    });
  if (receiver && !onBoard(craft, 'receiver'))
    list.push({
      name: 'receiver',
      supply: receiver.supply,
      current: receiver.current,
      usual: (receiver['telemetry-power']?.value ?? 0) >= 0.1 ? 0.25 : 0.1,
      rests: receiver.link,
    });
  if (gps) list.push({ name: 'gps', supply: gps.supply, current: gps.current, usual: 0.08, rests: gps.protocol });
  if (buzzer)
    list.push({
      name: 'buzzer',
      supply: buzzer.supply,
      current: buzzer.current,
      usual: 0.03,
      rests: buzzer['self-powered'],
    });
  if (lights && lights['own-regulator']?.value !== true) {
    const leds = lights.leds;
    list.push({
      name: 'lights',
      supply: lights.supply,
      current: lights.current ?? stripCurrent(leds, lights['current-each']),
      usual: 0.06 * 4,
      rests: leds,
    });
  }
  if (beacon && beacon['own-battery']?.value !== true)
    list.push({ name: 'remote-id', supply: beacon.supply, current: beacon.current, usual: 0.06, rests: beacon.supply });
  if (recorder?.current && recorder['own-battery']?.value !== true)
    list.push({
      name: 'action-camera',
      supply: recorder.supply,
      current: recorder.current,
      usual: 1,
      rests: recorder.current,
    });
  return list;
}

/** At full white; a three-colour element takes up to 60 mA, from memory of its data sheet. */
function stripCurrent(leds: Fact<number> | undefined, each: Fact<number> | undefined): Fact<number> | undefined {
  return leds && { ...(each ?? leds), value: leds.value * (each?.value ?? 0.06) };
}

const onBoard = (craft: Craft, role: 'receiver'): boolean =>
  craft.said.parts?.[role] === undefined && craft.roles[role] !== undefined;
