/** Limits of voltages, currents and wires. */
import type { Craft, Pack } from '../../../server/src/build/craft';
import { worked } from '../../../server/src/plan/worked';
import { type Boundary, edge, turn } from './boundary';

const devices = ['action-camera', 'buzzer', 'camera', 'gps', 'lights', 'receiver', 'remote-id'] as const;
const sixCells = { 'packs.main.cells': '6S' };

/** A 9 V rail on what the device takes, and a pack of 25.2 V full and 19.8 V at landing (3.3 V a cell). */
const fed = (device: string): readonly Boundary[] => {
  const at = `parts.${device}.supply`;
  const check = `${device}-voltage-wrong`;
  const onRail = { ...sixCells, [`wiring.${device}.power`]: '9V' };
  const onBattery = { ...sixCells, [`wiring.${device}.power`]: 'battery' };
  return [
    edge(check, at, ['5 V - 9 V', 'silent'], ['5 V - 8.99 V', 'error'], onRail),
    edge(check, at, ['9 V - 12 V', 'silent'], ['9.01 V - 12 V', 'error'], onRail),
    edge(check, at, ['7 V - 25.2 V', 'silent'], ['7 V - 25.19 V', 'error'], onBattery),
    edge(check, at, ['19.8 V - 26 V', 'silent'], ['19.81 V - 26 V', 'warning'], onBattery),
  ];
};

/** A single figure names a rail, which is trimmed to a tenth: 10 V up to 11 V, down to 9 V. */
const trimmed = (device: string): readonly Boundary[] => [
  edge(`${device}-voltage-wrong`, `parts.${device}.supply`, ['10 V', 'silent'], ['10.01 V', 'error'], {
    [`wiring.${device}.power`]: '9V',
    ...sixCells,
  }),
];

/** A out of the pack and through one motor, at full throttle and, with its square, at a limit of the throttle. */
const limit = (craft: Craft): number => craft.said.flight?.['throttle-limit']?.value ?? 1;
const packPeak = (craft: Craft, pack: Pack | undefined): number =>
  worked(craft, pack, 'worked.pack-current')!.value.peak * limit(craft) ** 2;
const packMean = (craft: Craft, pack: Pack | undefined): number =>
  worked(craft, pack, 'worked.pack-current')!.value.mean!;
const motor = (craft: Craft, pack: Pack | undefined) => worked(craft, pack, 'worked.pack-motor-current')!.value;

/** K in five seconds: copper of 1.7241e-8 Ohm m (IEC 60028), 8960 kg/m³ and 385 J/(kg K), area by ASTM B258. */
function warming(amperes: number, gauge: number): number {
  const area = (Math.PI / 4) * (0.127e-3 * 92 ** ((36 - gauge) / 39)) ** 2;
  return ((amperes / area) ** 2 * 1.7241e-8 * 5) / (8960 * 385);
}
/** A, chassis column of the Handbook of Electronic Tables and Formulas, as reprinted. */
const carries: Readonly<Record<number, number>> = { 10: 55, 12: 41, 14: 32, 16: 22, 18: 16, 20: 11, 22: 7, 24: 3.5 };

const percent = (value: number): string => `${value.toFixed(1)} %`;

const ofEsc = { say: (value: number) => `${value.toFixed(2)} A`, silent: 90, found: 12, step: 0.01 };
const ofThrottle = { say: percent, silent: 30, found: 100, step: 0.1 };

export const power: readonly Boundary[] = [
  ...[...devices, 'video-transmitter'].flatMap(fed),
  ...trimmed('camera'),
  edge(
    'flight-controller-voltage-wrong',
    'parts.flight-controller.input',
    ['7 V - 25.2 V', 'silent'],
    ['7 V - 25.19 V', 'error'],
  ),
  edge(
    'flight-controller-voltage-wrong',
    'parts.flight-controller.input',
    ['9.9 V - 30 V', 'silent'],
    ['9.91 V - 30 V', 'warning'],
    {
      'packs.main.cells': '3S',
    },
  ),
  edge('flight-controller-voltage-wrong', 'packs.main.cells', ['4S', 'silent'], ['5S', 'error']),
  edge('flight-controller-voltage-wrong', 'packs.main.cells', ['4S', 'silent'], ['3S', 'warning'], {
    'parts.flight-controller.input': '4S-6S',
  }),
  edge('battery-on-signal-plug', 'parts.video-transmitter.socket.pins.3', ['TX', 'silent'], [undefined, 'warning']),
  // A rail is named to a tenth of a volt.
  edge('rail-unknown', 'wiring.video-transmitter.power', ['9V', 'silent'], ['9.1V', 'error']),
  // What takes 6 V at most is not meant for a pack.
  edge(
    'flight-controller-voltage-wrong',
    'parts.flight-controller.input',
    ['5 V - 6 V', 'not asked'],
    ['5 V - 6.01 V', 'error'],
  ),
  // A single cell feeds no step-down rail.
  edge('rail-drops-before-landing', 'packs.main.cells', ['1S', 'silent'], ['2S', 'warning']),
  edge('camera-supply-overloaded', 'parts.camera.current', ['300 mA', 'silent'], ['301 mA', 'warning']),
  // The same value in another unit: in binary 103 thousandths are a hair more than 0.103.
  edge('camera-supply-overloaded', 'parts.camera.current', ['103 mA', 'silent'], ['104 mA', 'warning'], {
    'parts.video-transmitter.camera-supply.current': '0.103 A',
  }),
  edge('capacitor-missing', 'packs.main.cells', ['2S', 'not asked'], ['3S', 'warning']),
  edge('capacitor-too-slow', 'parts.capacitor.leads', ['20 mm', 'silent'], ['20.1 mm', 'information']),
  // 25.2 V times 1.5, 1.3 and 1.1.
  edge('capacitor-voltage-low', 'parts.capacitor.voltage', ['37.8 V', 'silent'], ['37.79 V', 'information']),
  edge('capacitor-voltage-low', 'parts.capacitor.voltage', ['32.76 V', 'information'], ['32.75 V', 'warning']),
  edge('capacitor-voltage-low', 'parts.capacitor.voltage', ['27.72 V', 'warning'], ['27.71 V', 'error']),
  // A tenth of 179 either way.
  edge('current-scale-differs', 'setup.sensor-scale', ['196.9', 'silent'], ['197', 'warning']),
  edge('current-scale-differs', 'setup.sensor-scale', ['161.1', 'silent'], ['161', 'warning']),
  edge('lead-thicker-than-pads', 'parts.battery-lead.wire', ['14 AWG', 'silent'], ['13 AWG', 'information']),
  // 1 A at 13.2 V (four cells at landing) with 85 % are 11.22 W, 1.5 A 16.83 W.
  edge('harness-contact-overloaded', 'parts.video-transmitter.draw', ['11.22 W', 'silent'], ['11.23 W', 'information']),
  edge(
    'harness-contact-overloaded',
    'parts.video-transmitter.draw',
    ['16.83 W', 'information'],
    ['16.84 W', 'warning'],
  ),
  edge(
    'harness-contact-overloaded',
    'parts.video-transmitter.draw',
    ['22.44 W', 'silent'],
    ['22.45 W', 'information'],
    {
      'parts.harness.series': 'PH 2.0',
    },
  ),
  // One volt above the rail: 10 V from three cells, and 8.9 V from 9.9.
  edge('rail-drops-before-landing', 'packs.main.landing-voltage', ['3.34 V', 'silent'], ['3.33 V', 'warning']),
  edge(
    'rail-drops-before-landing',
    'parts.flight-controller.regulators.9V.voltage',
    ['8.9 V', 'silent'],
    ['8.91 V', 'warning'],
  ),
  // Twenty of 40 mA are four fifths of 1 A, of 50 mA all of it.
  edge('rail-overloaded', 'parts.lights.current-each', ['40 mA', 'silent'], ['40.1 mA', 'warning']),
  edge('rail-overloaded', 'parts.lights.current-each', ['50 mA', 'warning'], ['50.1 mA', 'error']),
  // 0.1 and 0.2 and 0.5 A.
  edge('rail-overloaded', 'parts.gps.current', ['100 mA', 'silent'], ['101 mA', 'warning'], {
    'parts.lights': undefined,
    'parts.gps.protocol': 'UBX',
    'parts.gps.supply': '5 V',
    'parts.receiver.current': '200 mA',
    'parts.receiver.supply': '5 V',
    'parts.camera.current': '500 mA',
    'parts.camera.supply': '5 V',
    'parts.camera.system': 'analog',
  }),
  edge('regulators-over-total', 'parts.flight-controller.regulators-total', ['16 W', 'silent'], ['15.99 W', 'warning']),
  edge(
    'regulators-over-total',
    'parts.flight-controller.regulators-total',
    ['20.25 W', 'silent'],
    ['20.24 W', 'warning'],
    {
      'parts.flight-controller.regulators.5V.current': '2 A',
      'parts.receiver.current': '850 mA',
      'parts.receiver.supply': '5 V',
    },
  ),
  turn('battery-plug-overloaded', 'flight.throttle-limit', {
    ...ofThrottle,
    // XT30: flown up to 45 A for seconds, with 15 % for the model; rated 15 A.
    broken: (craft, pack) => packPeak(craft, pack) > 1.15 * 45 || packMean(craft, pack) > 15,
  }),
  turn('battery-plug-overloaded', 'flight.throttle-limit', {
    ...ofThrottle,
    grave: 'warning',
    broken: (craft, pack) => packPeak(craft, pack) > 1.8 * 45,
  }),
  turn('battery-plug-overloaded', 'flight.throttle-limit', {
    ...ofThrottle,
    grave: 'error',
    broken: (craft, pack) => packPeak(craft, pack) > 2.2 * 45,
  }),
  turn('esc-current-too-low', 'parts.esc.current', {
    ...ofEsc,
    broken: (craft, pack) => motor(craft, pack).high > craft.roles.esc!.current!.value,
  }),
  turn('esc-current-too-low', 'parts.esc.current', {
    ...ofEsc,
    grave: 'warning',
    broken: (craft, pack) => motor(craft, pack).typical > craft.roles.esc!.current!.value,
  }),
  // A quarter above the rating for seconds; the range of the model is as wide below as above.
  turn('esc-current-too-low', 'parts.esc.current', {
    ...ofEsc,
    grave: 'error',
    broken: (craft, pack) => {
      const { typical, high } = motor(craft, pack);
      return (typical * typical) / high > 1.25 * craft.roles.esc!.current!.value;
    },
  }),
  turn('motor-current-too-high', 'parts.motors.peak-current', {
    say: (value) => `${value.toFixed(2)} A for 10 s`,
    silent: 90,
    found: 15,
    step: 0.01,
    broken: (craft, pack) => motor(craft, pack).typical > craft.roles.motors!['peak-current']!.value.current,
  }),
  turn('motor-current-too-high', 'parts.motors.peak-current', {
    say: (value) => `${value.toFixed(2)} A for 10 s`,
    silent: 90,
    found: 15,
    step: 0.01,
    grave: 'warning',
    broken: (craft, pack) => motor(craft, pack).typical > 1.15 * craft.roles.motors!['peak-current']!.value.current,
  }),
  turn('motor-power-too-high', 'parts.motors.peak-power', {
    say: (value) => `${value.toFixed(1)} W`,
    silent: 2000,
    found: 300,
    step: 0.1,
    broken: (craft, pack) => {
      const { full } = worked(craft, pack, 'worked.pack-values')!.value;
      return full.ok && full.value.escCurrent * full.value.busVoltage > craft.roles.motors!['peak-power']!.value;
    },
  }),
  turn('lead-too-thin', 'flight.throttle-limit', {
    with: { 'parts.battery-lead.wire': '14 AWG' },
    ...ofThrottle,
    broken: (craft, pack) => warming(packPeak(craft, pack), 14) > 60 || packMean(craft, pack) > 32,
  }),
  turn('lead-too-thin', 'flight.throttle-limit', {
    ...ofThrottle,
    grave: 'warning',
    with: { 'parts.battery-lead.wire': '16 AWG' },
    broken: (craft, pack) => warming(packPeak(craft, pack), 16) > 90,
  }),
  turn('lead-too-thin', 'flight.throttle-limit', {
    ...ofThrottle,
    grave: 'error',
    with: { 'parts.battery-lead.wire': '18 AWG' },
    broken: (craft, pack) => warming(packPeak(craft, pack), 18) > 150,
  }),
  // By the mean alone: at a third of the throttle no burst warms it.
  turn('lead-too-thin', 'parts.battery-lead.wire', {
    with: { 'flight.throttle-limit': '30 %' },
    say: (value) => `${value} AWG`,
    silent: 10,
    found: 24,
    step: 2,
    broken: (craft, pack) => {
      const gauge = craft.roles['battery-lead']!.wire!.value;
      return warming(packPeak(craft, pack), gauge) > 60 || packMean(craft, pack) > carries[gauge]!;
    },
  }),
  turn('lead-too-thin', 'parts.battery-lead.wire', {
    with: { 'flight.throttle-limit': '30 %' },
    say: (value) => `${value} AWG`,
    silent: 10,
    found: 24,
    step: 2,
    grave: 'warning',
    broken: (craft, pack) => packMean(craft, pack) > 1.25 * carries[craft.roles['battery-lead']!.wire!.value]!,
  }),
  // The old plug of single cells: 9 A for seconds.
  turn('battery-plug-overloaded', 'flight.throttle-limit', {
    ...ofThrottle,
    grave: 'warning',
    with: { 'parts.battery-lead.plug': 'PH2.0' },
    broken: (craft, pack) => packPeak(craft, pack) > 2 * 9,
  }),
  // A limit of the throttle lowers the current by its square.
  turn('motor-current-too-high', 'flight.throttle-limit', {
    ...ofThrottle,
    broken: (craft, pack) => motor(craft, pack).typical * limit(craft) ** 2 > 15,
  }),
  turn('motor-power-too-high', 'flight.throttle-limit', {
    ...ofThrottle,
    broken: (craft, pack) => {
      const { full } = worked(craft, pack, 'worked.pack-values')!.value;
      return full.ok && full.value.escCurrent * full.value.busVoltage * limit(craft) ** 2 > 300;
    },
  }),
  turn('esc-current-too-low', 'flight.throttle-limit', {
    ...ofThrottle,
    broken: (craft, pack) => motor(craft, pack).high * limit(craft) ** 2 > 20,
  }),
];
