/** What the rest of the program may use of the physics. It must not contain anything but names. */
export { type Air, airAt } from './air';
export { type Basis, type Figure, STATED_COVERAGE, type Unit } from './bands';
export { type Chemistry, estimatedResistance, landingVoltage, openVoltage, type PackInput } from './battery';
export type {
  CraftInput,
  CraftPackInput,
  FlightMix,
  LoggedFlight,
  MotorsInput,
  PropellerInput,
  ThrustRow,
} from './craft';
export { type ChargePoint, dischargeCurve, type ThrottlePoint, throttleCurve } from './craft-curves';
export {
  type CraftFigures,
  type FlightFigures,
  figures,
  type Measurement,
  type Narrowing,
  type PointFigures,
  values,
} from './craft-figures';
export type { CraftValues, FlightValues, PointValues } from './craft-values';
export { discArea, idealHoverPower, inducedSpeed } from './hover';
export type { Known, Trust } from './known';
export { centreOfMass, type PlacedMass, type Range, totalMass } from './mass';
export type { Notice, NoticeCode } from './notices';
export {
  operatingPoint,
  type PointInput,
  type PointValuesOnStand,
  pointValues,
  type StandFigures,
  type StandPoint,
} from './point-figures';
export type { Blade } from './propeller';
export {
  dBmOfWatts,
  eirp,
  freeSpaceLoss,
  freeSpaceRange,
  type Polarisation,
  polarisationLoss,
  wattsOfDBm,
} from './radio';
export type { Impossible, Outcome, Why } from './result';
export { adiabaticRise, wireArea, wireDiameter, wireResistancePerMetre } from './wire';
