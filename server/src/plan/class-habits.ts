/** How each class of craft is usually flown, for figures when the file doesn't say. Common practice; the card always tells which was used. */
import type { ThrustLevel } from '../text/notation/thrust-level';

export interface FlightHabit {
  /** Shares of the flight; they add up to 1. */
  readonly hover: number;
  readonly cruise: number;
  readonly punch: number;
  readonly cruiseThrust: ThrustLevel;
  readonly punchThrust: ThrustLevel;
}

const of = (hover: number, cruise: number, punch: number, cruiseWeight: number, punchShare: number): FlightHabit => ({
  hover,
  cruise,
  punch,
  cruiseThrust: { of: 'weight', ratio: cruiseWeight },
  punchThrust: { of: 'full', ratio: punchShare },
});

const habits: Readonly<Record<string, FlightHabit>> = {
  'whoop-65': of(0.35, 0.5, 0.15, 1.2, 0.7),
  'whoop-75': of(0.35, 0.5, 0.15, 1.2, 0.7),
  'ducted-2.5': of(0.4, 0.5, 0.1, 1.15, 0.6),
  'ducted-3': of(0.4, 0.5, 0.1, 1.15, 0.6),
  'open-3': of(0.2, 0.6, 0.2, 1.4, 0.6),
  'light-3.5': of(0.2, 0.65, 0.15, 1.4, 0.6),
  'freestyle-5': of(0.2, 0.6, 0.2, 1.5, 0.6),
  'race-5': of(0.05, 0.67, 0.28, 2.3, 0.7),
  'long-range-7': of(0.1, 0.85, 0.05, 1.25, 0.6),
  'lifter-10': of(0.4, 0.55, 0.05, 1.15, 0.6),
};

const plain = of(0.3, 0.55, 0.15, 1.3, 0.6);

export const habitOf = (craftClass: string | undefined): FlightHabit =>
  craftClass === undefined ? plain : (habits[craftClass] ?? plain);

/** Least and usual thrust-to-weight, static on a full pack with payload. Common practice. */
export interface ThrustTarget {
  readonly least: number;
  readonly usual: readonly [number, number];
}

const targets: Readonly<Record<string, ThrustTarget>> = {
  'whoop-65': { least: 2, usual: [2.5, 3.5] },
  'whoop-75': { least: 2, usual: [2.5, 4] },
  'ducted-2.5': { least: 2.2, usual: [2.5, 4] },
  'ducted-3': { least: 2.2, usual: [2.5, 4] },
  'open-3': { least: 4, usual: [5, 8] },
  'light-3.5': { least: 4, usual: [4, 7] },
  'freestyle-5': { least: 5, usual: [8, 12] },
  'race-5': { least: 8, usual: [11, 16] },
  'long-range-7': { least: 3, usual: [3.5, 6] },
  'lifter-10': { least: 2, usual: [2.2, 3.5] },
};

export const thrustTargetOf = (craftClass: string | undefined): ThrustTarget | undefined =>
  craftClass === undefined ? undefined : targets[craftClass];
