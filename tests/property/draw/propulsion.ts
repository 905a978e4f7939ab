/** Describes motors and propellers of a drawn build as their makers do. Chooses neither. */
import type { Stand } from '../trade/motors';
import type { Branch } from '../tree';
import type { Choices } from './choices';
import type { MotorSeat } from './frame';
import type { Luck } from './luck';
import { grams } from './words';

export function motorsOf(luck: Luck, { train }: Choices, seat: MotorSeat): Branch {
  const { motor } = train;
  const [least, most] = motor.cells;
  const said = luck.pick(['', ' (maker)', ' (seller)']);
  return {
    stator: motor.stator,
    kv: String(motor.kv),
    cells: least === most ? `${most}S` : `${least}S-${most}S`,
    mount: motor.mount,
    'screws-each': String(motor.screws),
    'thread-depth': `${motor.depth} mm`,
    shaft: motor.shaft,
    'shaft-length': `${motor.shaftLength} mm`,
    screws: seat.screw,
    washer: seat.washer === undefined ? undefined : `${seat.washer} mm`,
    'soft-mount': seat.soft === undefined ? undefined : `${seat.soft} mm`,
    resistance: luck.maybe(80, `${motor.resistance} mOhm${said}`),
    'no-load-current': luck.maybe(80, `${motor.noLoad} A${said}`),
    'peak-current': `${motor.peak} A for 10 s${said}`,
    'peak-power': luck.maybe(60, `${Math.ceil((motor.peak * most * 4.2) / 10) * 10} W${said}`),
    wire: `${motor.wire} AWG`,
    'wire-length': `${motor.wireLength} mm`,
    count: '4',
    spares: luck.maybe(50, '1'),
    weight: grams(luck, motor.weight),
    'thrust-table': motor.stand && luck.maybe(60, rowsOf(motor.stand)),
  };
}

const rowsOf = ({ propeller, voltage, rows }: Stand): readonly Branch[] =>
  rows.map(([throttle, thrust, current]) => ({
    propeller,
    voltage: `${voltage} V`,
    throttle: `${throttle} %`,
    thrust: `${thrust} g`,
    current: `${current} A`,
  }));

export const propellersOf = (luck: Luck, { propeller, craft }: Choices): Branch => ({
  size: propeller.size,
  bore: propeller.bore,
  'hub-thickness': `${propeller.hub} mm`,
  style: craft.ducted ? 'duct' : 'open',
  rotation: luck.maybe(85, 'set of both'),
  pieces: luck.pick(['4', '8']),
  count: luck.maybe(85, '4'),
  spares: luck.pick(['4', '8', '12', '16']),
  weight: grams(luck, propeller.weight),
});
