/** Turns a craft and one of its packs into what the physics asks for, and says which facts are wanting. Computes no flight. */
import type { Craft, Pack } from '../build/craft';
import type { Fact } from '../build/fact';
import type { FactAt } from '../build/generated/facts';
import type { CraftInput, FlightMix, Known, LoggedFlight, ThrustRow } from '../physics';
import type { ThrustLevel } from '../text/notation/thrust-level';
import type { Trust as Worth } from '../text/origin';
import { habitOf } from './class-habits';
import { devicePower } from './device-power';
import { motorCount, weightOf } from './weight';

export type FlightInput =
  | { readonly ok: true; readonly input: CraftInput; readonly assumed: readonly string[] }
  | { readonly ok: false; readonly missing: readonly (keyof FactAt)[] };

export function flightInput(craft: Craft, pack: Pack): FlightInput {
  const { motors, propellers, frame } = craft.roles;
  const wanted = {
    'motors.stator': motors?.stator,
    'motors.kv': motors?.kv,
    'propellers.size': propellers?.size,
    'pack.cells': pack.facts.cells,
    'pack.capacity': pack.facts.capacity,
  } as const;
  const missing = (Object.keys(wanted) as (keyof typeof wanted)[]).filter((path) => wanted[path] === undefined);
  if (!motors?.stator || !motors.kv || !propellers?.size || !pack.facts.cells || !pack.facts.capacity)
    return { ok: false, missing };
  const size = propellers.size.value;
  const assumed: string[] = [];
  // A propeller sold by diameter and blades alone is about 0.7 as steep as wide. Common practice.
  if (size.pitch === undefined) assumed.push('propellers.size');
  const cells = pack.facts.cells.value;
  const capacity = pack.facts.capacity.value;
  const resistance = pack.facts['cell-resistance'];
  const chemistry = pack.facts.chemistry?.value;
  const ducted = frame?.['duct-diameter'] !== undefined;
  const input: CraftInput = {
    motors: {
      count: motorCount(craft),
      statorDiameterMm: motors.stator.value.diameter * 1000,
      statorHeightMm: motors.stator.value.height * 1000,
      kv: motors.kv.value,
      coaxial: frame?.geometry?.value === 'octo' && motorCount(craft) === 8,
      resistance: known(motors.resistance),
      noLoadCurrent: known(motors['no-load-current']),
    },
    propeller: {
      diameter: size.diameter,
      pitch: size.pitch ?? size.diameter * 0.7,
      blades: size.blades,
      ducted,
      ct: known(propellers.ct),
      cp: known(propellers.cp),
    },
    pack: {
      cells: cells.series,
      parallel: cells.parallel,
      chemistry: chemistry === 'LiHV' ? 'lihv' : chemistry === 'Li-ion' ? 'li-ion' : 'lipo',
      capacity,
      dischargeRating: pack.facts.discharge?.value,
      landingVoltage: pack.facts['landing-voltage']?.value,
      resistance: resistance && {
        value: (resistance.value * cells.series) / cells.parallel + 0.004,
        trust: trustOf(resistance.origin.trust),
      },
    },
    mass: weightOf(craft, pack).ready,
    air: {
      altitude: craft.said.flight?.altitude?.value,
      temperature: craft.said.flight?.temperature && craft.said.flight.temperature.value + 273.15,
    },
    auxiliaryPower: devicePower(craft),
    mix: mixOf(craft),
    thrustTable: thrustRows(craft),
    log: logOf(craft),
  };
  return { ok: true, input, assumed };
}

const trustOf = (trust: Worth): 'measured' | 'maker' | 'seller' | 'estimate' => (trust === 'unsaid' ? 'seller' : trust);

const known = (fact: Fact<number> | undefined): Known | undefined =>
  fact && { value: fact.value, trust: trustOf(fact.origin.trust) };

export function mixOf(craft: Craft): FlightMix {
  const habit = habitOf(craft.said.craft?.value);
  const flight = craft.said.flight;
  return {
    hover: flight?.hover?.value ?? habit.hover,
    cruise: flight?.cruise?.value ?? habit.cruise,
    punch: flight?.punch?.value ?? habit.punch,
    cruiseThrust: ofWeight(flight?.['cruise-thrust']?.value ?? habit.cruiseThrust),
    punchThrust: ofFull(flight?.['punch-thrust']?.value ?? habit.punchThrust),
    reserve: flight?.reserve?.value ?? 0.2,
  };
}

// The physics takes cruise as a multiple of the weight and punches as a share of full thrust; the other form is used as it best can.
const ofWeight = (level: ThrustLevel): number => (level.of === 'weight' ? level.ratio : 1.3);
const ofFull = (level: ThrustLevel): number => (level.of === 'full' ? level.ratio : 0.6);

/** Rows measured with this propeller; others tell nothing about it. */
function thrustRows(craft: Craft): readonly ThrustRow[] | undefined {
  const size = craft.roles.propellers?.size?.value;
  const rows = craft.roles.motors?.['thrust-table']?.items.flatMap((row) => {
    const same =
      row.propeller &&
      size &&
      Math.abs(row.propeller.value.diameter - size.diameter) < 0.001 &&
      row.propeller.value.blades === size.blades &&
      Math.abs((row.propeller.value.pitch ?? 0) - (size.pitch ?? 0)) < 0.003;
    if (!same || !row.voltage || !row.thrust) return [];
    return [
      {
        throttle: row.throttle?.value,
        thrust: row.thrust.value,
        voltage: row.voltage.value,
        current: row.current?.value,
        rpm: row.speed && row.speed.value * 60,
      },
    ];
  });
  return rows && rows.length > 0 ? rows : undefined;
}

function logOf(craft: Craft): LoggedFlight | undefined {
  const log = craft.said.flight?.logged;
  if (!log) return undefined;
  return {
    flown: 'as-flown',
    duration: log.minutes?.value,
    used: log.used?.value,
    meanCurrent: log.current?.value,
    hoverThrottle: log['hover-throttle']?.value,
  };
}
