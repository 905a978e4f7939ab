/** Every solder joint of a craft with its wire: where, how thick, how long, how hot. Counts only what this build solders; judges nothing. */
import type { Craft } from '../build/craft';
import { wiringOf } from './feeds';
import { serialNeeds } from './serial-needs';
import { chosenPack, motorCount } from './weight';

export type JointClass = 'power' | 'motor' | 'signal';

export interface Joint {
  /** Role of the part that is soldered. */
  readonly part: string;
  /** What is joined, as spoken: `plus and minus on the ESC`. */
  readonly what: string;
  readonly count: number;
  readonly is: JointClass;
  /** AWG; nothing for the part's own legs. */
  readonly gauge: number | undefined;
  /** Whether the build says the gauge; otherwise a usual one stands in. */
  readonly known: boolean;
  /** m of wire for each joint that brings its own; 0 where the part comes with wires. */
  readonly wire: number;
}

export interface Iron {
  readonly tip: string;
  /** Degrees Celsius with leaded solder. */
  readonly from: number;
  readonly to: number;
  /** mm of solder wire that one joint takes. */
  readonly solder: number;
}

/** Thick wires and capacitor legs on a battery pad, motor wires, thin wires. Common practice. */
const irons: Readonly<Record<JointClass, Iron>> = {
  power: { tip: 'chisel or bevel, 3 to 5 mm, 60 W or more', from: 380, to: 400, solder: 25 },
  motor: { tip: 'chisel, 2.4 to 3.2 mm', from: 360, to: 390, solder: 10 },
  signal: { tip: 'small chisel or bevel, 1.2 to 1.6 mm', from: 330, to: 350, solder: 5 },
};

/** By the wire, which is what takes the heat: the motors of a small craft have wires as thin as a camera's. */
export const ironFor = ({ is, gauge }: Joint): Iron =>
  irons[gauge === undefined ? is : gauge <= 16 ? 'power' : gauge <= 24 ? 'motor' : 'signal'];

/** In the order they are made: most heat first, on a cool board. */
export function jointsOf(craft: Craft): readonly Joint[] {
  const { roles } = craft;
  const joints: Joint[] = [];
  const lead = roles['battery-lead'];
  const cells = chosenPack(craft)?.facts.cells?.value.series ?? 4;
  const usualLead = cells === 1 ? 20 : cells <= 3 ? 16 : cells <= 4 ? 14 : 12;
  if (lead || roles.esc) {
    const gauge = lead?.wire?.value ?? usualLead;
    const known = lead?.wire !== undefined;
    const length = lead?.length?.value ?? 0.1;
    joints.push({
      part: 'battery-lead',
      what: `plus and minus on the ${craft.boards === 'all-in-one' ? 'board' : 'ESC'}`,
      count: 2,
      is: 'power',
      gauge,
      known,
      wire: length,
    });
    joints.push({
      part: 'battery-lead',
      what: 'plus and minus in the plug',
      count: 2,
      is: 'power',
      gauge,
      known,
      wire: 0,
    });
  }
  if (roles.capacitor)
    joints.push({
      part: 'capacitor',
      what: 'its legs beside the battery lead, sleeved, short',
      count: 2,
      is: 'power',
      gauge: undefined,
      known: true,
      wire: 0,
    });
  const motors = motorCount(craft);
  const single = roles.esc?.type?.value === 'single';
  if (single)
    joints.push(
      { part: 'esc', what: 'supply of each ESC', count: 2 * motors, is: 'power', gauge: 16, known: false, wire: 0.12 },
      {
        part: 'esc',
        what: 'signal and ground of each ESC',
        count: 2 * motors,
        is: 'signal',
        gauge: 28,
        known: false,
        wire: 0.12,
      },
    );
  if (roles.motors)
    joints.push({
      part: 'motors',
      what: 'three wires of each motor',
      count: 3 * motors,
      is: 'motor',
      gauge: roles.motors.wire?.value ?? usualMotorWire(roles.motors.stator?.value.diameter),
      known: roles.motors.wire !== undefined,
      wire: 0,
    });
  if (roles.harness?.soldered?.value === true)
    joints.push(
      signal(
        'harness',
        'each wire of the cable, on both boards',
        (roles.harness.contacts?.value ?? 8) * 2,
        roles.harness.wire?.value ?? 28,
        0.04,
      ),
    );
  joints.push(...devices(craft));
  return joints;
}

const signal = (part: string, what: string, count: number, gauge: number, wire: number): Joint => ({
  part,
  what,
  count,
  is: 'signal',
  gauge,
  known: false,
  wire,
});

function devices(craft: Craft): readonly Joint[] {
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
  const own = craft.said.parts ?? {};
  const needs = serialNeeds(craft);
  const lines = (device: string): number => {
    const need = needs.find((one) => one.device === device);
    return need ? Number(need.rx) + Number(need.tx) : 0;
  };
  const left = (device: string): number => wiringOf(craft, device)?.['leave-out']?.items.length ?? 0;
  const found: Joint[] = [];
  const analog = (system: string | undefined): boolean => system === undefined || system === 'analog';
  if (camera && analog(camera.system?.value)) {
    const control = wiringOf(craft, 'camera')?.signal ? 1 : 0;
    found.push(signal('camera', `supply, ground, picture${control ? ', control' : ''}`, 3 + control, 28, 0.08));
  }
  if (video && own['video-transmitter'] && analog(video.system?.value)) {
    const control = video.control?.value === 'button' ? 0 : 1;
    found.push(
      signal('video-transmitter', 'supply and ground', 2, 26, 0.08),
      signal('video-transmitter', `picture${control ? ', control' : ''}`, 1 + control, 28, 0.08),
    );
  }
  if (receiver && own.receiver)
    found.push(
      signal(
        'receiver',
        'supply, ground and its lines',
        Math.max(2, 2 + lines('receiver') - left('receiver')),
        28,
        0.06,
      ),
    );
  if (gps) {
    const compass = gps.compass?.value === true || wiringOf(craft, 'gps')?.i2c?.value === true;
    found.push(
      signal(
        'gps',
        `supply, ground, two lines${compass ? ', two of the compass' : ''}`,
        4 + (compass ? 2 : 0),
        28,
        0.12,
      ),
    );
  }
  if (buzzer) found.push(signal('buzzer', 'plus and minus', 2, 28, 0.06));
  if (lights) found.push(signal('lights', 'supply, ground, signal', 3, 26, 0.15));
  if (beacon && beacon['own-battery']?.value !== true)
    found.push(signal('remote-id', 'supply, ground and its lines', 2 + lines('remote-id'), 28, 0.1));
  if (recorder?.current && recorder['own-battery']?.value !== true)
    found.push(signal('action-camera', 'supply and ground', 2, 26, 0.12));
  return found;
}

/** AWG by stator diameter. Common practice. */
const usualMotorWire = (diameter: number | undefined): number =>
  diameter === undefined
    ? 20
    : diameter < 0.012
      ? 28
      : diameter < 0.016
        ? 24
        : diameter < 0.021
          ? 22
          : diameter < 0.027
            ? 20
            : 18;

export const countOf = (joints: readonly Joint[]): number => joints.reduce((sum, joint) => sum + joint.count, 0);

/** m of wire to have by gauge, a fifth more than the runs. */
export function wireOf(joints: readonly Joint[]): readonly { readonly gauge: number; readonly length: number }[] {
  const lengths = new Map<number, number>();
  for (const { gauge, count, wire } of joints)
    if (gauge !== undefined && wire > 0) lengths.set(gauge, (lengths.get(gauge) ?? 0) + count * wire);
  return [...lengths]
    .sort((a, b) => a[0] - b[0])
    .map(([gauge, length]) => ({ gauge, length: Math.ceil(length * 1.2 * 20) / 20 }));
}

/** Minutes at the bench, for somebody who has done it before. Common practice. */
export const benchMinutes = (joints: readonly Joint[]): number => 60 + countOf(joints) * 4;
