/** Everything that the build has decided and the firmware, or the hand at the pads, must be told: each decision once, with the gate that vouches for it. Decides nothing new without saying so. */
import type { Craft } from '../build/craft';
import type { Pointable } from '../build/fact';
import { type Gate, gateOf } from './assembly-gates';
import { cellVoltage } from './cell-voltage';
import { profileOf, regionFact } from './rules';
import { chosenPack } from './weight';
import { worked } from './worked';

export type SetupGroup = 'ports' | 'pads' | 'motors' | 'sensors' | 'cells' | 'receiver' | 'video' | 'firmware';

export interface SetupRow {
  readonly group: SetupGroup;
  readonly setting: string;
  readonly value: string;
  /** Path of the decision in the build; of what is worked out, the path it would have. */
  readonly path: string;
  /** Said in the build, said by a part, worked out, or what is usual. */
  readonly basis: 'said' | 'part' | 'worked out' | 'usual';
  readonly gate: Gate | undefined;
  readonly note?: string;
}

const noteOfRemap = 'a re-flash or a preset erases it';

export function setupSheet(craft: Craft): readonly SetupRow[] {
  const rows: SetupRow[] = [];
  const add = (
    group: SetupGroup,
    setting: string,
    path: string,
    value: string,
    basis: SetupRow['basis'],
    note?: string,
  ): void => {
    rows.push({ group, setting, value, path, basis, gate: gateOf(path), ...(note ? { note } : {}) });
  };
  ports(craft, add);
  pads(craft, add);
  motors(craft, add);
  sensors(craft, add);
  cells(craft, add);
  radio(craft, add);
  return rows;
}

type Add = (
  group: SetupGroup,
  setting: string,
  path: string,
  value: string,
  basis: SetupRow['basis'],
  note?: string,
) => void;

/** The serial line of each device with what it carries. */
function ports(craft: Craft, add: Add): void {
  const plan = worked(craft, undefined, 'worked.ports')?.value;
  for (const need of plan?.needs ?? []) {
    const place = plan?.taken.get(need.device);
    if (!place) continue;
    const turned = need.inverted ? ', inverted' : '';
    // Some protocols have their rate in their name.
    const rate = need.protocol.includes(String(need.baud)) ? ' baud' : ` at ${need.baud} baud`;
    add(
      'ports',
      place.port,
      `wiring.${need.device}.serial`,
      `${need.words}: ${need.protocol}${rate}${turned}`,
      place.said ? 'said' : 'worked out',
    );
  }
  // Without a list of ports the build's own word is all there is.
  if (!plan)
    for (const [device, wires] of craft.said.wiring?.entries ?? [])
      if (wires.serial) add('ports', wires.serial.text, `wiring.${device}.serial`, device.replaceAll('-', ' '), 'said');
}

const padWords: Readonly<Record<string, string>> = {
  power: 'fed from',
  ground: 'ground wire',
  video: 'picture wire',
  i2c: 'compass wires',
  tx: 'its TX goes to',
  'leave-out': 'left out',
  signal: 'signal goes to',
};

function pads(craft: Craft, add: Add): void {
  const plan = worked(craft, undefined, 'worked.ports')?.value;
  for (const [device, wires] of craft.said.wiring?.entries ?? []) {
    const facts = wires as unknown as Readonly<Record<string, Pointable | undefined>>;
    for (const [key, words] of Object.entries(padWords)) {
      const fact = facts[key];
      if (fact?.text !== undefined)
        add('pads', `${device.replaceAll('-', ' ')}, ${words}`, `wiring.${device}.${key}`, fact.text, 'said');
    }
    // A serial line that no port plan knows, such as that of a part the build lacks.
    if (plan && wires.serial && !plan.needs.some((need) => need.device === device && plan.taken.has(need.device)))
      add('ports', wires.serial.text, `wiring.${device}.serial`, device.replaceAll('-', ' '), 'said');
  }
  for (const [device, rail] of feeds(craft))
    add('pads', `${device.replaceAll('-', ' ')}, fed from`, `wiring.${device}.power`, rail, 'worked out');
}

/** Devices whose rail was worked out. */
function feeds(craft: Craft): readonly (readonly [string, string])[] {
  const rails = worked(craft, undefined, 'worked.rails')?.value;
  return (rails?.ledgers ?? []).flatMap((one) =>
    one.draws.filter((draw) => !draw.said).map((draw) => [draw.device, one.rail] as const),
  );
}

function said(craft: Craft, key: string): Pointable | undefined {
  return (craft.said.setup as unknown as Readonly<Record<string, Pointable | undefined>> | undefined)?.[key];
}

function motors(craft: Craft, add: Add): void {
  const one = (key: string, setting: string, note?: string): void => {
    const fact = said(craft, key);
    if (fact) add('motors', setting, `setup.${key}`, fact.text, 'said', note);
  };
  one('motor-protocol', 'motor signal');
  one('bidirectional', 'rpm over the signal wire');
  one('spin', 'direction of the propellers');
  one('motor-map', 'motor order', noteOfRemap);
  const harness = worked(craft, undefined, 'worked.harness')?.value;
  if (!said(craft, 'motor-map') && harness?.reading.remap && !harness.mirrored)
    add('motors', 'motor order', 'setup.motor-map', harness.reading.remap.join('-'), 'worked out', noteOfRemap);
}

function sensors(craft: Craft, add: Add): void {
  const rotation = said(craft, 'board-rotation');
  if (rotation) add('sensors', 'board rotation', 'setup.board-rotation', rotation.text, 'said');
  const scale = said(craft, 'sensor-scale');
  const part = craft.roles.esc?.['sensor-scale'];
  if (scale) add('sensors', 'current sensor, mV per 10 A', 'setup.sensor-scale', scale.text, 'said');
  else if (part) add('sensors', 'current sensor, mV per 10 A', 'setup.sensor-scale', part.text, 'part');
  for (const [key, setting] of [
    ['firmware', 'firmware'],
    ['loop', 'control loop'],
  ] as const) {
    const fact = said(craft, key);
    if (fact) add('firmware', setting, `setup.${key}`, fact.text, 'said');
  }
}

/** Voltages as the firmware compares them, for the pack that the figures are for. */
function cells(craft: Craft, add: Add): void {
  const pack = chosenPack(craft)?.facts;
  const kind = cellVoltage(pack?.chemistry?.value);
  const count = said(craft, 'cell-count');
  if (count) add('cells', 'cell count', 'setup.cell-count', count.text, 'said');
  // A guess by voltage divides by the highest cell voltage: a full high-voltage pack would count one cell more.
  const usual: readonly (readonly [string, string, string])[] = [
    ['cell-full', 'highest cell voltage', `${(kind.full + 0.1).toFixed(2)} V`],
    ['cell-warning', 'warning', `${(kind.landing + 0.2).toFixed(1)} V`],
    ['cell-landing', 'land now', `${kind.landing.toFixed(1)} V`],
  ];
  for (const [key, setting, value] of usual) {
    const fact = said(craft, key);
    if (fact) add('cells', setting, `setup.${key}`, fact.text, 'said');
    else if (pack) add('cells', setting, `setup.${key}`, value, 'usual');
  }
}

function radio(craft: Craft, add: Add): void {
  const failsafe = said(craft, 'failsafe');
  if (failsafe) add('receiver', 'failsafe', 'setup.failsafe', failsafe.text, 'said');
  else if (craft.roles.receiver) add('receiver', 'failsafe', 'setup.failsafe', 'drop', 'usual');
  const arm = said(craft, 'arm-switch');
  if (arm) add('receiver', 'arming has its own switch', 'setup.arm-switch', arm.text, 'said');
  const standard = said(craft, 'osd-standard');
  if (standard) add('video', 'picture standard of the overlay', 'setup.osd-standard', standard.text, 'said');
  const video = craft.roles['video-transmitter'];
  if (video?.channel) add('video', 'channel', 'video-transmitter.channel', video.channel.text, 'part');
  const region = regionFact(craft);
  const profile = profileOf(region?.value);
  const limit =
    profile &&
    `profile ${profile.name} as of ${profile.asOf}: ${(profile.video.radiated * 1000).toPrecision(2)} mW radiated ${profile.video.note}; check your local rules`;
  if (video?.level)
    add('video', 'power', 'video-transmitter.level', video.level.text, 'part', limit ?? 'check your local rules');
}
