/** The battery plug is small for the current of this craft. */
import { plugLimits } from '../../plan/battery-plugs';
import { check } from '../check';
import { amperes } from '../words';

export default check({
  id: 'battery-plug-overloaded',
  group: 'power',
  title: 'Plug carries more than it is made for',
  severity: 'error',
  needs: { plug: 'battery-lead.plug', current: 'worked.pack-current' },
  may: { limit: 'flight.throttle-limit' },
  when: (craft) =>
    plugLimits(craft.roles['battery-lead']?.plug?.value) !== undefined ||
    craft.roles['battery-lead']?.plug === undefined,
  judge({ plug, current, limit }) {
    const limits = plugLimits(plug.value);
    if (!limits) return undefined;
    const peak = current.value.peak * Math.min(1, limit?.value ?? 1) ** 2;
    const mean = current.value.mean ?? 0;
    const base = { at: plug, with: [{ fact: current, says: `about ${amperes(peak)} at full throttle` }] };
    const drawn = `the model gives about ${amperes(peak)} at full throttle${mean > 0 ? ` and ${amperes(mean)} on average` : ''}`;
    const flown = `${plug.text} is flown up to about ${amperes(limits.continuous)} continuously and ${amperes(limits.short)} for seconds`;
    // The old 1S plug sags and discolours long before it burns; many still fly it.
    const small = plug.value === 'PH2.0';
    if (!small && (peak > 2.2 * limits.short || mean > 1.2 * limits.continuous))
      return {
        ...base,
        danger: 'fire',
        message: `${flown}; ${drawn}. It overheats and melts. Use ${limits.next} on craft and packs.`,
      };
    if (peak > (small ? 2 : 1.8) * limits.short)
      return {
        ...base,
        severity: 'warning',
        message: `${flown}; ${drawn}. It gets hot and the voltage sags. Use ${limits.next} on craft and packs.`,
      };
    if (peak > 1.15 * limits.short || mean > limits.rated)
      return {
        ...base,
        severity: 'information',
        message: `${flown}, its maker says ${amperes(limits.rated)}; ${drawn}. Many fly it so; feel how warm it is after a hard flight. ${limits.next} has more to spare.`,
      };
    return undefined;
  },
});

export const explanation = {
  why: 'A plug above its current gets hot, loses spring force and melts its shell; the voltage sags with it.',
  remedy: 'Use the next larger plug on craft and packs.',
  source: "makers' ratings as reported, and what the trade flies: common practice; currents from the model",
  bad: `
dryfit: build
name: Example
parts:
  motors:
    stator: 2207
    kv: 1850
  propellers:
    size: 5.1x4.3x3
  battery-lead:
    plug: «XT30»
packs:
  main:
    cells: 6S
    capacity: 1300 mAh
`,
  good: `
dryfit: build
name: Example
parts:
  motors:
    stator: 2207
    kv: 1850
  propellers:
    size: 5.1x4.3x3
  battery-lead:
    plug: XT90
packs:
  main:
    cells: 6S
    capacity: 1300 mAh
`,
};
