/** Draws one build whose parts go together by the trade's rules, as plain data. Must take no constant from the checks: it is what they are held against. */

import { protocolNeeds } from '../trade/radio';
import type { Branch } from '../tree';
import { benchOf } from './bench';
import { controllerOf, escOf, harnessOf, railsOf, type Socketed, socketsOf } from './boards';
import { type Choices, choose } from './choices';
import {
  actionCameraOf,
  buzzerOf,
  cameraOf,
  gpsOf,
  isAnalog,
  lightsOf,
  receiverAntennaOf,
  receiverOf,
  remoteIdOf,
  videoAntennaOf,
  videoTransmitterOf,
  videoWays,
} from './devices';
import { frameOf, seatOf } from './frame';
import type { Luck } from './luck';
import { capacitorOf, leadOf, packOf, strapOf } from './power';
import { motorsOf, propellersOf } from './propulsion';
import { assignAsFar, padsOf, type SerialWish } from './serial';
import { flightOf, setupOf } from './setup';
import { weightOfParts } from './weigh';
import { feedable, feedsOf, socketOfBoard } from './wiring';
import { grams } from './words';

export interface Drawn {
  readonly choices: Choices;
  readonly build: Branch;
  readonly bench: Branch;
}

export function drawBuild(luck: Luck, craftName?: string): Drawn {
  for (;;) {
    const choices = choose(luck, craftName);
    const rails = railsOf(luck, choices);
    if (feedable(choices, rails)) return described(luck, choices, rails);
  }
}

function described(luck: Luck, choices: Choices, rails: ReturnType<typeof railsOf>): Drawn {
  const { craft, board, chip, protocol, onBoardReceiver, onBoardVideo, unit, cells, payload } = choices;
  const tiny = board === 'whoop';
  const analog = isAnalog(choices);
  const ways = videoWays(luck, choices);
  const feeds = feedsOf(luck, choices, rails, ways);
  const seat = seatOf(luck, choices);
  const hand = luck.pick(['RHCP', 'LHCP', 'RHCP', 'linear']);
  const slot = cells <= 4 && craft.frame < 100 ? 12 : 20;
  const scale = luck.pick([100, 179, 400]);

  // What needs a serial port, the dispensable last.
  const long = /long|lifter/.test(craft.name);
  const gpsWays =
    tiny || !(long || luck.often(30))
      ? undefined
      : { protocol: luck.pick(['UBX', 'UBX', 'NMEA'] as const), compass: luck.often(50) };
  const remoteSerial = luck.often(50);
  const wantsRemote = !tiny && luck.often(25);
  const inverted = protocolNeeds[protocol]?.inverted === true;
  const plainPad = inverted && (luck.often(30) || (!chip.inverts && protocol === 'FPort'));
  const needs = protocolNeeds[protocol];
  const wishes: SerialWish[] = [
    ...(needs && onBoardReceiver === 'no' ? [{ device: 'receiver', ...needs, inverted: inverted && !plainPad }] : []),
    unit.control === 'MSP'
      ? { device: 'video-transmitter', rx: true, tx: true }
      : { device: 'video-transmitter', rx: false, tx: true, slow: true },
    ...(gpsWays ? [{ device: 'gps', rx: true, tx: gpsWays.protocol === 'UBX' }] : []),
    ...(wantsRemote && remoteSerial ? [{ device: 'remote-id', rx: true, tx: true }] : []),
    ...(luck.often(35) && !tiny ? [{ device: 'esc', rx: true, tx: false }] : []),
  ];
  const ports = padsOf(chip, inverted && !plainPad, onBoardReceiver === 'serial' ? 'on-board receiver' : undefined);
  const soft = luck.below(3);
  const blocked = gpsWays?.compass ? chip.i2cUart : undefined;
  const { kept, taken } = assignAsFar(wishes, ports, soft, blocked);
  const has = (device: string): boolean => kept.some((wish) => wish.device === device);
  const gps = gpsWays && has('gps') ? gpsWays : undefined;
  const remote = wantsRemote && (!remoteSerial || has('remote-id'));
  const remoteOwn = remote && luck.often(40);
  const telemetry = has('esc');

  const apart = board === 'small stack' || board === 'large stack' ? luck.often(55) : false;
  const sockets: Socketed | undefined = tiny || board === 'all-in-one' ? undefined : socketsOf(luck);
  const together = sockets && !apart ? { ...sockets, esc: sockets.controller } : sockets;
  const capacitorSupplied = cells >= 3 && luck.often(15);
  const rotated = luck.often(45) ? luck.pick([0, 90, 180, 270]) : undefined;
  const controller = controllerOf(luck, choices, ports, rails, {
    sockets: board === 'singles' ? undefined : together,
    scale,
    soft,
    rotated,
    video: feeds.videoSocket === undefined ? undefined : socketOfBoard(feeds.videoSocket),
  });
  const esc = {
    ...escOf(luck, choices, together, { scale, capacitor: capacitorSupplied }),
    ...(telemetry ? { telemetry: 'yes' } : {}),
  };
  const receiverPlug =
    onBoardReceiver === 'no' ? luck.pick(['U.FL', 'U.FL', 'MHF4', 'soldered']) : luck.pick(['U.FL', 'soldered']);
  const supplied = receiverPlug === 'soldered' || luck.often(60);
  const receiver = receiverOf(luck, choices, { plainPad, antennaPlug: receiverPlug, supplied });
  const video = videoTransmitterOf(luck, choices, { ...ways, controlled: has('video-transmitter') });
  const without = (tree: Branch, ...keys: string[]): Branch => ({
    ...tree,
    ...Object.fromEntries(keys.map((key) => [key, undefined])),
  });
  const height = board === 'large stack' ? 20 : 19;
  const form = choices.form;
  const boards: Branch =
    tiny || board === 'all-in-one'
      ? {
          'all-in-one': {
            mount: form.mount,
            hole: `${form.hole} mm`,
            grommets: 'yes',
            outside: controller.outside,
            'flight-controller': without(controller, 'mount', 'hole', 'grommets', 'outside', 'weight'),
            esc: without(esc, 'mount', 'hole', 'grommets', 'outside', 'weight', 'count'),
            receiver: onBoardReceiver === 'no' ? undefined : receiver,
            'video-transmitter': onBoardVideo ? video : undefined,
            supplied: luck.maybe(20, ['battery lead', 'grommets']),
            weight: grams(luck, tiny ? 4.2 : 10.5),
          },
        }
      : apart || board === 'singles'
        ? { 'flight-controller': controller, esc }
        : {
            stack: {
              'flight-controller': without(controller, 'weight'),
              esc: without(esc, 'weight', 'count'),
              height: `${height} mm`,
              'cable-supplied': luck.pick(['yes', 'yes', 'no']),
              weight: grams(luck, 24),
            },
          };
  const stackTall = tiny
    ? 6
    : board === 'all-in-one'
      ? 8
      : board === 'singles'
        ? 8
        : apart
          ? form.controller[2] + 3 + form.esc[2]
          : height;
  const cabled = together && board !== 'singles' && (apart || luck.often(50));
  const buzzer = !tiny && luck.often(60);
  const lights = rails.five > 1.5 && luck.often(25);
  const actionFed = payload !== undefined && rails.five >= 2.5 && !lights && luck.often(60);
  const antennaPlace = /SMA/.test(ways.plug) ? 'sma-hole' : luck.pick(['tube', 'tie']);
  const capacitor = cells >= 3 && (!capacitorSupplied || luck.often(30));
  const packNames = ['main', 'light', 'third'];
  const parts: Branch = {
    frame: frameOf(luck, choices, { seat, antennaPlace, gps: gps !== undefined, stackTall, strap: slot }),
    motors: motorsOf(luck, choices, seat),
    propellers: propellersOf(luck, choices),
    ...boards,
    harness: cabled && together ? harnessOf(luck, together) : undefined,
    'battery-lead': leadOf(luck, choices, feeds.filter ? true : undefined),
    capacitor: capacitor ? capacitorOf(luck, choices) : undefined,
    camera: cameraOf(luck, choices, feeds.cameraSupply),
    'video-transmitter': onBoardVideo ? undefined : video,
    'video-antenna': videoAntennaOf(luck, choices, ways, hand),
    receiver: onBoardReceiver === 'no' ? receiver : undefined,
    'receiver-antenna':
      receiverPlug !== 'soldered' && (!supplied || luck.often(50))
        ? receiverAntennaOf(luck, choices, receiverPlug)
        : undefined,
    gps: gps && gpsOf(luck, gps),
    buzzer: buzzer ? buzzerOf(luck) : undefined,
    lights: lights ? lightsOf(luck) : undefined,
    'remote-id': remote ? remoteIdOf(luck, remoteOwn, remoteSerial) : undefined,
    'action-camera': payload === undefined ? undefined : actionCameraOf(luck, payload, actionFed),
    strap: tiny ? undefined : strapOf(luck, choices, slot),
    adapters:
      payload === undefined
        ? undefined
        : { top: { type: 'printed mount', takes: 'action camera', gives: 'top plate', weight: grams(luck, 9) } },
    fasteners: luck.maybe(30, {
      motors: {
        screw: seat.screw,
        for: 'motors',
        count: String(4 * choices.train.motor.screws),
        metal: 'yes',
        weight: '0.4 g',
      },
    }),
    extras: luck.maybe(40, { [tiny ? 'canopy' : 'pad']: { weight: grams(luck, tiny ? 1.4 : 3) } }),
  };
  const packs: Branch = Object.fromEntries(
    choices.packs.map((pack, i) => [packNames[i], packOf(luck, pack, luck.between(1, 6))]),
  );
  const said = luck.often(80);
  const wiring: Branch = {
    camera: { power: feeds.camera, ground: 'yes', video: analog ? 'yes' : undefined },
    'video-transmitter': {
      serial: said ? taken['video-transmitter'] : undefined,
      power: feeds.videoSocket && luck.often(70) ? undefined : feeds.video,
      ground: 'yes',
      video: analog ? 'yes' : undefined,
      'leave-out': ways.socket && luck.often(40) ? ['SBUS'] : undefined,
    },
    receiver:
      onBoardReceiver === 'no'
        ? { serial: said ? taken.receiver : undefined, power: choices.link.rail, ground: 'yes' }
        : undefined,
    gps: gps && {
      serial: said ? taken.gps : undefined,
      power: '5V',
      ground: 'yes',
      i2c: gps.compass ? 'yes' : undefined,
    },
    buzzer: buzzer ? { power: '5V', signal: 'buzzer-pads' } : undefined,
    lights: lights ? { power: '5V', ground: 'yes', signal: 'led-pad' } : undefined,
    'remote-id':
      remote && !(remoteOwn && !remoteSerial)
        ? {
            serial: remoteSerial && said ? taken['remote-id'] : undefined,
            power: remoteOwn ? undefined : '5V',
            ground: 'yes',
          }
        : undefined,
    'action-camera': actionFed ? { power: '5V', ground: 'yes' } : undefined,
    esc: telemetry ? { serial: taken.esc } : undefined,
  };
  const heaviest = weightOfParts(parts, packs);
  const build: Branch = {
    dryfit: 'build',
    name: `A ${craft.name}`,
    craft: craft.name,
    region: choices.region,
    parts,
    packs,
    wiring,
    setup: setupOf(luck, choices, { scale, rotated, gps: gps !== undefined, telemetry }),
    flight: flightOf(luck, choices, packNames[0]!, weightOfParts(parts, { main: packs.main })),
    goals: luck.maybe(50, {
      weight: `${Math.ceil(heaviest * 1.04)} g`,
      minutes: luck.pick(['1 min', '1.5 min']),
      parcels: luck.maybe(50, '4'),
    }),
    budget: luck.maybe(30, '900 EUR'),
    note: luck.maybe(20, 'for the spring meeting'),
  };
  return { choices, build, bench: benchOf(luck, choices, hand, [seat.screw]) };
}
