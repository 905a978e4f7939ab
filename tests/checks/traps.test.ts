/** What catches people out in this trade, each as a build: what must be found, how gravely, and what must not be found. */
import { describe, expect, it } from 'vitest';
import type { Finding } from '../../server/src/build/finding';
import { channelNames, channelOf, channelsInside } from '../../server/src/plan/video-channels';
import { analyseMarked } from '../support/marked';

const found = (body: string, id: string): readonly Finding[] =>
  analyseMarked(`\ndryfit: build\nname: Trap\n${body}`).analysis.findings.filter((one) => one.check === id);
const severity = (body: string, id: string): string => found(body, id)[0]?.severity ?? 'silent';

describe('hole patterns', () => {
  const boards = (frame: string, board: string, rest = ''): string =>
    `parts:\n  frame:\n    stack-mounts: ${frame}\n  flight-controller:\n    mount: ${board}\n${rest}`;
  it.each([
    ['30.5x30.5 M3', '30x30 M3', 'silent'],
    ['30x30 M3', '30.5x30.5 M3', 'silent'],
    ['25.5x25.5 M2', '25x25 M2', 'silent'],
    ['25.5x25.5 M2', '26x26 M2', 'warning'],
    ['26x26 M2', '25.5x25.5 M2', 'warning'],
    ['30.5x30.5 M3', '26x26 M2', 'error'],
    ['20x20 M2', '25x25 M2', 'error'],
  ])('frame %s, board %s: %s', (frame, board, expected) => {
    expect(severity(boards(frame, board), 'flight-controller-holes-off-frame')).toBe(expected);
  });

  it('takes a second bay and a plate for a place', () => {
    expect(
      severity(
        boards('30.5x30.5 M3', '20x20 M2').replace(
          'stack-mounts: 30.5x30.5 M3',
          'stack-mounts: 30.5x30.5 M3\n    rear-mounts: 20x20 M2',
        ),
        'flight-controller-holes-off-frame',
      ),
    ).toBe('silent');
    expect(
      severity(
        boards(
          '30.5x30.5 M3',
          '20x20 M2',
          '  adapters:\n    plate:\n      type: plate\n      takes: 30.5x30.5\n      gives: 20x20\n',
        ),
        'flight-controller-holes-off-frame',
      ),
    ).toBe('silent');
  });

  it.each([
    ['16x16 M3', '16x16 M3', 'silent'],
    ['16x19 M3', '16x16 M3', 'error'],
    ['16x19 M3', '16-19 M3', 'silent'],
    ['19x16 M3', '16x19 M3', 'silent'],
    ['19x19 M3', '16-19 M3', 'silent'],
    ['12x12 M2', '16-19 M3', 'error'],
    ['3 holes on 6.6 mm M1.4', '3 holes on 6.6 mm M1.4', 'silent'],
    ['3 holes on 6.6 mm M1.4', '9x9 M2', 'error'],
    ['16x16 M3', '12x12 M2, 16x16 M3', 'silent'],
  ])('motor %s on an arm with %s: %s', (motor, arm, expected) => {
    expect(
      severity(`parts:\n  frame:\n    motor-mounts: ${arm}\n  motors:\n    mount: ${motor}\n`, 'motor-holes-off-arm'),
    ).toBe(expected);
  });
});

describe('motor screws, by arm and length', () => {
  const screw = (arm: string, length: string, more = ''): string =>
    `parts:\n  frame:\n    arm-thickness: ${arm}\n  motors:\n    mount: 16x16 M3\n    thread-depth: 4 mm\n    screws: ${length}\n${more}`;
  it.each([
    ['5 mm', 'M3x8', 'silent', 'silent'],
    ['5 mm', 'M3x10', 'error', 'silent'],
    ['6 mm', 'M3x8', 'silent', 'warning'],
    ['6 mm', 'M3x10', 'silent', 'silent'],
    ['4 mm', 'M3x8', 'silent', 'silent'],
    ['4 mm', 'M3x6', 'silent', 'warning'],
    ['5 mm', 'M3x6', 'silent', 'error'],
  ])('%s arm, %s', (arm, length, deep, short) => {
    expect(severity(screw(arm, length), 'motor-screw-into-winding')).toBe(deep);
    expect(severity(screw(arm, length), 'motor-screw-too-short')).toBe(short);
  });

  it('counts washers whole and soft pads by half', () => {
    expect(severity(screw('5 mm', 'M3x10', '    washer: 1 mm\n'), 'motor-screw-into-winding')).toBe('silent');
    expect(severity(screw('5 mm', 'M3x10', '    soft-mount: 1 mm\n'), 'motor-screw-into-winding')).toBe('error');
    expect(severity(screw('5 mm', 'M3x10', '    soft-mount: 2 mm\n'), 'motor-screw-into-winding')).toBe('silent');
  });

  it('only warns where the depth of the thread was assumed, and says so', () => {
    const [finding] = found(screw('5 mm', 'M3x10').replace('    thread-depth: 4 mm\n', ''), 'motor-screw-into-winding');
    expect(finding?.severity).toBe('warning');
    expect(finding?.message).toMatch(/thread-depth/);
  });
});

describe('tips of neighbouring propellers on a true X', () => {
  const gap = (wheelbase: string, size: string): string =>
    severity(
      `parts:\n  frame:\n    wheelbase: ${wheelbase}\n    geometry: x\n  propellers:\n    size: ${size}\n`,
      'propeller-tips-meet',
    );
  it.each([
    ['210 mm', '5.1x3.6x3', 'silent'],
    ['183 mm', '5.1x3.6x3', 'error'],
    ['200 mm', '5.1x3.6x3', 'silent'],
    ['189 mm', '5.1x3.6x3', 'warning'],
    ['65 mm', '31 mm, 3 blades', 'silent'],
    ['75 mm', '40 mm, 3 blades', 'silent'],
    ['295 mm', '7x4x2', 'silent'],
  ])('%s and %s: %s', (wheelbase, size, expected) => {
    expect(gap(wheelbase, size)).toBe(expected);
  });

  it('believes positions more than the diagonal, and leaves motors above one another alone', () => {
    const at = (positions: string): string =>
      severity(
        `parts:\n  frame:\n    wheelbase: 183 mm\n    motor-positions:\n${positions}  propellers:\n    size: 5.1x3.6x3\n`,
        'propeller-tips-meet',
      );
    const row = (text: string): string => `      - ${text}\n`;
    expect(
      at(
        ['70 mm forward, 70 mm right', '70 mm forward, 70 mm left', '70 mm back, 70 mm right', '70 mm back, 70 mm left']
          .map(row)
          .join(''),
      ),
    ).toBe('silent');
    expect(
      at(
        ['70 mm forward, 70 mm right', '70 mm forward, 50 mm left', '70 mm back, 70 mm right', '70 mm back, 70 mm left']
          .map(row)
          .join(''),
      ),
    ).toBe('error');
    expect(
      at(
        [
          '70 mm forward, 70 mm right',
          '70 mm forward, 70 mm right, 30 mm down',
          '70 mm back, 70 mm right',
          '70 mm back, 70 mm left',
        ]
          .map(row)
          .join(''),
      ),
    ).toBe('silent');
  });

  it('says nothing of a stretched frame from its diagonal alone', () => {
    const { analysis } = analyseMarked(
      '\ndryfit: build\nname: Trap\nparts:\n  frame:\n    wheelbase: 183 mm\n    geometry: dead-cat\n  propellers:\n    size: 5.1x3.6x3\n',
    );
    expect(analysis.ran).not.toContain('propeller-tips-meet');
    expect(analysis.notChecked).toContainEqual({ check: 'propeller-tips-meet', missing: ['frame.motor-positions'] });
  });
});

describe('full voltage by chemistry', () => {
  const esc = (cells: string, chemistry: string, rating: string): string =>
    severity(
      `parts:\n  esc:\n    ${rating}\npacks:\n  main:\n    cells: ${cells}\n    chemistry: ${chemistry}\n`,
      'esc-cells-exceeded',
    );
  it('a rating in cells promises 4.20 V a cell', () => {
    expect(esc('6S', 'LiPo', 'cells: 3S-6S')).toBe('silent');
    expect(esc('6S', 'LiHV', 'cells: 3S-6S')).toBe('warning');
    expect(esc('6S', 'LiHV', 'cells: 3S-6S\n    voltage-limit: 26.5 V')).toBe('silent');
    expect(esc('6S', 'LiHV', 'cells: 3S-6S\n    voltage-limit: 26 V')).toBe('error');
    expect(esc('6S', 'LiPo', 'cells: 3S-4S')).toBe('error');
  });

  const unit = (supply: string, cells: string, chemistry: string): string =>
    severity(
      `parts:\n  video-transmitter:\n    supply: ${supply}\npacks:\n  main:\n    cells: ${cells}\n    chemistry: ${chemistry}\nwiring:\n  video-transmitter:\n    power: battery\n`,
      'video-transmitter-voltage-wrong',
    );
  it('a range in cells says nothing of high-voltage packs, one in volts does', () => {
    expect(unit('2S-6S', '6S', 'LiPo')).toBe('silent');
    expect(unit('2S-6S', '6S', 'LiHV')).toBe('warning');
    expect(unit('7 V - 26.2 V', '6S', 'LiHV')).toBe('silent');
    expect(unit('7 V - 26 V', '6S', 'LiHV')).toBe('error');
    expect(unit('7 V - 26 V', '2S', 'LiPo')).toBe('warning');
  });

  it.each([
    ['6S', 'LiPo', '25 V', 'error'],
    ['6S', 'LiPo', '35 V', 'information'],
    ['6S', 'LiHV', '35 V', 'information'],
    ['8S', 'LiPo', '35 V', 'error'],
    ['6S', 'LiPo', '50 V', 'silent'],
    ['8S', 'LiPo', '50 V', 'information'],
    ['4S', 'LiPo', '35 V', 'silent'],
  ])('%s %s and a capacitor of %s: %s', (cells, chemistry, rated, expected) => {
    expect(
      severity(
        `parts:\n  capacitor:\n    voltage: ${rated}\npacks:\n  main:\n    cells: ${cells}\n    chemistry: ${chemistry}\n`,
        'capacitor-voltage-low',
      ),
    ).toBe(expected);
  });

  it.each([
    ['4S', 'LiPo', 'silent'],
    ['4S', 'LiHV', 'information'],
    ['6S', 'LiPo', 'silent'],
    ['6S', 'LiHV', 'information'],
    ['1S', 'LiHV', 'information'],
    ['1S', 'LiPo', 'silent'],
  ])('firmware that guesses the cells of a full %s %s pack: %s', (cells, chemistry, expected) => {
    expect(severity(`packs:\n  main:\n    cells: ${cells}\n    chemistry: ${chemistry}\n`, 'cell-count-misread')).toBe(
      expected,
    );
  });
});

describe('energy of packs', () => {
  it.each([
    ['6S', 'LiPo', '1300 mAh', 'silent'],
    ['6S', 'LiPo', '4500 mAh', 'silent'],
    ['6S', 'LiHV', '4500 mAh', 'information'],
    ['6S', 'LiPo', '5000 mAh', 'information'],
    ['6S', 'LiPo', '7200 mAh', 'information'],
    ['6S', 'LiPo', '7300 mAh', 'information'],
    ['8S', 'LiPo', '3300 mAh', 'silent'],
  ])('%s %s %s: %s', (cells, chemistry, capacity, expected) => {
    expect(
      severity(
        `packs:\n  main:\n    cells: ${cells}\n    chemistry: ${chemistry}\n    capacity: ${capacity}\n`,
        'pack-over-air-limit',
      ),
    ).toBe(expected);
  });
});

describe('antenna plugs', () => {
  const plug = (antenna: string, transmitter: string): Finding | undefined =>
    found(
      `parts:\n  video-transmitter:\n    antenna-plug: ${transmitter}\n  video-antenna:\n    plug: ${antenna}\n`,
      'antenna-plug-differs',
    )[0];
  it.each([
    ['SMA plug', 'SMA jack'],
    ['RP-SMA plug', 'RP-SMA jack'],
    ['MMCX', 'MMCX'],
    ['U.FL', 'U.FL'],
    ['soldered', 'U.FL'],
  ])('%s on %s mates', (antenna, transmitter) => {
    expect(plug(antenna, transmitter)).toBeUndefined();
  });
  it.each([
    ['SMA plug', 'RP-SMA jack', /pin meets pin/],
    ['RP-SMA plug', 'SMA jack', /no contact in the middle/],
    ['SMA plug', 'SMA plug', /same half/],
    ['U.FL', 'MHF4', /do not mate/],
    ['SMA plug', 'MMCX', /do not mate/],
  ])('%s on %s does not', (antenna, transmitter, words) => {
    expect(plug(antenna, transmitter)?.message).toMatch(words);
  });
});

describe('burst and continuous current', () => {
  const craft = (esc: string): string =>
    `parts:\n  motors:\n    stator: 2207\n    kv: 1850\n  propellers:\n    size: 5.1x4.3x3\n  esc:\n    type: 4-in-1\n    ${esc}\npacks:\n  main:\n    cells: 6S\n    capacity: 1300 mAh\n`;
  it('a burst rating keeps an error away, not the warning', () => {
    const drawn = Number(
      /about (\d+) A, up to/.exec(found(craft('current: 5 A'), 'esc-current-too-low')[0]!.message)![1],
    );
    expect(severity(craft(`current: ${drawn - 5} A\n    burst: ${drawn + 10} A for 10 s`), 'esc-current-too-low')).toBe(
      'warning',
    );
    // As long as only the range of the model speaks against it, it stays a warning.
    expect(severity(craft(`current: ${drawn - 5} A\n    burst: ${drawn - 2} A for 10 s`), 'esc-current-too-low')).toBe(
      'warning',
    );
    expect(
      severity(
        craft(`current: ${Math.round(drawn / 3)} A\n    burst: ${Math.round(drawn / 2)} A for 10 s`),
        'esc-current-too-low',
      ),
    ).toBe('error');
    expect(severity(craft(`current: ${drawn * 2} A`), 'esc-current-too-low')).toBe('silent');
  });
  it('a burst below the continuous figure is a slip', () => {
    expect(
      severity('parts:\n  esc:\n    current: 60 A\n    burst: 45 A for 10 s\n', 'esc-burst-below-continuous'),
    ).toBe('warning');
  });
});

describe('video channels', () => {
  it('has the two channels on one frequency and no others', () => {
    const at = channelNames.map((name) => [name, channelOf(name)] as const);
    const same = at.flatMap(([a, x], i) =>
      at
        .slice(i + 1)
        .flatMap(([b, y]) =>
          x.is === 'known' && y.is === 'known' && x.megahertz === y.megahertz ? [`${a}=${b}`] : [],
        ),
    );
    expect(same).toEqual(['F8=R7']);
  });
  it('knows which lie wholly inside 5725 to 5875 MHz', () => {
    expect([...channelsInside(5725, 5875, 5800)].sort()).toEqual([
      'A1',
      'A2',
      'A3',
      'A4',
      'A5',
      'A6',
      'A7',
      'B2',
      'B3',
      'B4',
      'B5',
      'B6',
      'B7',
      'B8',
      'F1',
      'F2',
      'F3',
      'F4',
      'F5',
      'F6',
      'F7',
      'R4',
      'R5',
      'R6',
    ]);
    expect(channelsInside(5650, 5925, 5800).length).toBe(35);
    expect(channelsInside(5725, 5850, 5800).length).toBe(18);
  });
  it('takes band L for ambiguous', () => {
    expect(channelOf('L3')).toEqual({ is: 'ambiguous' });
    expect(channelOf('5362 MHz')).toEqual({ is: 'known', megahertz: 5362 });
  });
});

describe('radiated power', () => {
  const power = (level: string, gain: string): string =>
    severity(
      `region: EU\nparts:\n  video-transmitter:\n    level: ${level}\n  video-antenna:\n    gain: ${gain}\n`,
      'transmitter-power-over-limit',
    );
  it.each([
    ['25 mW', '0 dBi', 'silent'],
    ['25 mW', '2 dBi', 'information'],
    ['15.8 mW', '2 dBi', 'silent'],
    ['13 mW', '3 dBi', 'information'],
    ['600 mW', '2 dBi', 'warning'],
  ])('%s into %s: %s', (level, gain, expected) => {
    expect(power(level, gain)).toBe(expected);
  });
});

describe('what is the same under another name', () => {
  it('plugs', () => {
    const plugs = (craft: string, pack: string): string =>
      severity(
        `parts:\n  battery-lead:\n    plug: ${craft}\npacks:\n  main:\n    plug: ${pack}\n`,
        'battery-plug-differs',
      );
    expect(plugs('XT60', 'XT60H')).toBe('silent');
    expect(plugs('XT90', 'XT90-S')).toBe('silent');
    expect(plugs('A30', 'PH2.0')).toBe('error');
  });
  it('cameras of 20 to 22 mm', () => {
    const cage = (camera: string, width: string): string =>
      severity(
        `parts:\n  frame:\n    camera-widths: ${width}\n  camera:\n    width: ${camera}\n`,
        'camera-too-wide-for-cage',
      );
    expect(cage('22 mm', '20 mm')).toBe('silent');
    expect(cage('20 mm', '19 mm')).toBe('error');
    expect(cage('14 mm', '19 mm')).toBe('silent');
    expect(cage('28 mm', '22 mm')).toBe('error');
  });
});
