/** Limits of what a value can be. */
import { worked } from '../../../server/src/plan/worked';
import { type Boundary, edge, turn } from './boundary';

const inClass = (craft: string) => ({ craft });

export const data: readonly Boundary[] = [
  edge('class-of-other-size', 'parts.propellers.size', ['5.5x4x3', 'silent'], ['5.51x4x3', 'warning']),
  edge('class-of-other-size', 'parts.propellers.size', ['4.5x4x3', 'silent'], ['4.49x4x3', 'warning']),
  edge(
    'class-of-other-size',
    'parts.propellers.size',
    ['36 mm, 3 blades', 'silent'],
    ['36.1 mm, 3 blades', 'warning'],
    inClass('whoop-65'),
  ),
  edge(
    'class-of-other-size',
    'parts.propellers.size',
    ['29 mm, 3 blades', 'silent'],
    ['28.9 mm, 3 blades', 'warning'],
    inClass('whoop-65'),
  ),
  // 4.5 in to a tenth of a millimetre.
  edge(
    'class-of-other-size',
    'parts.propellers.size',
    ['114.3 mm, 3 blades', 'silent'],
    ['114.2 mm, 3 blades', 'warning'],
  ),
  edge('esc-burst-below-continuous', 'parts.esc.burst', ['60 A for 10 s', 'silent'], ['59.99 A for 10 s', 'warning']),
  edge('outside-references', 'parts.motors.kv', ['1750', 'silent'], ['1749', 'information']),
  edge('outside-references', 'parts.motors.kv', ['1850', 'silent'], ['1851', 'information']),
  // Momentum theory: 62.4 W hold 510.85 g with 5.1 in at 1.225 kg/m³.
  edge('thrust-row-impossible', 'parts.motors.thrust-table.0.thrust', ['510.8 g', 'silent'], ['510.9 g', 'warning']),
  // A millimetre of diameter and three of pitch are the same propeller under two names.
  edge('thrust-table-unused', 'parts.propellers.size', ['5.13x3.6x3', 'silent'], ['5.14x3.6x3', 'information']),
  edge('thrust-table-unused', 'parts.propellers.size', ['5.1x3.71x3', 'silent'], ['5.1x3.72x3', 'information']),
  // The field's usual range, and twice as far.
  edge('value-unusual', 'packs.main.capacity', ['12000 mAh', 'silent'], ['12001 mAh', 'information']),
  edge('value-unusual', 'packs.main.capacity', ['24000 mAh', 'information'], ['24001 mAh', 'warning']),
  edge('value-unusual', 'packs.main.capacity', ['150 mAh', 'silent'], ['149 mAh', 'information']),
  edge('value-unusual', 'packs.main.capacity', ['75 mAh', 'information'], ['74 mAh', 'warning']),
  turn('thrust-row-contradicts-nameplate', 'parts.motors.thrust-table.0.current', {
    say: (value) => `${value.toFixed(2)} A`,
    silent: 8,
    found: 31,
    step: 0.01,
    broken: (craft, pack) =>
      worked(craft, pack, 'worked.pack-figures')!.value.notices.some(
        ({ code, details }) => code === 'row-contradicts-nameplate' && Math.abs(details.sigmas as number) > 2,
      ),
  }),
  turn('logged-flight-contradicts-figures', 'flight.logged.used', {
    say: (value) => `${value} mAh`,
    silent: 1050,
    found: 400,
    step: 1,
    broken: (craft, pack) =>
      worked(craft, pack, 'worked.pack-figures')!.value.notices.some(
        ({ code, details }) => code === 'log-contradicts-figures' && Math.abs(details.sigmas as number) > 2,
      ),
  }),
];
