/** The gates of an assembly in their order, what each vouches for, and a short print of that: when it differs from the one in the file, the gate is void. Ticks nothing. */
import type { Craft } from '../build/craft';
import { lookUp } from '../build/fact';

export const gateNames = [
  'dry-fit',
  'harness',
  'joints',
  'motor-wires',
  'first-power',
  'rails',
  'receiver',
  'video',
  'motors-turn',
  'closed',
  'weighed',
  'first-hover',
] as const;

export type Gate = (typeof gateNames)[number];

/** Each decision of a build is vouched for by one gate and no other. Paths as in the file; parts by their role. */
const vouched: Readonly<Record<Gate, readonly string[]>> = {
  'dry-fit': [
    'frame',
    'motors.mount',
    'motors.screws',
    'motors.washer',
    'motors.soft-mount',
    'motors.shaft',
    'flight-controller.mount',
    'esc.mount',
    'camera.width',
    'fasteners',
  ],
  harness: ['harness', 'esc.controller-socket', 'flight-controller.esc-socket'],
  joints: ['battery-lead', 'capacitor'],
  'motor-wires': ['motors.wire', 'motors.wire-length', 'motors.stator', 'motors.kv'],
  'first-power': ['esc.cells', 'esc.current', 'packs'],
  rails: [
    'flight-controller.regulators',
    'wiring.gps',
    'wiring.buzzer',
    'wiring.lights',
    'wiring.remote-id',
    'wiring.action-camera',
    'wiring.esc',
    'setup.firmware',
    'setup.loop',
    'setup.board-rotation',
    'setup.cell-count',
    'setup.cell-full',
    'setup.cell-warning',
    'setup.cell-landing',
    'setup.sensor-scale',
  ],
  receiver: ['receiver', 'receiver-antenna', 'wiring.receiver', 'setup.failsafe', 'setup.arm-switch'],
  video: [
    'camera.system',
    'camera.supply',
    'video-transmitter',
    'video-antenna',
    'wiring.camera',
    'wiring.video-transmitter',
    'setup.osd-standard',
  ],
  'motors-turn': ['setup.motor-protocol', 'setup.bidirectional', 'setup.spin', 'setup.motor-map', 'motors.count'],
  closed: ['strap', 'gps', 'buzzer', 'lights', 'action-camera'],
  weighed: ['flight.weighed', 'remote-id'],
  'first-hover': ['propellers'],
};

export const gateOf = (path: string): Gate | undefined =>
  gateNames.find((gate) => vouched[gate].some((one) => path === one || path.startsWith(`${one}.`)));

/** Six signs that stay the same for as long as what the gate vouches for says the same, in whatever order it is written. */
export function gatePrint(craft: Craft, gate: Gate): string {
  const text = vouched[gate].map((path) => `${path}=${spoken(at(craft, path))}`).join('\n');
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193) >>> 0;
  return (hash >>> 8).toString(16).padStart(6, '0');
}

const at = (craft: Craft, path: string): unknown =>
  lookUp(/^(?:wiring|setup|flight|packs)\b/.test(path) ? craft.said : craft.roles, path.split('.'));

/** What is bought where, and what is only told of a part, changes nothing at the bench. */
const besides = new Set([
  'where',
  'used',
  'use',
  'kind',
  'name',
  'spares',
  'owned',
  'from',
  'sold-as',
  'source',
  'seen',
  'note',
  'weight',
  'supplied',
  'at',
]);

function spoken(value: unknown): string {
  if (typeof value !== 'object' || value === null) return '';
  const one = value as {
    readonly is?: string;
    readonly text?: string;
    readonly items?: readonly unknown[];
    readonly entries?: ReadonlyMap<string, unknown>;
  };
  if (one.is === 'fact') return one.text ?? '';
  if (one.is === 'many') return `[${(one.items ?? []).map(spoken).join(',')}]`;
  const entries =
    one.is === 'table' ? [...(one.entries ?? [])] : Object.entries(value).filter(([key]) => !besides.has(key));
  return `{${entries
    .map(([key, inside]) => `${key}:${spoken(inside)}`)
    .sort()
    .join(';')}}`;
}
