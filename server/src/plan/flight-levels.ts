/** How the craft is flown: what the file says, else what its class usually does. Turns no level into another by solving. */
import type { Craft } from '../build/craft';
import type { ThrustLevel } from '../text/notation/thrust-level';
import { habitOf } from './class-habits';

export interface FlightLevels {
  /** Shares of the flight, as said or usual; they need not add up to 1. */
  readonly hover: number;
  readonly cruise: number;
  readonly punch: number;
  readonly cruiseThrust: ThrustLevel;
  readonly punchThrust: ThrustLevel;
  readonly reserve: number;
  /** `part` when some are said and the others are usual. */
  readonly from: 'file' | 'part' | 'class' | 'usual';
}

/** Share of the charge that is left at landing when nothing is said. Common practice. */
const usualReserve = 0.2;

export function flightLevels(craft: Craft): FlightLevels {
  const habit = habitOf(craft.said.craft?.value);
  const flight = craft.said.flight;
  const said = ['hover', 'cruise', 'punch', 'cruise-thrust', 'punch-thrust', 'reserve'] as const;
  const count = said.filter((key) => flight?.[key] !== undefined).length;
  return {
    hover: flight?.hover?.value ?? habit.hover,
    cruise: flight?.cruise?.value ?? habit.cruise,
    punch: flight?.punch?.value ?? habit.punch,
    cruiseThrust: flight?.['cruise-thrust']?.value ?? habit.cruiseThrust,
    punchThrust: flight?.['punch-thrust']?.value ?? habit.punchThrust,
    reserve: flight?.reserve?.value ?? usualReserve,
    from: count === said.length ? 'file' : count > 0 ? 'part' : craft.said.craft ? 'class' : 'usual',
  };
}
