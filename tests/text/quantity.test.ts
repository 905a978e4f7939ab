/** Quantities and trade notations: what is read, what is refused, and what is offered instead. Unit factors by the BIPM SI brochure and NIST SP 811. */
import { describe, expect, it } from 'vitest';
import { readers } from '../../server/src/text/notation';
import { readQuantity } from '../../server/src/text/quantity';

describe('quantities', () => {
  it.each([
    ['31.8 g', 'mass', 0.0318],
    ['1 lb', 'mass', 0.45359237],
    ['1 oz', 'mass', 0.028349523125],
    ['5.1 in', 'length', 0.12954],
    ['1300 mAh', 'charge', 1.3],
    ['62 mOhm', 'resistance', 0.062],
    ['62 mΩ', 'resistance', 0.062],
    ['1000 uF', 'capacitance', 0.001],
    ['5.8 GHz', 'frequency', 5.8e9],
    ['20 %', 'share', 0.2],
    ['480 g', 'force', 4.707192],
    ['1800', 'motor-constant', 1800],
    ['28.9 Wh', 'energy', 104040],
    ['36 km/h', 'speed', 10],
  ] as const)('%s is %s %d', (text, dimension, value) => {
    const read = readQuantity(text, dimension);
    expect(read).toMatchObject({ ok: true });
    if (read.ok) expect(read.value).toBeCloseTo(value, 9);
  });

  it('keeps where a value came from', () => {
    expect(readQuantity('4.3 g (weighed 2026-10-02)', 'mass')).toMatchObject({
      ok: true,
      origin: { trust: 'measured', date: '2026-10-02' },
    });
    expect(readQuantity('62 mOhm (seller)', 'resistance')).toMatchObject({ ok: true, origin: { trust: 'seller' } });
    expect(readQuantity('62 mOhm', 'resistance')).toMatchObject({ ok: true, origin: { trust: 'unsaid' } });
    expect(readQuantity('62 mOhm (a friend)', 'resistance')).toMatchObject({ ok: false });
  });

  it.each([
    ['31.8', 'mass', ['31.8 g']],
    ['31,8 g', 'mass', ['31.8 g']],
    ['1300 mah', 'charge', ['1300 mAh']],
    ['31.8 mm', 'mass', []],
    ['heavy', 'mass', []],
    ['1e99 g', 'mass', []],
  ] as const)('%s as %s is refused', (text, dimension, better) => {
    const read = readQuantity(text, dimension, '31.8 g');
    expect(read.ok).toBe(false);
    if (!read.ok) expect(read.better ?? []).toEqual(better);
  });
});

describe('notations', () => {
  it.each([
    ['stator', '0802', { diameter: 0.008, height: 0.002 }],
    ['stator', '2207', { diameter: 0.022, height: 0.007 }],
    ['stator', '2806.5', { diameter: 0.028, height: 0.0065 }],
    ['cells', '4S-6S', { least: 4, most: 6 }],
    ['cells', '6S', { least: 6, most: 6 }],
    ['pack-cells', '6S2P', { series: 6, parallel: 2 }],
    ['propeller-size', '5.1x3.6x3', { diameter: 0.12954, pitch: 0.09144, blades: 3 }],
    ['propeller-size', '40 mm, 3 blades', { diameter: 0.04, blades: 3 }],
    ['board-mount', '30.5x30.5 M3', { width: 0.0305, length: 0.0305, screw: 3 }],
    ['board-mount', '30x30', { width: 0.0305, length: 0.0305, spoken: '30x30' }],
    ['motor-mount', '16x19 M3', { is: 'opposite', a: 0.016, b: 0.019, screw: 3 }],
    ['motor-mount', '3 holes on 6.6 mm M1.4', { is: 'circle', holes: 3, diameter: 0.0066, screw: 1.4 }],
    ['motor-mount', '16-19 M3', { is: 'slot', least: 0.016, most: 0.019, screw: 3 }],
    ['screw', 'M3x8 button', { thread: 3, length: 0.008, head: 'button' }],
    ['shaft', 'T-mount 1.5 mm', { is: 't-mount', diameter: 0.0015 }],
    ['shaft', '5 mm', { is: 'threaded', diameter: 0.005 }],
    ['short-current', '65 A for 10 s', { current: 65, duration: 10 }],
    ['supply-range', '7 V - 26 V', { least: 7, most: 26 }],
    ['supply-range', '2S-6S', { least: 6.6, most: 25.2, cells: 6 }],
    ['size', '38x38x8 mm', { length: 0.038, width: 0.038, height: 0.008 }],
    ['position', '40 mm forward, 20 mm up', { forward: 0.04, right: 0, up: 0.02 }],
    ['thrust-level', '60 % of full', { of: 'full', ratio: 0.6 }],
    ['rail', 'video-transmitter 5V', { volts: 5, of: 'video-transmitter' }],
    ['flag', 'NO', false],
    ['date', '2026-02-28', '2026-02-28'],
  ] as const)('%s: %s', (notation, text, value) => {
    const read = readers[notation](text);
    expect(read.ok).toBe(true);
    if (read.ok) close(read.value, value);
  });

  it.each([
    ['stator', '802', ['0802']],
    ['cells', '6', ['6S']],
    ['cells', '6S-4S', ['4S-6S']],
    ['propeller-size', '51433', ['5.1x4.3x3']],
    ['propeller-size', '5.1x3.6', ['5.1x3.6x2', '5.1x3.6x3']],
    ['board-mount', '30', ['30.5x30.5']],
    ['screw', 'M3', []],
    ['size', '38x38x8', ['38x38x8 mm']],
    ['date', '2026-02-30', []],
    ['thrust-level', '200 % of full', []],
    ['gauge', '12', ['12 AWG']],
  ] as const)('%s refuses %s', (notation, text, better) => {
    const read = readers[notation](text);
    expect(read.ok).toBe(false);
    if (!read.ok) expect(read.better ?? []).toEqual(better);
  });

  it('offers only what it would accept itself', () => {
    for (const [name, reader] of Object.entries(readers))
      for (const text of [
        '0',
        '5',
        '802',
        '6s',
        '4s-6s',
        '51433',
        '5143',
        '5x3',
        '30',
        'M3',
        '12',
        '5v',
        'uart 2',
        '1,5',
        '7-26',
        '40 forward',
        '60%',
        'Yes!',
        '38x38',
        '1.5mm',
      ]) {
        const read = reader(text);
        if (!read.ok)
          for (const better of read.better ?? [])
            expect(reader(better), `${name}: ${text} -> ${better}`).toMatchObject({ ok: true });
      }
  });
});

function close(actual: unknown, wanted: unknown): void {
  if (typeof wanted === 'number') expect(actual as number).toBeCloseTo(wanted, 9);
  else if (typeof wanted === 'object' && wanted !== null) {
    expect(Object.keys(actual as object).sort()).toEqual(Object.keys(wanted).sort());
    for (const [key, value] of Object.entries(wanted)) close((actual as Record<string, unknown>)[key], value);
  } else expect(actual).toBe(wanted);
}
