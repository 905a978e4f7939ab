/** An analog video transmitter or camera hangs on the battery without a filter. */
import { wiringOf } from '../../plan/feeds';
import { check } from '../check';

export default check({
  id: 'video-on-raw-battery',
  group: 'power',
  title: 'Analog picture fed straight from the battery',
  severity: 'warning',
  needs: { system: 'video-transmitter.system' },
  may: { filter: 'battery-lead.filter', capacitance: 'capacitor.capacitance', supplied: 'esc.capacitor-supplied' },
  when: (craft) => ['video-transmitter', 'camera'].some((device) => wiringOf(craft, device)?.power !== undefined),
  judge({ system, filter, capacitance, supplied }, craft) {
    if (system.value.toLowerCase() !== 'analog' || filter?.value === true) return undefined;
    const calm = capacitance !== undefined || supplied?.value === true;
    return ['video-transmitter', 'camera'].flatMap((device) => {
      const power = wiringOf(craft, device)?.power;
      if (!power || power.value.volts !== undefined) return [];
      return [
        {
          at: power,
          apart: device,
          severity: calm ? ('information' as const) : ('warning' as const),
          message: `The analog ${device.replace('-', ' ')} hangs on the battery without a filter${calm ? '; the capacitor helps a little' : ' and without a capacitor'}. Motor noise draws lines into the picture. Feed it from a 9 or 10 V rail, or add a coil filter.`,
        },
      ];
    });
  },
});

export const explanation = {
  why: 'The motors pull spikes and ripple onto the battery: lines in the picture, and in the worst case a dead unit.',
  remedy: 'Feed it from a 9 or 10 V rail, or put a coil filter and a capacitor before it.',
  source: 'the open flight controller connector standard discourages it, as reported',
  bad: `
dryfit: build
name: Example
parts:
  video-transmitter:
    system: analog
wiring:
  video-transmitter:
    power: «battery»
`,
  good: `
dryfit: build
name: Example
parts:
  video-transmitter:
    system: analog
wiring:
  video-transmitter:
    power: 9V
`,
};
