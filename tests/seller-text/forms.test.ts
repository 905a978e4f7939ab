/** Forms in which sellers write, one by one: what is read from each, and what must not be. */
import { describe, expect, it } from 'vitest';
import { proposeFields } from '../../server/src/library/seller-text/propose';

const today = '2026-11-26';

const plain = (value: unknown): unknown =>
  typeof value === 'string' ? value.replace(/ \(seller [\d-]+\)$/, '') : value;

const read = (kind: string, text: string): Record<string, unknown> =>
  Object.fromEntries(proposeFields(kind, text, today).fields.map((one) => [one.path, plain(one.value)]));

type Case = readonly [kind: string, text: string, fields: Record<string, unknown>];

const rail = (voltage: string, current: string) => ({ voltage, current });

const told = 'reads %s: %j';

describe('what parts a label from its value', () => {
  it.each<Case>([
    ['motor', 'Weight ........ 31.2 g', { weight: '31.2 g' }],
    ['motor', 'Weight ____ 31.2 g', { weight: '31.2 g' }],
    ['motor', 'Weight … 31.2 g', { weight: '31.2 g' }],
    ['motor', 'Weight → 31.2 g', { weight: '31.2 g' }],
    ['motor', 'Weight | 31.2 g', { weight: '31.2 g' }],
    ['motor', 'Osprel\nnew\nWeight - 31.2 g', { weight: '31.2 g' }],
    ['motor', 'Weight:31.2g', { weight: '31.2 g' }],
    ['motor', 'Weight：31.2g', { weight: '31.2 g' }],
    ['motor', 'Weight（with wires）：31.2g', { weight: '31.2 g' }],
    ['motor', 'Weight(Incl.Cable):31.2g', { weight: '31.2 g' }],
    ['motor', 'Rated Voltage(Lipo):4S', { cells: '4S' }],
    ['motor', 'Idle Current(10V)：1.1A', { 'no-load-current': '1.1 A' }],
    ['motor', '★ Weight: 31.2 g', { weight: '31.2 g' }],
    ['motor', '3) Weight: 31.2 g', { weight: '31.2 g' }],
    ['camera', 'Image format: 4:3', { ratio: '4:3' }],
  ])(told, (kind, text, fields) => expect(read(kind, text)).toEqual(fields));
});

describe('a limit and its time', () => {
  it.each<Case>([
    ['motor', 'Max continuous current (60S):36A', { 'peak-current': '36 A for 60 s' }],
    ['motor', 'Max current (10s): 36A', { 'peak-current': '36 A for 10 s' }],
    // Ten of a capital S may be cells.
    ['motor', 'Max current (6S): 36A', { 'peak-current': '36 A' }],
    ['esc', '45A continuous per motor, 55A burst (10 s)', { current: '45 A', burst: '55 A for 10 s' }],
    ['esc', '50 A Dauerstrom, 60 A kurzzeitig', { current: '50 A', burst: '60 A' }],
  ])(told, (kind, text, fields) => expect(read(kind, text)).toEqual(fields));
});

describe('what stands in several lines', () => {
  it.each<Case>([
    ['motor', 'Stator Diameter:23mm\nStator Height :6mm', { stator: '2306' }],
    [
      'flight-controller',
      'BEC 5V .... 3A\nBEC 9V .... 2A',
      { regulators: { '5V': rail('5 V', '3 A'), '9V': rail('9 V', '2 A') } },
    ],
    ['flight-controller', '5V output: 3A', { regulators: { '5V': rail('5 V', '3 A') } }],
  ])(told, (kind, text, fields) => expect(read(kind, text)).toEqual(fields));
});

describe('labels of the trade', () => {
  it.each<Case>([
    ['motor', 'Mounting hole :12*12mm  M2', { mount: '12x12 M2' }],
    ['motor', 'Lead: 22AWG#120mm', { wire: '22 AWG', 'wire-length': '120 mm' }],
    ['motor', 'Max Watts: 640W', { 'peak-power': '640 W' }],
    ['propeller', 'Center bore: 0.197 in (M5)', { bore: 'M5' }],
    ['battery', 'Kabelquerschnitt: 14 AWG', { wire: '14 AWG' }],
    ['battery', 'Max. Ladestrom: 3C', { 'charge-limit': '3 C' }],
    ['battery', 'Kurzzeitige Belastung: 150C', { 'burst-discharge': '150 C' }],
    ['video-antenna', 'Longitud total: 64 mm', { length: '64 mm' }],
    ['camera', 'Système vidéo : PAL / NTSC', { standard: 'switchable' }],
    ['receiver', 'Frequency:2400-2480MHz', { band: ['2.4 GHz'] }],
    ['receiver', 'Frequency: 2.4GHz / 902-928MHz', { band: ['2.4 GHz', '915 MHz'] }],
    ['receiver', 'Band: 863-870 MHz', { band: ['868 MHz'] }],
    [
      'frame',
      'Flight stack mounting\t20 x 20 mm (M2) and 25.5 x 25.5 mm (M2)',
      { 'stack-mounts': ['20x20 M2', '25.5x25.5 M2'] },
    ],
    ['frame', 'Motor mounting\t12 x 12 mm, M2', { 'motor-mounts': ['12x12 M2'] }],
    ['flight-controller', 'ESC connector: 8-pin JST-SH 1.0 mm', { 'esc-socket': { series: 'SH 1.0', contacts: '8' } }],
    ['flight-controller', 'Black box: 8 MB', { 'log-storage': '8 MB' }],
    [
      'flight-controller',
      'Mounting: 20 x 20 mm, M2 (3 mm holes + grommets)',
      { mount: '20x20 M2', hole: '3 mm', grommets: 'yes' },
    ],
    ['flight-controller', 'USB: Type-C', { usb: 'yes' }],
    ['flight-controller', 'USB ...... USB-C', { usb: 'yes' }],
  ])(told, (kind, text, fields) => expect(read(kind, text)).toEqual(fields));
});

describe('figures without a label', () => {
  it.each<Case>([
    ['esc', 'Ready for DShot300/600', { protocols: ['DShot300', 'DShot600'] }],
    ['esc', '- 38.2×36.0mm, only 6.4mm high', { outside: '38.2x36.0x6.4 mm' }],
    ['esc', '- 11.5g', { weight: '11.5 g' }],
    ['esc', 'Current sensor: yes, scale 180', { 'current-sensor': 'yes', 'sensor-scale': '180' }],
    ['esc', 'Low-ESR 470µF 35V capacitor in the box', { 'capacitor-supplied': 'yes' }],
    [
      'esc',
      'Package includes:\n- 1x 35V 470µF capacitor\n- 4x M3 silicone grommets',
      { 'capacitor-supplied': 'yes', grommets: 'yes' },
    ],
    [
      'esc',
      '20*20mm mounting, Φ3mm holes with soft grommets for M2',
      { mount: '20x20 M2', hole: '3 mm', grommets: 'yes' },
    ],
    ['propeller', 'Rill props, set of 8', { pieces: '8' }],
    [
      'video-transmitter',
      'It switches between 25, 100 and 400 mW from the radio.',
      { levels: ['25 mW', '100 mW', '400 mW'] },
    ],
    ['video-transmitter', 'It takes anything from 7 to 21 volts straight from the pack.', { supply: '7 V - 21 V' }],
    ['video-transmitter', 'At full power it draws about 500 mA at 12 V.', { draw: '6 W' }],
    [
      'video-transmitter',
      'It hands 5 V at up to 500 mA back to your camera.',
      { 'camera-supply': rail('5 V', '500 mA') },
    ],
    ['video-transmitter', 'It bolts to a 25.5x25.5mm pattern with M2 screws.', { mount: ['25.5x25.5 M2'] }],
    ['video-transmitter', 'The antenna socket is an MMCX.', { 'antenna-plug': 'MMCX' }],
    ['video-transmitter', 'The board measures 30 by 30 by 5.5 millimetres.', { outside: '30x30x5.5 mm' }],
    ['receiver', 'PACKAGE INCLUDES:1pc receiver,1pc T-antenna', { 'antenna-supplied': 'yes' }],
    ['battery-lead', 'An 80mm length of AWG#14 wire', { wire: '14 AWG', length: '80 mm' }],
    ['battery-lead', '80mm of AWG#14 silicone wire', { length: '80 mm', wire: '14 AWG' }],
    ['frame', 'Fits up to 3.5" props', { 'largest-propeller': '3.5 in' }],
  ])(told, (kind, text, fields) => expect(read(kind, text)).toEqual(fields));
});

describe('ranges in many tongues', () => {
  it.each(['4.5 à 24 V', '4,5 bis 24 V', '4.5 a 24 V', '4.5 to 24V', '4.5~24V', '4.5–24 V', 'between 4.5 and 24 V'])(
    'reads %s',
    (said) => expect(read('camera', `Input voltage: ${said}`)).toEqual({ supply: '4.5 V - 24 V' }),
  );
});

describe('what says nothing about the field', () => {
  it.each<readonly [kind: string, text: string, ...fields: string[]]>([
    ['video-transmitter', 'At full power it draws about 850 mA at 12 V.', 'supply'],
    ['camera', 'Power: 90 mA @ 5V', 'supply'],
    ['camera', 'Alimentation : 90 mA sous 5 V', 'supply'],
    ['camera', 'Versorgung: 90 mA bei 5 V', 'supply'],
    ['camera', 'System: PAL', 'system'],
    ['frame', 'Geometry: Squashed X', 'geometry'],
    ['frame', 'Geometry: wide X', 'geometry'],
    ['frame', 'Geometry: Hybrid-X', 'geometry'],
    ['flight-controller', 'Comes with a USB-C to USB-A cable', 'usb'],
    ['esc', 'No capacitor included', 'capacitor-supplied'],
    ['esc', 'Capacitor (sold separately)', 'capacitor-supplied'],
    ['esc', 'Recommended motor: 30A continuous', 'current'],
    ['esc', '48 kHz PWM', 'protocols'],
    ['esc', 'Package includes:\n1x XT30 pigtail 16AWG 60mm', 'pads', 'weight', 'outside'],
    ['receiver', 'Package includes:\n1x antenna connector adapter', 'antenna-supplied'],
    ['receiver', 'Protocol: CRSF, SBUS', 'protocol'],
    ['motor', 'Motor Size(Dia.*Len):φ27.6*32.3mm', 'outside', 'stator'],
    ['motor', 'Weight: 30-32 g', 'weight'],
    ['motor', 'Weight (g): 30-32', 'weight'],
    ['motor', 'KV: 1700-1800KV', 'kv'],
    ['video-transmitter', 'Power: 25-800 mW', 'levels'],
    ['battery', 'Charge rate: 1C-5C', 'charge-limit'],
    ['propeller', 'Set of 2 pairs', 'pieces'],
    ['capacitor', 'Weight: 16g incl. cap', 'weight'],
  ])('%s, %j', (kind, text, ...fields) => {
    const found = read(kind, text);
    for (const field of fields) expect(found).not.toHaveProperty(field);
  });

  it.each([
    ['Weight: 33.8±0.5g', '33.8 g'],
    ['Weight: 33.8g ±0.5g', '33.8 g'],
  ])('a tolerance (%s)', (text, weight) => expect(read('motor', text)).toEqual({ weight }));
});

describe('what brackets deny', () => {
  it.each([
    ['Química: LiPo (LiHV no)', 'LiPo'],
    ['Chemistry: LiPo (not Li-ion)', 'LiPo'],
    ['Chemistry: LiPo (high voltage, LiHV)', 'LiHV'],
  ])('%s', (text, chemistry) => expect(read('battery', text)).toMatchObject({ chemistry }));
});

describe('the name', () => {
  it.each([
    ['Rill 3 flight controller\nMCU: F405', 'Rill 3 flight controller'],
    [
      'Meet the Rill Beacon 400, a small analog video transmitter that has been flown for two winters by all of us here.',
      'Rill Beacon 400',
    ],
    [
      'NOW! The all-new Rill B45 4in1 is the best that we have ever made, and we have made a good many of them!',
      'Rill B45 4in1',
    ],
  ])('stands in %j', (text, name) => expect(proposeFields('video-transmitter', text, today).name).toBe(name));
});

it('takes a line about the ESC for no heading of a board', () => {
  const text = 'FC\nMCU: F722\nESC connector: 8-pin JST-SH\nMounting: 30.5x30.5 M3\nESC\nCurrent: 50A';
  expect(read('stack', text)).toMatchObject({ 'flight-controller.mount': '30.5x30.5 M3', 'esc.current': '50 A' });
});
