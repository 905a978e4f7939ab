/** Limits of motors, propellers and flight. */
import type { Craft, Pack } from '../../../server/src/build/craft';
import { worked } from '../../../server/src/plan/worked';
import { type Boundary, edge, turn } from './boundary';

const figures = (craft: Craft, pack: Pack | undefined) => worked(craft, pack, 'worked.pack-figures')!.value;
const thrustToWeight = (craft: Craft, pack: Pack | undefined): number => {
  const { full } = figures(craft, pack);
  if (!full.ok) return 0;
  return full.value.thrust.value / (worked(craft, pack, 'worked.pack-weight')!.value.ready.value * 9.80665);
};
/** With the throttle limit: the tip's way round 7 in, at 340.294 m/s of sound (288.15 K). */
const tipMach = (craft: Craft, pack: Pack | undefined): number => {
  const { full } = worked(craft, pack, 'worked.pack-values')!.value;
  const share = craft.said.flight!['throttle-limit']!.value;
  return full.ok ? (share * Math.PI * 7 * 0.0254 * full.value.rpm) / 60 / 340.294 : 0;
};
/** The high end of thrust to weight. */
const highest = (craft: Craft, pack: Pack | undefined): number => {
  const { full } = figures(craft, pack);
  return full.ok ? full.value.thrustToWeight.high : 0;
};
const grams = (value: number): string => `${value.toFixed(1)} g`;

export const propulsion: readonly Boundary[] = [
  // Shares are written in whole percent: three thirds are 99 %.
  edge('flight-shares-off', 'flight.punch', ['11 %', 'silent'], ['11.1 %', 'warning']),
  edge('flight-shares-off', 'flight.punch', ['9 %', 'silent'], ['8.9 %', 'warning']),
  edge('logged-charge-above-capacity', 'flight.logged.used', ['1326 mAh', 'silent'], ['1327 mAh', 'warning']),
  // Momentum theory: 0.5112 kg (the light end) on four discs of 5.1 in at 1.225 kg/m³ take 31.23 W, 1.2393 A at 25.2 V.
  edge('logged-current-impossible', 'flight.logged.current', ['1.24 A', 'silent'], ['1.23 A', 'warning'], {
    'parts.propellers.weight': '5 g',
  }),
  edge('motor-count-differs', 'parts.motors.count', ['4', 'silent'], ['3', 'error']),
  edge('motor-count-differs', 'parts.motors.count', ['4', 'silent'], ['5', 'error']),
  edge('motor-count-differs', 'parts.motors.count', ['6', 'silent'], ['7', 'error'], {
    'parts.frame.geometry': 'hexa',
  }),
  edge('motor-count-differs', 'parts.motors.count', ['8', 'silent'], ['7', 'error'], {
    'parts.frame.geometry': 'octo',
  }),
  edge('propellers-too-few', 'parts.propellers.count', ['4', 'silent'], ['3', 'error']),
  // The standard atmosphere has 92 % of its density at 860.08 m, and at 40.06 degrees at sea level.
  edge('thin-air', 'flight.altitude', ['860 m', 'silent'], ['861 m', 'information']),
  edge('thin-air', 'flight.temperature', ['40 C', 'silent'], ['41 C', 'information'], { 'flight.altitude': undefined }),
  turn('craft-cannot-hover', 'parts.frame.weight', {
    say: grams,
    silent: 60,
    found: 900,
    step: 0.1,
    broken: (craft, pack) => thrustToWeight(craft, pack) < 1.5,
  }),
  turn('craft-cannot-hover', 'parts.frame.weight', {
    say: grams,
    silent: 60,
    found: 1500,
    step: 0.1,
    grave: 'error',
    broken: (craft, pack) => highest(craft, pack) < 1.5,
  }),
  // Below 1.5 another check speaks.
  turn('thrust-to-weight-low', 'parts.frame.weight', {
    say: grams,
    silent: 5000,
    found: 900,
    step: 0.1,
    broken: (craft, pack) => thrustToWeight(craft, pack) >= 1.5 && thrustToWeight(craft, pack) < 5,
  }),
  turn('thrust-to-weight-low', 'parts.frame.weight', {
    say: grams,
    silent: 100,
    found: 900,
    step: 0.1,
    broken: (craft, pack) => thrustToWeight(craft, pack) < 5,
  }),
  turn('thrust-to-weight-low', 'parts.frame.weight', {
    say: grams,
    silent: 100,
    found: 900,
    step: 0.1,
    grave: 'warning',
    broken: (craft, pack) => highest(craft, pack) < 5,
  }),
  turn('hover-throttle-high', 'parts.frame.weight', {
    say: grams,
    silent: 60,
    found: 450,
    step: 0.1,
    broken: (craft, pack) => {
      const { hover } = figures(craft, pack);
      return hover.ok && hover.value.throttle.value > 0.45;
    },
  }),
  // In ducts half of the throttle.
  turn('hover-throttle-high', 'parts.frame.weight', {
    say: grams,
    silent: 60,
    found: 450,
    step: 0.1,
    with: { 'parts.frame.duct-diameter': '80 mm' },
    broken: (craft, pack) => {
      const { hover } = figures(craft, pack);
      return hover.ok && hover.value.throttle.value > 0.5;
    },
  }),
  turn('hover-throttle-high', 'parts.frame.weight', {
    say: grams,
    silent: 60,
    found: 600,
    step: 0.1,
    grave: 'warning',
    broken: (craft, pack) => {
      const { hover } = figures(craft, pack);
      return hover.ok && hover.value.throttle.low > 0.55;
    },
  }),
  turn('hover-throttle-high', 'parts.frame.weight', {
    say: grams,
    silent: 60,
    found: 700,
    step: 0.1,
    grave: 'warning',
    with: { 'parts.frame.duct-diameter': '80 mm' },
    broken: (craft, pack) => {
      const { hover } = figures(craft, pack);
      return hover.ok && hover.value.throttle.low > 0.6;
    },
  }),
  turn('tip-speed-high', 'flight.throttle-limit', {
    say: (value) => `${value.toFixed(1)} %`,
    silent: 40,
    found: 100,
    step: 0.1,
    broken: (craft, pack) => tipMach(craft, pack) > 0.7,
  }),
  turn('tip-speed-high', 'flight.throttle-limit', {
    say: (value) => `${value.toFixed(1)} %`,
    silent: 40,
    found: 100,
    step: 0.1,
    grave: 'warning',
    with: { 'packs.main.cells': '8S' },
    broken: (craft, pack) => tipMach(craft, pack) > 0.8,
  }),
  turn('flight-shorter-than-goal', 'goals.minutes', {
    say: (value) => `${value.toFixed(1)} min`,
    silent: 2,
    found: 20,
    step: 0.1,
    broken: (craft, pack) => {
      const { asFlown } = figures(craft, pack);
      return asFlown.ok && asFlown.value.minutes.value < craft.said.goals!.minutes!.value / 60;
    },
  }),
  turn('flight-shorter-than-goal', 'goals.minutes', {
    say: (value) => `${value.toFixed(1)} min`,
    silent: 2,
    found: 20,
    step: 0.1,
    grave: 'warning',
    broken: (craft, pack) => {
      const { asFlown } = figures(craft, pack);
      return asFlown.ok && asFlown.value.minutes.high < craft.said.goals!.minutes!.value / 60;
    },
  }),
];
