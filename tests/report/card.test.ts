/** The card from real build files: what it says, what it rests on, and that measuring narrows it. */
import { describe, expect, it } from 'vitest';
import { cardAsJson } from '../../server/src/report/card-json';
import { cardAsMarkdown, cardAtAGlance } from '../../server/src/report/card-markdown';
import { cardAsText } from '../../server/src/report/card-text';
import { cardOfText, figuresOfText } from '../support/craft-of';
import { freestyle, longRange } from './builds';

const width = (figure: { low: number; high: number }): number => Math.log(figure.high / figure.low);
const remarks = (text: string): string =>
  cardOfText(text)
    .packs[0]!.groups.flatMap((group) => group.remarks)
    .join('\n');

describe('craft of common practice', () => {
  it.each([1750, 1800, 1850])('a five inch freestyle craft of %i Kv flies 3.5 to 5.5 minutes', (kv) => {
    const minutes = figuresOfText(freestyle({ kv })).get('time-as-flown')!.value / 60;
    expect(minutes).toBeGreaterThan(3.5);
    expect(minutes).toBeLessThan(5.5);
  });

  it('a Li-ion craft lands at the Li-ion voltage, its maker first', () => {
    expect(figuresOfText(longRange()).get('landing-limit')!.value).toBe(2.9);
    expect(figuresOfText(longRange('landing-voltage: 3.1 V (maker)')).get('landing-limit')!.value).toBe(3.1);
    expect(remarks(longRange('landing-voltage: 3.1 V (maker)'))).toContain(
      '3.10 V a cell under load (as its maker says)',
    );
    const worn = figuresOfText(longRange('cell-resistance: 80 mOhm (measured 2026-10-02)'));
    expect(worn.get('landing-cell-voltage')!.value).toBeCloseTo(2.9, 1);
  });

  it('whoops and ducted craft come out within twice what their class usually has in thrust', () => {
    const whoop = `dryfit: build\nname: W\ncraft: whoop-75\nparts:\n  motors:\n    stator: 0802\n    kv: 19500\n  propellers:\n    size: 40 mm, 3 blades\npacks:\n  a:\n    cells: 1S\n    chemistry: LiHV\n    capacity: 450 mAh\nflight:\n  weighed: 38 g\n`;
    const figures = figuresOfText(whoop);
    expect(figures.get('thrust-to-weight')!.value).toBeGreaterThan(2.5);
    expect(figures.get('thrust-to-weight')!.value).toBeLessThan(4.2);
    expect(figures.get('hover-throttle')!.value).toBeGreaterThan(0.4);
    expect(figures.get('hover-throttle')!.value).toBeLessThan(0.55);
    expect(remarks(whoop)).toContain('outside the sizes');
    expect(remarks(whoop)).toContain('duct');
  });
});

describe('what the card says', () => {
  const card = cardOfText(freestyle());

  it('begins with the decisive three', () => {
    expect(card.packs[0]!.headline).toMatch(/^\d+ g ready to fly · [\d.]+ A hovering · [\d.]+ min as you fly it$/);
  });

  it('answers the builder in one order', () => {
    expect(card.packs[0]!.groups.map((group) => group.question)).toEqual([
      'Does it lift?',
      'How long does it fly?',
      'Does anything run hot?',
      'What does it weigh?',
      'How sure is this?',
    ]);
  });

  it('has every figure of every way of flying', () => {
    const figures = figuresOfText(freestyle());
    for (const level of ['hover', 'cruise', 'punch', 'full'])
      for (const quantity of [
        'throttle',
        'motor-current',
        'current-each',
        'current',
        'power',
        'voltage',
        'cell-voltage',
        'speed',
        'tip-mach',
        'pitch-speed',
        'thrust-per-power',
        'disc-loading',
      ])
        expect([...figures.keys()], `${level}-${quantity}`).toContain(`${level}-${quantity}`);
    for (const name of [
      'thrust-to-weight-at-landing',
      'time-hovering',
      'charge-used',
      'energy-used',
      'landing-cell-voltage',
      'motor-heat-full',
      'esc-heat-full',
      'drive-heat-hovering',
      'lead-load',
      'lead-heat',
      'lead-rise',
      'plug-load',
      'plug-burst',
      'plug-heat',
      'pack-energy',
      'weight-dry',
    ])
      expect([...figures.keys()], name).toContain(name);
    for (const figure of figures.values()) {
      expect(figure.low, figure.name).toBeLessThanOrEqual(figure.value);
      expect(figure.high, figure.name).toBeGreaterThanOrEqual(figure.value);
    }
  });

  it('shows the flight levels with where they come from', () => {
    expect(card.flown).toBe(
      'Flown 20 % hovering, 60 % cruising at 1.5 x weight, 20 % at 60 % of full thrust, 20 % left in the pack (usual for freestyle-5).',
    );
    expect(cardOfText(freestyle({ flight: 'cruise-thrust: 1.2 x weight' })).flown).toContain(
      'cruising at 1.2 x weight',
    );
    expect(cardOfText(freestyle({ flight: 'cruise-thrust: 1.2 x weight' })).flown).toContain(
      'as the file says, the rest usual for freestyle-5',
    );
  });

  it('takes a level either way round', () => {
    const minutes = (flight: string): number => figuresOfText(freestyle({ flight })).get('time-as-flown')!.value;
    const full = figuresOfText(freestyle({ flight: 'punch-thrust: 100 % of full' })).get('punch-current')!.value;
    expect(full).toBeGreaterThan(figuresOfText(freestyle()).get('punch-current')!.value);
    expect(minutes('cruise-thrust: 40 % of full')).toBeLessThan(minutes('cruise-thrust: 20 % of full'));
    expect(minutes('punch-thrust: 6 x weight')).toBeLessThan(minutes('punch-thrust: 3 x weight'));
  });

  it('fits a hover, and puts all of it elsewhere', () => {
    expect(cardAtAGlance(card).split('\n').filter(Boolean).length).toBeLessThanOrEqual(12);
    expect(cardAtAGlance(card).length).toBeLessThan(1000);
    for (const text of [cardAsText(card), cardAsMarkdown(card)]) {
      expect(text).toContain('What does each way of flying take?');
      expect(text).not.toMatch(/NaN|undefined|Infinity/);
    }
    expect(
      cardAsText(card)
        .split('\n')
        .every((line) => line.length <= 140),
    ).toBe(true);
  });

  it('gives JSON of the promised form', () => {
    const json = cardAsJson(card) as { packs: { main: Record<string, unknown> } };
    expect(Object.keys(json)).toEqual(['name', 'craft', 'packs', 'flown', 'flight', 'checks']);
    expect(Object.keys(json.packs.main)).toEqual(['headline', 'figures', 'parts', 'measured', 'remarks']);
    const parts = json.packs.main.parts as { part: string; share: number }[];
    expect(parts.reduce((sum, part) => sum + part.share, 0)).toBeCloseTo(1, 9);
    expect(parts[0]!.part).toBe('pack main');
  });

  it('says why there is no flight', () => {
    const heavy = cardOfText(freestyle({ flight: 'weighed: 9 kg' }));
    expect(heavy.packs[0]!.headline).toContain('cannot hover');
    expect(heavy.packs[0]!.groups[0]!.remarks.join()).toMatch(
      /cannot hover: full throttle lifts less than its weight \(\d+ g of 9000 g\)/,
    );
    const empty = cardOfText('dryfit: build\nname: Nothing\npacks:\n  main:\n    cells: 6S\n');
    expect(empty.packs[0]!.groups[0]!.remarks[0]).toContain('`motors.stator`');
    expect(cardOfText('dryfit: build\nname: Nothing\n').packs[0]!.groups[0]!.remarks[0]).toContain('packs:');
  });
});

describe('measured beats modelled', () => {
  const plain = figuresOfText(freestyle());
  const row =
    'thrust-table:\n  - propeller: 5.1x4.3x3\n    voltage: 24 V\n    throttle: 50 %\n    thrust: 480 g\n    current: 5.3 A';

  it('a row of a thrust stand narrows flight time, and the card says so', () => {
    const figures = figuresOfText(freestyle({ motors: row }));
    expect(figures.get('time-hovering')!.basis).toBe('calibrated');
    expect(width(figures.get('time-hovering')!)).toBeLessThan(width(plain.get('time-hovering')!));
    expect(remarks(freestyle({ motors: row }))).toContain('Measured and used: 1 row of a thrust stand.');
  });

  it('a row with another propeller is said not to be used', () => {
    const other = row.replace('5.1x4.3x3', '5x3x2');
    expect(figuresOfText(freestyle({ motors: other })).get('time-hovering')!.value).toBe(
      plain.get('time-hovering')!.value,
    );
    expect(remarks(freestyle({ motors: other }))).toContain(
      'Measured but not used: 1 row of a thrust stand with another propeller.',
    );
  });

  it.each([
    ['a logged flight', { flight: 'logged:\n  minutes: 4.5 min\n  used: 1050 mAh' }, 'time-as-flown'],
    ['the scale', { flight: 'weighed: 600 g' }, 'weight-ready'],
    ['the resistance of cells that nobody says more of', { pack: 'cell-resistance: 5 mOhm' }, 'full-current'],
    ['the resistance of the cells', { pack: 'cell-resistance: 5 mOhm (measured 2026-10-02)' }, 'full-current'],
  ] as const)('%s narrows', (_, more, name) => {
    expect(width(figuresOfText(freestyle(more)).get(name)!)).toBeLessThan(width(plain.get(name)!));
    expect(remarks(freestyle(more))).toContain('Measured and used');
  });

  it('the scale counts for the pack it was read with, and other packs differ by what they weigh', () => {
    const text = freestyle({ flight: 'weighed: 640 g' }).replace(
      'packs:\n',
      'packs:\n  light:\n    cells: 6S\n    capacity: 1100 mAh\n    weight: 180 g\n',
    );
    const [main, light] = cardOfText(text).packs;
    const ready = (pack: typeof main): number =>
      pack!.groups.flatMap((group) => group.figures).find((figure) => figure.name === 'weight-ready')!.value;
    expect(main!.pack).toBe('main');
    expect(ready(main)).toBeCloseTo(0.64, 9);
    expect(ready(light)).toBeCloseTo(0.615, 9);
  });

  it('names two things that would narrow time and thrust most', () => {
    expect(remarks(freestyle())).toMatch(/Flight time gets surer if you .+ and .+\./);
    expect(remarks(freestyle())).toMatch(/Thrust gets surer if you .+ and .+\./);
  });
});

describe('balance', () => {
  it('is told where places are known, and where the pack would balance it', () => {
    const camera = 'action-camera:\n  weight: 100 g\n  at: 60 mm forward, 30 mm up';
    expect(figuresOfText(freestyle()).has('centre-of-mass')).toBe(false);
    const loose = figuresOfText(freestyle({ parts: camera }));
    expect(loose.get('centre-of-mass')!.value).toBeGreaterThan(0.01);
    expect(loose.get('pack-place')!.value).toBeCloseTo((-0.06 * 0.1) / 0.205, 3);
    const fixed = figuresOfText(freestyle({ parts: camera, pack: 'at: 29.27 mm back' }));
    expect(fixed.has('pack-place')).toBe(false);
    expect(fixed.get('centre-of-mass')!.value).toBeCloseTo(0, 4);
  });
});

describe('reach', () => {
  const bench = (more: string): string =>
    `dryfit: bench\nradio:\n  link: openlink\n  band: 2.4 GHz\n  power: 100 mW\n  gain: 2 dBi\ngoggles:\n  systems: analog\n  polarisation: RHCP\n  gain: 2 dBi\n${more}`;
  const receiver =
    'receiver:\n  band: 2.4 GHz\n  sensitivity: -105 dBm\nreceiver-antenna:\n  gain: 2 dBi\nvideo-antenna:\n  polarisation: RHCP\n  gain: 2 dBi\n  axial-ratio: 1 dB';

  it('is only told where the sensitivity is', () => {
    expect(figuresOfText(freestyle(), { bench: bench('') }).has('control-reach')).toBe(false);
    expect(figuresOfText(freestyle({ parts: receiver }), { bench: bench('') }).has('video-reach')).toBe(false);
  });

  it('is free space by ITU-R P.525 and no more', () => {
    // 20 dBm + 2 + 2 + 105 = 129 dB at 2441.75 MHz: d = 10^((129 − 32.448 − 67.754)/20) km.
    const figures = figuresOfText(freestyle({ parts: receiver }), { bench: bench('  sensitivity: -90 dBm\n') });
    expect(figures.get('control-reach')!.value / 1000).toBeCloseTo(
      10 ** ((129 - 32.448 - 20 * Math.log10(2441.75)) / 20),
      1,
    );
    expect(figures.get('control-reach')!.high).toBe(figures.get('control-reach')!.value);
    // 27.78 dBm + 2 + 2 + 90 at 5732 MHz, and next to nothing lost between two right hands.
    expect(figures.get('video-reach')!.value / 1000).toBeCloseTo(
      10 ** ((121.78 - 32.448 - 20 * Math.log10(5732)) / 20),
      1,
    );
  });

  it('pays for the wrong hand', () => {
    const far = figuresOfText(freestyle({ parts: receiver }), { bench: bench('  sensitivity: -90 dBm\n') }).get(
      'video-reach',
    )!;
    const left = figuresOfText(freestyle({ parts: receiver.replace('RHCP', 'LHCP') }), {
      bench: bench('  sensitivity: -90 dBm\n'),
    }).get('video-reach')!;
    expect(left.value).toBeLessThan(far.value / 6);
  });
});
