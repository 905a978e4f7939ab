/** Words for what the physics reports as codes: why there is no figure, what to measure, what to know. Computes nothing. */

import type { Impossible, Measurement, Notice } from '../physics';
import { G } from '../physics/constants';

export function whyNot(result: Impossible): string {
  const { details } = result;
  switch (result.why) {
    case 'cannot-hover':
      return `It cannot hover: full throttle lifts less than its weight${details.fullThrust !== undefined && details.weight !== undefined ? ` (${Math.round((details.fullThrust / G) * 1000)} g of ${Math.round((details.weight / G) * 1000)} g)` : ''}. Make it lighter, or take larger propellers or another motor.`;
    case 'cannot-reach':
      return 'Full throttle gives less thrust than this way of flying asks for. Fly it gentler under `flight:`, or take more motor.';
    case 'cannot-turn':
      return 'The pack cannot turn these motors against their own losses. Check Kv, cells and the motor size.';
    case 'pack-cannot-deliver':
      return 'The pack cannot deliver this power at any voltage. Take a larger pack, or one with more cells.';
    case 'below-landing-voltage':
      return 'The loaded pack is below its landing voltage from the start. Take a larger or better pack.';
    case 'bad-input':
      return `A value is outside what any real part has${result.field ? ` (${result.field})` : ''}. Check it.`;
  }
}

/** The same for one motor on a stand, whose supply holds its voltage. */
export function whyNotOnStand(result: Impossible): string {
  const volts = (key: string): string =>
    result.details[key] === undefined ? '?' : `${result.details[key]!.toFixed(1)} V`;
  switch (result.why) {
    case 'cannot-reach':
      return `This motor cannot reach that thrust: it would need ${volts('voltageNeeded')} across it and the supply holds ${volts('busVoltage')}. Ask for less, or give more volts, more Kv or a larger propeller.`;
    case 'cannot-turn':
      return 'The motor does not turn at this throttle: the voltage across it does not cover its own losses. Give more throttle or more volts, or check the Kv.';
    case 'bad-input':
      return result.field === 'at'
        ? 'Nothing is asked for: throttle is above 0 % and at most 100 %, thrust is above zero.'
        : whyNot(result);
    default:
      return whyNot(result);
  }
}

/** The same in a few words, for a headline. */
export const briefWhyNot = (result: Impossible): string =>
  ({
    'cannot-hover': 'cannot hover',
    'cannot-reach': 'cannot fly as asked',
    'cannot-turn': 'the motors cannot turn',
    'pack-cannot-deliver': 'the pack cannot deliver',
    'below-landing-voltage': 'the pack is flat from the start',
    'bad-input': 'a value is off',
  })[result.why];

const measurements: Readonly<Record<Measurement, string>> = {
  'thrust-table': 'give a measured row of a thrust stand (`thrust-table`)',
  'motor-resistance': 'measure the motor winding (`resistance`)',
  'no-load-current': 'measure the motor without a propeller (`no-load-current`)',
  'motor-kv': "measure the motor's true Kv",
  controller: 'give a thrust-stand row at part throttle with the ESC you use',
  'pack-resistance': 'measure the pack (`cell-resistance`)',
  'pack-capacity': 'measure what the pack really holds (`capacity`)',
  'craft-mass': 'weigh the craft (`flight.weighed`)',
  'logged-flight': 'log a flight (`flight.logged`)',
};

export const measurementWords = (measure: Measurement): string => measurements[measure];

export function noticeWords(notice: Notice): string {
  const n = (key: string, digits = 1): string => {
    const value = notice.details[key];
    return typeof value === 'number' ? value.toFixed(digits) : String(value ?? '?');
  };
  const quantity = String(notice.details.quantity ?? '').replaceAll('-', ' ');
  switch (notice.code) {
    case 'pitch-ratio-outside-fit':
      return `The pitch is ${n('ratio', 2)} of the diameter, outside the propellers the model was made from (${n('low', 2)} to ${n('high', 2)}).`;
    case 'blades-outside-fit':
      return `Propellers with ${n('blades', 0)} blades are outside those the model was made from.`;
    case 'size-outside-fit':
      return `A ${n('inches')} in propeller is outside the sizes the model was made from, so the range is wide.`;
    case 'motor-outside-fit':
      return `Motors of this stator (${n('volume', 0)} mm³) are outside those the motor model was made from, so the range is wide.`;
    case 'small-propeller':
      return 'Below 4 in few propellers were measured, so the range is wide.';
    case 'duct-estimated':
      return 'What the duct adds is an estimate.';
    case 'coaxial-estimated':
      return 'What is lost by one propeller above the other is an estimate.';
    case 'tip-mach-high':
      return `The tips reach ${n('tipMach', 2)} of the speed of sound; real thrust falls behind the figure.`;
    case 'hover-throttle-low':
      return 'It hovers at very little throttle, where ESCs differ most.';
    case 'deep-sag':
      return `At full throttle a cell drops to ${n('cellVoltage', 2)} V; more throttle may then give less thrust.`;
    case 'landing-voltage-first':
      return 'The landing voltage ends the flight before the reserve does.';
    case 'row-contradicts-nameplate':
      return `Row ${Number(notice.details.row) + 1} of the thrust table with this propeller says ${quantity} ${n('measured', 2)}, the nameplate ${n('predicted', 2)}. Check the row.`;
    case 'log-contradicts-figures':
      return `The logged flight says ${quantity} ${n('measured', 2)}, the model ${n('predicted', 2)}. Check the log, or what the craft weighed then.`;
  }
}
