/**
 * The figures of a craft for one setting of its factors: values only, no ranges. This is the fast path.
 * It must not know where a factor's value came from.
 */
import { openVoltage } from './battery';
import { G } from './constants';
import type { Craft } from './craft';
import { dutyOfThrottle, throttleOfDuty } from './esc';
import { type Drain, type Endurance, endurance } from './flight-time';
import { discArea } from './hover';
import { lazily } from './lazily';
import { atDuty, atThrust, type OperatingPoint, type Supply } from './operating-point';
import { type Impossible, impossible, type Outcome, possible } from './result';

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

/** Thrust in N that each propeller must make in free air for a thrust on the craft. */
const perPropeller = (craft: Craft, thrust: number): number => thrust / (craft.count * craft.installedThrust);

/** Half of the usable charge gone. */
const middleOf = (craft: Craft): Supply => supplyAt(craft, 1 - (1 - craft.mix.reserve) / 2);

/** Thrust of one propeller in a punch, N, or undefined for a pack too weak for full throttle. */
function punchThrustOf(craft: Craft): number | undefined {
  const full = atDuty(craft.rotor, middleOf(craft), 1);
  return full.ok ? Math.max(perPropeller(craft, craft.weight), craft.mix.punchThrust * full.value.thrust) : undefined;
}

/** Everything the card shows, for one setting of the factors; each group worked out when it is asked for. */
export function valuesOfCraft(craft: Craft): CraftValues {
  const { mix, rotor, weight } = craft;
  const hoverThrust = perPropeller(craft, weight);
  const full = once(() => atDuty(rotor, supplyAt(craft, 1), 1));
  const punchThrust = once(() => punchThrustOf(craft));
  const hovering = once(() => fly(craft, hoverDrain(craft)));
  const asFlown = once(() => fly(craft, flownDrain(craft, punchThrust())));
  /** Why it does not fly at all, if it doesn't. */
  const grounded = once((): Impossible | undefined => {
    const most = full();
    // A pack too weak for full throttle may still hover; anything else ends here.
    if (!most.ok) return most.why === 'pack-cannot-deliver' ? undefined : most;
    if (most.value.thrust >= hoverThrust) return undefined;
    return impossible('cannot-hover', { weight, fullThrust: most.value.thrust * craft.count * craft.installedThrust });
  });
  const level = (thrust: number): Outcome<PointValues> =>
    grounded() ?? valuesOf(craft, atThrust(rotor, middleOf(craft), thrust));
  const sagged = once(() => valuesOf(craft, atDuty(rotor, supplyAt(craft, mix.reserve), 1)));
  return lazily<CraftValues>({
    full: () => valuesOf(craft, full()),
    fullSagged: sagged,
    hover: () => level(hoverThrust),
    cruise: () => level(hoverThrust * mix.cruiseThrust),
    punch: () => {
      const thrust = punchThrust();
      return grounded() ?? (thrust === undefined ? sagged() : level(thrust));
    },
    hovering: () => grounded() ?? hovering().flight,
    asFlown: () => grounded() ?? asFlown().flight,
    hoveringEndsBy: () => (grounded() ? undefined : hovering().endedBy),
    asFlownEndsBy: () => (grounded() ? undefined : asFlown().endedBy),
  });
}

function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}

/** The hover alone, at half of the usable charge. */
export const hoverOf = (craft: Craft): Outcome<PointValues> =>
  valuesOf(craft, atThrust(craft.rotor, middleOf(craft), perPropeller(craft, craft.weight)));

/** At a throttle 0 … 1, at half of the usable charge. */
export const atThrottle = (craft: Craft, throttle: number): Outcome<PointValues> =>
  valuesOf(craft, atDuty(craft.rotor, middleOf(craft), dutyOfThrottle(throttle, craft.throttleOffset)));

/** V of a cell under load by the charge 0 … 1; nothing where it cannot be flown so. */
export function loadedOver(
  craft: Craft,
): (charge: number) => Readonly<Record<'hovering' | 'flown' | 'full', number | undefined>> {
  const { landing, input } = craft.pack;
  const drainAt = flownDrain(craft, punchThrustOf(craft));
  return (charge) => {
    const supply = supplyAt(craft, charge);
    const hover = atThrust(craft.rotor, supply, perPropeller(craft, craft.weight));
    const drain = hover.ok ? drainAt(charge) : undefined;
    const full = atDuty(craft.rotor, supply, 1);
    return {
      hovering: hover.ok ? hover.value.busVoltage / input.cells : undefined,
      flown: drain && (drain.margin + landing) / input.cells,
      full: full.ok ? full.value.busVoltage / input.cells : undefined,
    };
  };
}

/** One flight alone. */
export const flightOf = (craft: Craft, flown: 'hovering' | 'as-flown'): Outcome<FlightValues> =>
  fly(craft, flown === 'hovering' ? hoverDrain(craft) : flownDrain(craft, punchThrustOf(craft))).flight;

type DrainAt = (charge: number) => Drain | undefined;

const hoverDrain = (craft: Craft): DrainAt => {
  const thrust = perPropeller(craft, craft.weight);
  return (charge) => {
    const p = atThrust(craft.rotor, supplyAt(craft, charge), thrust);
    return p.ok ? { current: p.value.supplyCurrent, margin: p.value.busVoltage - craft.pack.landing } : undefined;
  };
};

/** Mean of the mix; a level that a charge can no longer give is flown at full throttle. */
const flownDrain = (craft: Craft, punchThrust: number | undefined): DrainAt => {
  const { mix, rotor } = craft;
  const hoverThrust = perPropeller(craft, craft.weight);
  const levels = [
    { share: mix.cruise, thrust: hoverThrust * mix.cruiseThrust },
    { share: mix.punch, thrust: punchThrust },
  ].filter((level) => level.share > 0);
  return (charge) => {
    const supply = supplyAt(craft, charge);
    const hover = atThrust(rotor, supply, hoverThrust);
    if (!hover.ok) return undefined;
    let current = mix.hover * hover.value.supplyCurrent;
    for (const { share, thrust } of levels) {
      if (thrust === undefined) return undefined;
      const asked = atThrust(rotor, supply, thrust);
      const flown = asked.ok ? asked : atDuty(rotor, supply, 1);
      if (!flown.ok) return undefined;
      current += share * flown.value.supplyCurrent;
    }
    current *= craft.flying;
    return { current, margin: supply.openVoltage - supply.resistance * current - craft.pack.landing };
  };
};

function fly(
  craft: Craft,
  drainAt: DrainAt,
): { readonly flight: Outcome<FlightValues>; readonly endedBy?: Endurance['endedBy'] } {
  const { capacity, landing, input } = craft.pack;
  const e = endurance(drainAt, capacity, craft.mix.reserve, landing);
  if (e === undefined || !(e.duration > 0))
    return { flight: impossible('below-landing-voltage', { landingVoltage: landing }) };
  return {
    flight: possible({
      minutes: e.duration / 60,
      usedMah: e.used * 1000,
      usedWh: e.energy,
      meanCurrent: (e.used * 3600) / e.duration,
      landingCellVoltage: (landing + e.marginLeft) / input.cells,
    }),
    endedBy: e.endedBy,
  };
}
