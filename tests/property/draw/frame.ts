/** Describes a frame that takes the parts which were chosen, with the room a builder leaves. Chooses no other part. */
import { motorScrewLengths } from '../trade/fasteners';
import type { Branch } from '../tree';
import type { Choices } from './choices';
import type { Luck } from './luck';
import { flag, grams, size } from './words';

export interface MotorSeat {
  readonly arm: number;
  readonly screw: string;
  readonly washer: number | undefined;
  readonly soft: number | undefined;
}

/** Arm and screw that go together: enough thread, clear of the winding. */
export function seatOf(luck: Luck, { craft, train }: Choices): MotorSeat {
  const { motor } = train;
  const head =
    motor.thread === 1.4 ? 'pan' : luck.pick(motor.thread === 3 ? ['button', 'cap', 'countersunk'] : ['button', 'cap']);
  for (;;) {
    const arm = luck.pick(craft.arms);
    const washer = luck.maybe(20, motor.thread === 3 ? 0.5 : 0.3);
    const soft = luck.maybe(10, 0.5);
    const lengths = motorScrewLengths(motor.thread, arm, motor.depth, washer, soft);
    if (lengths.length > 0) return { arm, screw: `M${motor.thread}x${luck.pick(lengths)} ${head}`, washer, soft };
  }
}

export interface FrameWishes {
  readonly seat: MotorSeat;
  readonly antennaPlace: string;
  readonly gps: boolean;
  readonly stackTall: number;
  readonly strap: number;
}

export function frameOf(luck: Luck, choices: Choices, wishes: FrameWishes): Branch {
  const { craft, train, propeller, packs, form, unit, cameraWidth } = choices;
  const { motor } = train;
  const tiny = craft.boards.includes('whoop');
  const wheelbase = luck.pick(craft.wheelbase);
  const layout = layoutOf(luck, choices, wheelbase);
  const bay = [form.esc[0] + luck.pick([8, 10, 14]), form.esc[1] + luck.pick([6, 8, 10])] as const;
  const [length, width] = [Math.max(...packs.map((p) => p.size[0])), Math.max(...packs.map((p) => p.size[1]))];
  const body = [length + 40, bay[1] + 2, wishes.stackTall + 14] as const;
  const other = tiny ? [] : luck.pick([[], ['20x20 M2'], ['25.5x25.5 M2']]);
  const stackMounts = [form.mount, ...other.filter((mount) => mount.split(' ')[0] !== form.mount.split(' ')[0])];
  const rear = tiny ? undefined : [...new Set(['20x20 M2', ...unit.mounts])];
  const cages = [...new Set([cameraWidth, ...luck.pick([[], [19], [20]])])].filter(
    (one) => !tiny || one === cameraWidth,
  );
  const slot =
    motor.mount.startsWith('16x16') || motor.mount.startsWith('19x19') ? luck.maybe(25, '16-19 M3') : undefined;
  const stackThread =
    form.thread === 1.4
      ? 'M1.4x5 pan'
      : `M${form.thread}x${Math.ceil(wishes.stackTall / 5) * 5 + (form.thread === 3 ? 5 : 0)} cap`;
  return {
    wheelbase: `${wheelbase} mm`,
    geometry: layout.geometry,
    motors: '4',
    'motor-positions': layout.positions,
    'largest-propeller': tiny
      ? `${propeller.diameter} mm`
      : `${luck.pick([propeller.diameter, propeller.diameter + 1]).toFixed(1)} mm`,
    'duct-diameter': craft.ducted
      ? `${Number((propeller.diameter + luck.pick([1.5, 2, 2.5])).toFixed(1))} mm`
      : undefined,
    'arm-thickness': `${wishes.seat.arm} mm`,
    'arm-width': `${craft.armWidth} mm`,
    'motor-mounts': slot ? [slot] : luck.often(30) && motor.thread === 3 ? [motor.mount, '16x19 M3'] : [motor.mount],
    'stack-mounts': stackMounts,
    'rear-mounts': rear,
    'stack-height': `${Math.ceil(wishes.stackTall) + luck.pick([6, 7, 9])} mm`,
    bay: `${bay[0]}x${bay[1]} mm`,
    'camera-widths': cages.map((one) => `${one} mm`),
    'antenna-mounts': [...new Set([wishes.antennaPlace, ...luck.pick([[], ['printed'], ['tie']])])],
    'receiver-antenna-mount': 'yes',
    'gps-mount': flag(wishes.gps),
    'battery-plate': `${length + luck.pick([-6, 0, 10])}x${width + luck.pick([-4, 0, 2])} mm`,
    'battery-side': tiny ? 'bottom' : luck.pick(['top', 'top', 'bottom']),
    'strap-width': tiny ? undefined : `${wishes.strap} mm`,
    'standoff-thread': tiny ? undefined : motor.thread === 3 ? 'M3' : 'M2',
    'frame-screws': tiny ? ['M1.4x4 pan'] : motor.thread === 3 ? ['M3x8 button', 'M3x6 countersunk'] : ['M2x6 cap'],
    'motor-screws': wishes.seat.screw,
    'stack-screws': stackThread,
    material: craft.material,
    body: size(body),
    'propeller-height': luck.maybe(60, `${Math.round(motor.shaftLength + 8)} mm`),
    weight: grams(luck, craft.frame + luck.below(5) * craft.frame * 0.02),
  };
}

/** A true X, or another layout with every axis said, where the propellers keep as much room. */
function layoutOf(
  luck: Luck,
  { propeller, craft }: Choices,
  wheelbase: number,
): { geometry: string; positions: readonly string[] | undefined } {
  const half = wheelbase / (2 * Math.SQRT2);
  const kind = luck.pick(['x', 'x', 'x', 'stretched-x', 'h', 'dead-cat']);
  const [front, side, back, rear] = {
    x: [half, half, half, half],
    h: [half, half, half, half],
    'stretched-x': [half * 1.06, half * 0.94, half * 1.06, half * 0.94],
    'dead-cat': [half * 0.86, half * 1.12, half, half * 0.98],
  }[kind]!.map((mm) => Math.round(mm)) as [number, number, number, number];
  const least = Math.min(2 * side, 2 * rear, Math.hypot(front + back, side - rear));
  const fits = least - propeller.diameter >= (craft.ducted ? 10 : 7);
  if (!fits || kind === 'x') return { geometry: 'x', positions: undefined };
  return {
    geometry: kind,
    positions: [
      `${front} mm forward, ${side} mm right`,
      `${back} mm back, ${rear} mm right`,
      `${back} mm back, ${rear} mm left`,
      `${front} mm forward, ${side} mm left`,
    ],
  };
}
