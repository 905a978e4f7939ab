/** Turns a craft and one of its packs into what the physics asks for, and says which facts are wanting. Computes no flight. */
import type { Craft, Pack } from '../build/craft';
import type { Fact } from '../build/fact';
import type { FactAt, MotorFacts } from '../build/generated/facts';
import { type CraftInput, type Known, type LoggedFlight, type ThrustRow, values } from '../physics';
import type { PropellerSize } from '../text/notation/propeller-size';
import type { Trust as Worth } from '../text/origin';
import { devicePower } from './device-power';
import { type FlightLevels, flightLevels } from './flight-levels';
import { chosenPack, motorCount, weightOf } from './weight';

export type FlightInput =
  | { readonly ok: true; readonly input: CraftInput; readonly assumed: readonly string[] }
  | { readonly ok: false; readonly missing: readonly (keyof FactAt)[] };

export function flightInput(craft: Craft, pack: Pack): FlightInput {
  const { motors, propellers } = craft.roles;
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
  const input: Omit<CraftInput, 'mix'> = {
    motors: {
      count: motorCount(craft),
      statorDiameterMm: motors.stator.value.diameter * 1000,
      statorHeightMm: motors.stator.value.height * 1000,
      kv: motors.kv.value,
      coaxial: inPairs(craft),
      resistance: known(motors.resistance),
      noLoadCurrent: known(motors['no-load-current']),
    },
    propeller: {
      diameter: size.diameter,
      pitch: size.pitch ?? size.diameter * 0.7,
      blades: size.blades,
      ducted: hasDucts(craft),
      ct: readByMeter(propellers.ct),
      cp: readByMeter(propellers.cp),
    },
    pack: {
      cells: cells.series,
      parallel: cells.parallel,
      chemistry: chemistry === 'LiHV' ? 'lihv' : chemistry === 'Li-ion' ? 'li-ion' : 'lipo',
      capacity,
      dischargeRating: pack.facts.discharge?.value,
      landingVoltage: pack.facts['landing-voltage']?.value,
      capacitySigma: pack.facts.capacity.origin.trust === 'measured' ? 0.01 : undefined,
      resistance: resistance && {
        value: (resistance.value * cells.series) / cells.parallel + 0.004,
        trust: readByMeter(resistance)?.trust,
      },
    },
    mass: weightOf(craft, pack).ready,
    air: {
      altitude: craft.said.flight?.altitude?.value,
      temperature: craft.said.flight?.temperature && craft.said.flight.temperature.value + 273.15,
    },
    auxiliaryPower: devicePower(craft),
    thrustTable: thrustRows(craft),
    log: logOf(craft, pack),
  };
  return { ok: true, input: withMix(input, flightLevels(craft)), assumed };
}

/** Ducts are said by their diameter, by the propeller's tips or by the class of craft. */
const hasDucts = (craft: Craft): boolean =>
  craft.roles.frame?.['duct-diameter'] !== undefined ||
  craft.roles.propellers?.style?.value === 'duct' ||
  /^(?:whoop|ducted)-/.test(craft.said.craft?.value ?? '');

/** Eight motors are four pairs unless eight places are named for them. */
const inPairs = (craft: Craft): boolean =>
  craft.roles.frame?.geometry?.value === 'octo' &&
  motorCount(craft) === 8 &&
  new Set(craft.roles.frame['motor-positions']?.items.map(({ value }) => `${value.forward} ${value.right}`)).size < 8;

const trustOf = (trust: Worth): 'measured' | 'maker' | 'seller' | 'estimate' => (trust === 'unsaid' ? 'seller' : trust);

/** Fields that nobody prints on a part: without another word somebody measured them. */
const readByMeter = (fact: Fact<number> | undefined): Known | undefined =>
  fact && { value: fact.value, trust: fact.origin.trust === 'unsaid' ? 'measured' : fact.origin.trust };

const known = (fact: Fact<number> | undefined): Known | undefined =>
  fact && { value: fact.value, trust: trustOf(fact.origin.trust) };

/**
 * The physics takes cruise as a multiple of the weight and punches as a share of full thrust. A level said in the other form is
 * turned by the thrust to weight at half of the usable charge, solved with punches at full throttle.
 */
function withMix(input: Omit<CraftInput, 'mix'>, levels: FlightLevels): CraftInput {
  const { hover, cruise, punch, cruiseThrust, punchThrust, reserve } = levels;
  const plain = { hover, cruise, punch, reserve, cruiseThrust: 1.3, punchThrust: 0.6 };
  if (cruiseThrust.of === 'full' || punchThrust.of === 'weight') {
    const full = values({ ...input, mix: { ...plain, punchThrust: 1 } }).punch;
    const most = full.ok ? full.value.thrustToWeight : 1;
    return {
      ...input,
      mix: {
        ...plain,
        cruiseThrust: cruiseThrust.of === 'full' ? Math.max(1, cruiseThrust.ratio * most) : cruiseThrust.ratio,
        punchThrust: punchThrust.of === 'weight' ? Math.min(1, punchThrust.ratio / most) : punchThrust.ratio,
      },
    };
  }
  return { ...input, mix: { ...plain, cruiseThrust: cruiseThrust.ratio, punchThrust: punchThrust.ratio } };
}

/** One propeller by its size: within a millimetre of diameter and three of pitch. */
export const sameSize = (a: PropellerSize | undefined, b: PropellerSize | undefined): boolean =>
  a !== undefined &&
  b !== undefined &&
  Math.abs(a.diameter - b.diameter) < 0.001 &&
  a.blades === b.blades &&
  Math.abs((a.pitch ?? 0) - (b.pitch ?? 0)) < 0.003;

export type StandRow = NonNullable<MotorFacts['thrust-table']>['items'][number];

/** Rows measured with this propeller, in the order the physics gets them; others tell nothing about it. */
export const standRows = (craft: Craft): readonly StandRow[] =>
  (craft.roles.motors?.['thrust-table']?.items ?? []).filter(
    (row) => row.voltage && row.thrust && sameSize(row.propeller?.value, craft.roles.propellers?.size?.value),
  );

function thrustRows(craft: Craft): readonly ThrustRow[] | undefined {
  const rows = standRows(craft).map((row) => ({
    throttle: row.throttle?.value,
    thrust: row.thrust!.value,
    voltage: row.voltage!.value,
    current: row.current?.value,
    rpm: row.speed && row.speed.value * 60,
  }));
  return rows.length > 0 ? rows : undefined;
}

/** It was flown with the pack that the builder's figures are for, at the weight of then. */
function logOf(craft: Craft, pack: Pack): LoggedFlight | undefined {
  const log = craft.said.flight?.logged;
  if (!log) return undefined;
  const flownWith = chosenPack(craft);
  return {
    flown: 'as-flown',
    mass: flownWith && flownWith !== pack ? weightOf(craft, flownWith).ready.value : undefined,
    duration: log.minutes?.value,
    used: log.used?.value,
    meanCurrent: log.current?.value,
    hoverThrottle: log['hover-throttle']?.value,
  };
}
