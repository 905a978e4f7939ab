/** Checks with a limit, on both sides of it: silent on the last value that is right, speaking on the first that is not. */
import { expect, it } from 'vitest';
import { analyseMarked } from '../support/marked';

const speaks = (id: string, body: string): boolean => {
  const { analysis } = analyseMarked(`\ndryfit: build\nname: Edge\n${body}`);
  expect(analysis.ran, `${id} has to run`).toContain(id);
  return analysis.findings.some((finding) => finding.check === id);
};

const parts = (yaml: string): string =>
  `parts:\n${yaml
    .split('; ')
    .map((line) => {
      const [path, value] = line.split(' = ') as [string, string];
      return path
        .split('.')
        .map((key, i, all) => `${'  '.repeat(i + 1)}${key}:${i === all.length - 1 ? ` ${value}` : ''}`)
        .join('\n');
    })
    .join('\n')}\n`;

const pack = (fields: string): string =>
  `packs:\n  main:\n${fields
    .split('; ')
    .map((line) => `    ${line.replace(' = ', ': ')}`)
    .join('\n')}\n`;

/** What is written around the value, the last right value, the first wrong one. */
const edges: readonly (readonly [id: string, body: (value: string) => string, right: string, wrong: string])[] = [
  ['esc-cells-exceeded', (v) => `${parts('esc.cells = 3S-6S')}${pack(`cells = ${v}`)}`, '6S', '7S'],
  ['esc-cells-exceeded', (v) => `${parts('esc.cells = 3S-6S')}${pack(`cells = ${v}`)}`, '3S', '2S'],
  [
    'flight-controller-voltage-wrong',
    (v) => `${parts(`flight-controller.input = 7 V - ${v}`)}${pack('cells = 6S')}`,
    '25.2 V',
    '25.1 V',
  ],
  [
    'flight-controller-voltage-wrong',
    (v) => `${parts(`flight-controller.input = ${v} - 30 V`)}${pack('cells = 3S')}`,
    '9.9 V',
    '10 V',
  ],
  ['capacitor-voltage-low', (v) => `${parts(`capacitor.voltage = ${v}`)}${pack('cells = 6S')}`, '37.8 V', '37.7 V'],
  ['balance-plug-differs', (v) => pack(`cells = 6S; balance-pins = ${v}`), '7', '8'],
  ['charger-cells-too-few', (v) => `${pack(`cells = ${v}`)}---\ndryfit: bench\ncharger:\n  cells: 1S-6S\n`, '6S', '7S'],
  [
    'charger-power-low',
    (v) => `${pack('cells = 6S; capacity = 1500 mAh')}---\ndryfit: bench\ncharger:\n  power: ${v}\n`,
    '38 W',
    '37 W',
  ],
  ['pack-rating-implausible', (v) => pack(`capacity = 1300 mAh; discharge = ${v}`), '120 C', '121 C'],
  ['pack-over-air-limit', (v) => pack(`cells = 6S; chemistry = LiPo; capacity = ${v}`), '4500 mAh', '4510 mAh'],
  [
    'cell-count-misread',
    (v) => `${pack('cells = 6S; chemistry = LiHV')}setup:\n  cell-full: ${v}\n`,
    '4.36 V',
    '4.35 V',
  ],
  ['landing-voltage-too-low', (v) => `${pack('chemistry = LiPo')}setup:\n  cell-landing: ${v}\n`, '3.0 V', '2.9 V'],
  ['pack-energy-differs', (v) => pack(`cells = 6S; capacity = 1300 mAh; energy = ${v}`), '26 Wh', '25.9 Wh'],
  ['motor-cells-exceeded', (v) => `${parts('motors.cells = 3S-4S')}${pack(`cells = ${v}`)}`, '4S', '5S'],
  [
    'propeller-tight-in-duct',
    (v) => `${parts(`frame.duct-diameter = ${v}; propellers.size = 40 mm, 3 blades`)}`,
    '41 mm',
    '40.9 mm',
  ],
  [
    'propeller-tight-in-duct',
    (v) => `${parts(`frame.duct-diameter = ${v}; propellers.size = 40 mm, 3 blades`)}`,
    '46 mm',
    '46.1 mm',
  ],
  [
    'propeller-too-large-for-frame',
    (v) => parts(`frame.largest-propeller = 5.1 in; propellers.size = ${v}x4x3`),
    '5.1',
    '5.2',
  ],
  [
    'pack-wider-than-plate',
    (v) => `${parts(`frame.battery-plate = 110x${v} mm`)}${pack('outside = 75x45x38 mm')}`,
    '35',
    '34.9',
  ],
  ['strap-too-short', (v) => `${parts(`strap.length = ${v}`)}${pack('outside = 75x40x40 mm')}`, '220 mm', '219 mm'],
  ['strap-wider-than-slots', (v) => parts(`frame.strap-width = 20 mm; strap.width = ${v}`), '20.5 mm', '20.6 mm'],
  [
    'propeller-nut-short-of-thread',
    (v) =>
      parts(`motors.shaft = M5; propellers.hub-thickness = ${v}`).replace(
        '    shaft: M5',
        '    shaft: M5\n    shaft-length: 14 mm',
      ),
    '9 mm',
    '9.1 mm',
  ],
  [
    'motor-wires-too-short',
    (v) => parts(`frame.wheelbase = 290 mm; motors.wire-length = ${v}; esc.type = 4-in-1`),
    '120 mm',
    '119 mm',
  ],
  ['camera-too-wide-for-cage', (v) => parts(`frame.camera-widths = 19 mm; camera.width = ${v}`), '19.5 mm', '19.6 mm'],
  [
    'receiver-antenna-length-off',
    (v) => parts(`receiver-antenna.band = 2.4 GHz`).replace('2.4 GHz', `2.4 GHz\n    arm-length: ${v}`),
    '35 mm',
    '36 mm',
  ],
  ['thin-air', (v) => `flight:\n  altitude: ${v}\n`, '850 m', '870 m'],
  ['current-scale-differs', (v) => `${parts('esc.sensor-scale = 200')}setup:\n  sensor-scale: ${v}\n`, '220', '221'],
  [
    'harness-too-short',
    (v) => parts('harness.distance = 40 mm').replace('40 mm', `40 mm\n    length: ${v}`),
    '55 mm',
    '54 mm',
  ],
  ['capacitor-too-slow', (v) => parts(`capacitor.leads = ${v}`), '20 mm', '21 mm'],
  ['flight-shares-off', (v) => `flight:\n  hover: 30 %\n  cruise: 60 %\n  punch: ${v}\n`, '11 %', '12 %'],
  [
    'logged-charge-above-capacity',
    (v) => `${pack('capacity = 1300 mAh')}flight:\n  logged:\n    used: ${v}\n`,
    '1326 mAh',
    '1327 mAh',
  ],
  [
    'transmitter-power-over-limit',
    (v) => `region: EU\n${parts(`video-transmitter.level = ${v}; video-antenna.gain = 2 dBi`)}`,
    '15.8 mW',
    '16.1 mW',
  ],
  ['channel-outside-profile', (v) => `region: EU\n${parts(`video-transmitter.channel = ${v} MHz`)}`, '5866', '5867'],
  ['channel-outside-profile', (v) => `region: EU\n${parts(`video-transmitter.channel = ${v} MHz`)}`, '5734', '5733'],
  ['propellers-too-few', (v) => parts(`motors.count = 4; propellers.count = ${v}`), '4', '3'],
  [
    'esc-wider-than-arm',
    (v) =>
      parts(`frame.arm-width = 14 mm; esc.outside = ${v}x32x6 mm`).replace(
        '    outside',
        '    type: single\n    outside',
      ),
    '18',
    '18.1',
  ],
  [
    'stack-too-tall',
    (v) =>
      parts(`frame.stack-height = ${v}`).replace(
        'parts:\n',
        'parts:\n  stack:\n    height: 20 mm\n    flight-controller:\n      grommets: yes\n    esc:\n      grommets: yes\n',
      ),
    '25 mm',
    '24.9 mm',
  ],
  [
    'video-draw-below-radio-power',
    (v) => parts(`video-transmitter.draw = ${v}`).replace(v, `${v}\n    level: 600 mW`),
    '1.2 W',
    '1.19 W',
  ],
];

it.each(
  edges.map(
    ([id, body, right, wrong]) => [`${id}: ${right} is right, ${wrong} is not`, id, body, right, wrong] as const,
  ),
)('%s', (_, id, body, right, wrong) => {
  expect(speaks(id, body(right)), `${id} on ${right}`).toBe(false);
  expect(speaks(id, body(wrong)), `${id} on ${wrong}`).toBe(true);
});
