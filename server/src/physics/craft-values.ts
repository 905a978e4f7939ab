/**
 * The figures of a craft for one setting of its factors: values only, no ranges. This is the fast path.
 * It must not know where a factor's value came from.
 */
import { openVoltage } from './battery';
import { G } from './constants';
import type { Craft } from './craft';
import { throttleOfDuty } from './esc';
import { type Drain, type Endurance, endurance } from './flight-time';
import { discArea } from './hover';
import { atDuty, atThrust, type OperatingPoint, type Supply } from './operating-point';
import { impossible, type Outcome, possible } from './result';

/** One way of flying, at one state of charge. */
export interface PointValues {
  /** N, whole craft. */
  readonly thrust: number;
  readonly thrustToWeight: number;
  /** 0 … 1; the stick that a linear controller would need. */
  readonly throttle: number;
  /** A in one motor. */
  readonly motorCurrent: number;
  /** A into one controller. */
  readonly escCurrent: number;
  /** A out of the pack. */
  readonly packCurrent: number;
  /** W out of the pack. */
  readonly power: number;
  /** V under load. */
  readonly busVoltage: number;
  /** V per cell under load. */
  readonly cellVoltage: number;
  readonly rpm: number;
  readonly tipMach: number;
  /** m/s */
  readonly pitchSpeed: number;
  /** Grams of thrust per W out of the pack. */
  readonly gramsPerWatt: number;
  /** N/m² of disc. */
  readonly discLoading: number;
  /** W of heat in one motor and its leads. */
  readonly motorHeat: number;
  /** W lost in one controller and motor by part load. */
  readonly escHeat: number;
}

/** One flight from a full pack to landing. */
export interface FlightValues {
  readonly minutes: number;
  readonly usedMah: number;
  readonly usedWh: number;
  /** A, mean over the flight. */
  readonly meanCurrent: number;
  /** V per cell under load at landing. */
  readonly landingCellVoltage: number;
}

export interface CraftValues {
  /** Full throttle on a full pack. */
  readonly full: Outcome<PointValues>;
  /** Full throttle at the end of the usable charge. */
  readonly fullSagged: Outcome<PointValues>;
  /** At half of the usable charge. */
  readonly hover: Outcome<PointValues>;
  readonly cruise: Outcome<PointValues>;
  readonly punch: Outcome<PointValues>;
  readonly hovering: Outcome<FlightValues>;
  readonly asFlown: Outcome<FlightValues>;
  /** What ends each flight. */
  readonly hoveringEndsBy?: Endurance['endedBy'];
  readonly asFlownEndsBy?: Endurance['endedBy'];
}

const supplyAt = (craft: Craft, charge: number): Supply => ({
  openVoltage: craft.pack.input.cells * openVoltage(craft.pack.input.chemistry, charge),
  resistance: craft.pack.resistance,
  motors: craft.count,
  auxiliary: craft.auxiliary,
});

function pointValues(craft: Craft, p: OperatingPoint): PointValues {
  const thrust = p.thrust * craft.count * craft.installedThrust;
  const power = p.supplyCurrent * p.busVoltage;
  return {
    thrust,
    thrustToWeight: thrust / craft.weight,
    throttle: Math.max(0, throttleOfDuty(p.duty, craft.throttleOffset)),
    motorCurrent: p.motorCurrent,
    escCurrent: p.escCurrent,
    packCurrent: p.supplyCurrent,
    power,
    busVoltage: p.busVoltage,
    cellVoltage: p.busVoltage / craft.pack.input.cells,
    rpm: p.speed * 60,
    tipMach: p.tipMach,
    pitchSpeed: p.pitchSpeed,
    gramsPerWatt: ((thrust / G) * 1000) / power,
    discLoading: thrust / (discArea(craft.rotor.propeller.diameter) * craft.count),
    motorHeat: p.motorHeat,
    escHeat: p.partLoadHeat,
  };
}

const valuesOf = (craft: Craft, p: Outcome<OperatingPoint>): Outcome<PointValues> =>
  p.ok ? possible(pointValues(craft, p.value)) : p;

/** Everything the card shows, for one setting of the factors. */
export function valuesOfCraft(craft: Craft): CraftValues {
  const { mix, rotor, weight } = craft;
  const middle = supplyAt(craft, 1 - (1 - mix.reserve) / 2);
  const perPropeller = (thrust: number): number => thrust / (craft.count * craft.installedThrust);
  const full = atDuty(rotor, supplyAt(craft, 1), 1);
  const fullSagged = atDuty(rotor, supplyAt(craft, mix.reserve), 1);
  const fullMiddle = atDuty(rotor, middle, 1);
  const common = { full: valuesOf(craft, full), fullSagged: valuesOf(craft, fullSagged) };
  // A pack too weak for full throttle may still hover; anything else ends here.
  if (!full.ok && full.why !== 'pack-cannot-deliver')
    return { ...common, hover: full, cruise: full, punch: full, hovering: full, asFlown: full };
  const hoverThrust = perPropeller(weight);
  if (full.ok && full.value.thrust < hoverThrust) {
    const fullThrust = full.value.thrust * craft.count * craft.installedThrust;
    const no = impossible('cannot-hover', { weight, fullThrust });
    return { ...common, hover: no, cruise: no, punch: no, hovering: no, asFlown: no };
  }
  const cruiseThrust = hoverThrust * mix.cruiseThrust;
  const punchThrust = fullMiddle.ok ? Math.max(hoverThrust, mix.punchThrust * fullMiddle.value.thrust) : undefined;

  /** A level that this charge can no longer give is flown at full throttle. */
  const orFull = (supply: Supply, thrust: number): OperatingPoint | undefined => {
    const asked = atThrust(rotor, supply, thrust);
    if (asked.ok) return asked.value;
    const all = atDuty(rotor, supply, 1);
    return all.ok ? all.value : undefined;
  };
  const hoverDrain = (charge: number): Drain | undefined => {
    const p = atThrust(rotor, supplyAt(craft, charge), hoverThrust);
    return p.ok ? { current: p.value.supplyCurrent, margin: p.value.busVoltage - craft.pack.landing } : undefined;
  };
  const flownDrain = (charge: number): Drain | undefined => {
    const supply = supplyAt(craft, charge);
    const hover = atThrust(rotor, supply, hoverThrust);
    if (!hover.ok) return undefined;
    let current = mix.hover * hover.value.supplyCurrent;
    if (mix.cruise > 0) {
      const p = orFull(supply, cruiseThrust);
      if (!p) return undefined;
      current += mix.cruise * p.supplyCurrent;
    }
    if (mix.punch > 0) {
      const p = punchThrust === undefined ? undefined : orFull(supply, punchThrust);
      if (!p) return undefined;
      current += mix.punch * p.supplyCurrent;
    }
    current *= craft.flying;
    return { current, margin: supply.openVoltage - supply.resistance * current - craft.pack.landing };
  };
  const fly = (drain: (charge: number) => Drain | undefined): Endurance | undefined =>
    endurance(drain, craft.pack.capacity, mix.reserve, craft.pack.landing);
  const hovering = fly(hoverDrain);
  const asFlown = fly(flownDrain);
  return {
    ...common,
    hover: valuesOf(craft, atThrust(rotor, middle, hoverThrust)),
    cruise: valuesOf(craft, atThrust(rotor, middle, cruiseThrust)),
    punch: punchThrust === undefined ? common.fullSagged : valuesOf(craft, atThrust(rotor, middle, punchThrust)),
    hovering: flightValues(craft, hovering, hoverDrain),
    asFlown: flightValues(craft, asFlown, flownDrain),
    hoveringEndsBy: hovering?.endedBy,
    asFlownEndsBy: asFlown?.endedBy,
  };
}

function flightValues(
  craft: Craft,
  e: Endurance | undefined,
  drain: (charge: number) => Drain | undefined,
): Outcome<FlightValues> {
  if (e === undefined || !(e.duration > 0))
    return impossible('below-landing-voltage', { landingVoltage: craft.pack.landing });
  const margin = drain(e.chargeLeft)?.margin ?? 0;
  return possible({
    minutes: e.duration / 60,
    usedMah: e.used * 1000,
    usedWh: e.energy,
    meanCurrent: (e.used * 3600) / e.duration,
    landingCellVoltage: (craft.pack.landing + margin) / craft.pack.input.cells,
  });
}
