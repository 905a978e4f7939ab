/** Serial ports: agrees with trying everything, keeps what the file wires, and names who competes when one is left out. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { match } from '../../server/src/plan/matching';
import { planPorts } from '../../server/src/plan/ports';
import { analyseMarked } from '../support/marked';

/** Most takers that can be served, by trying every way. */
function exhaustive(wants: readonly (readonly number[])[], from = 0, used = 0): number {
  if (from === wants.length) return 0;
  let best = exhaustive(wants, from + 1, used);
  for (const place of new Set(wants[from]))
    if (!(used & (1 << place))) best = Math.max(best, 1 + exhaustive(wants, from + 1, used | (1 << place)));
  return best;
}

describe('matching', () => {
  it('serves as many as trying everything does, up to 8 takers and 8 places', () => {
    const instance = fc.array(fc.array(fc.nat(7), { maxLength: 5 }), { maxLength: 8 });
    fc.assert(
      fc.property(instance, (wants) => {
        const { placeOf, shortages } = match(wants);
        const served = placeOf.filter((place) => place !== undefined);
        expect(served.length).toBe(exhaustive(wants));
        expect(new Set(served).size).toBe(served.length);
        for (const [taker, place] of placeOf.entries()) if (place !== undefined) expect(wants[taker]).toContain(place);
        expect(shortages.length).toBe(wants.length - served.length);
        for (const { takers, places } of shortages) {
          // A true shortage: everything these takers want lies in fewer places than there are takers.
          expect(places.length).toBeLessThan(takers.length);
          for (const taker of takers) for (const place of wants[taker]!) expect(places).toContain(place);
        }
      }),
      { numRuns: 3000, seed: 7 },
    );
  });
});

const board = (uarts: string): string => `
dryfit: build
name: Ports
parts:
  flight-controller:
    mcu: F722
    uarts:
${uarts}
  receiver:
    protocols: CRSF
  gps:
    protocol: UBX
  video-transmitter:
    system: analog
    control: one-wire 4800
`;
const plan = (text: string) => planPorts(analyseMarked(text).analysis.crafts[0]!)!;

describe('ports of a craft', () => {
  it('leaves full ports to those who need them', () => {
    const { taken, left } = plan(
      board('      uart1: { pads: rx+tx }\n      uart2: { pads: tx }\n      uart3: { pads: rx+tx }'),
    );
    expect(left).toEqual([]);
    expect(taken.get('video-transmitter')?.port).toBe('uart2');
    expect([taken.get('receiver')?.port, taken.get('gps')?.port].sort()).toEqual(['uart1', 'uart3']);
  });

  it('names rivals and ways out when one is left out', () => {
    const { left } = plan(
      board(
        '      uart1: { pads: rx+tx }\n      uart2: { pads: rx+tx }\n      uart3: { pads: rx+tx, reserved: on-board radio }',
      ),
    );
    expect(left).toHaveLength(1);
    expect([...left[0]!.ports].sort()).toEqual(['uart1', 'uart2']);
    expect([left[0]!.need, ...left[0]!.rivals].map((need) => need.device).sort()).toEqual([
      'gps',
      'receiver',
      'video-transmitter',
    ]);
    expect(left[0]!.ways.join()).toMatch(/free uart3/);
  });

  it('puts channel control on a soft-serial pad when that saves a port', () => {
    const { left, taken } = plan(
      board('      uart1: { pads: rx+tx }\n      uart2: { pads: rx+tx }\n    soft-serial: 1'),
    );
    expect(left).toEqual([]);
    expect(taken.get('video-transmitter')?.port).toBe('soft-serial1');
  });

  it('keeps the wiring of the file', () => {
    const { taken } = plan(
      `${board('      uart1: { pads: rx+tx }\n      uart2: { pads: rx+tx }\n      uart3: { pads: rx+tx }')}wiring:\n  gps:\n    serial: uart1\n`,
    );
    expect(taken.get('gps')).toEqual({ port: 'uart1', said: true });
    expect(taken.get('receiver')?.port).toBe('uart2');
  });

  it('knows nothing of a board that does not say its ports', () => {
    expect(
      planPorts(
        analyseMarked('dryfit: build\nname: A\nparts:\n  flight-controller:\n    mcu: H743\n').analysis.crafts[0]!,
      ),
    ).toBeUndefined();
  });
});
