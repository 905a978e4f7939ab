/** The motors draw more at full throttle than a channel of the ESC stands. */
import { check } from '../check';
import { amperes, apart } from '../words';

/** An ESC without a burst rating still stands a little more for the seconds of a punch. Common practice. */
const bareBurst = 1.25;

export default check({
  id: 'esc-current-too-low',
  group: 'power',
  title: 'Motor draws more than the ESC gives',
  severity: 'error',
  danger: 'fire',
  needs: { rating: 'esc.current', drawn: 'worked.pack-motor-current' },
  may: { burst: 'esc.burst', limit: 'flight.throttle-limit' },
  judge({ rating, drawn, burst, limit }) {
    // Current falls a little faster than the square of the output.
    const share = Math.min(1, limit?.value ?? 1) ** 2;
    const typical = drawn.value.typical * share;
    // Far below the rating the width of the range decides nothing.
    if (typical < 0.5 * rating.value) return undefined;
    const high = drawn.value.high * share;
    // The range of the model is as wide below as above.
    const low = typical ** 2 / high;
    const short = Math.max(burst?.value.current ?? rating.value * bareBurst, rating.value);
    const shortWords = burst
      ? `${amperes(burst.value.current)}${burst.value.duration ? ` for ${Number(burst.value.duration.toFixed(0))} s` : ' for a short time'}`
      : '';
    const [allowed, usual] = apart(amperes, rating.value, typical);
    const most = amperes(high) === allowed ? apart(amperes, high, rating.value)[0] : amperes(high);
    const rated = `A channel of the ESC is rated for ${allowed}${shortWords ? `, ${shortWords}` : ''}`;
    const model = `the model gives about ${usual}, up to ${most}, for one motor at full throttle on a full pack${share < 1 ? ' with the throttle limit' : ''}`;
    const base = {
      at: rating,
      with: [{ fact: drawn, says: `this motor with its propeller draws about ${amperes(typical)}` }],
    };
    if (low > short)
      return {
        ...base,
        message: `${rated}; ${model}. It will overheat and fail. Use an ESC for ${amperes(Math.ceil(high / 5) * 5)} or more, a flatter propeller, or fewer cells.`,
      };
    if (typical > short)
      return {
        ...base,
        severity: 'warning',
        danger: undefined,
        message: `${rated}; ${model}. That is more than it stands even for a short time, unless the model is high by a good deal. Use an ESC for ${amperes(Math.ceil(high / 5) * 5)}, or a flatter propeller.`,
      };
    if (typical > rating.value)
      return {
        ...base,
        severity: 'warning',
        danger: undefined,
        message: `${rated}; ${model}. It stands that for a punch, not for longer. Use an ESC for ${amperes(Math.ceil(high / 5) * 5)}, or a flatter propeller.`,
      };
    if (high > rating.value)
      return {
        ...base,
        severity: 'information',
        danger: undefined,
        message: `${rated}; ${model}. There is little in reserve. A thrust table in the motor's entry would tell more exactly.`,
      };
    return undefined;
  },
});

export const explanation = {
  why: 'Transistors above their current overheat within seconds and fail shorted; the motor stops in the air.',
  remedy: 'Take an ESC with more current a channel, a smaller or flatter propeller, a lower Kv or fewer cells.',
  source:
    'modelled current of this motor, propeller and pack at full throttle; burst of a quarter above the rating where none is named: common practice',
  bad: `
dryfit: build
name: Small ESC
craft: freestyle-5
parts:
  motors:
    stator: 2207
    kv: 1850
    weight: 32 g
  propellers:
    size: 5.1x4.3x3
  esc:
    type: 4-in-1
    current: «20 A»
packs:
  main:
    cells: 6S
    capacity: 1300 mAh
    chemistry: LiPo
`,
  good: `
dryfit: build
name: ESC with reserve
craft: freestyle-5
parts:
  motors:
    stator: 2207
    kv: 1850
    weight: 32 g
  propellers:
    size: 5.1x4.3x3
  esc:
    type: 4-in-1
    current: 60 A
packs:
  main:
    cells: 6S
    capacity: 1300 mAh
    chemistry: LiPo
`,
};
