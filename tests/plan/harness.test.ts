/** The cable between ESC and flight controller: printed pin orders against each other, and every order of eight pins against a plain oracle. */
import { describe, expect, it } from 'vitest';
import { type Cable, type DangerClass, type PinMap, type PinRole, readHarness } from '../../server/src/plan/harness';

const order = (text: string): PinMap => new Map(text.split(' ').map((role, i) => [i + 1, role as PinRole]));

/** Pin orders printed for boards of the trade, and the open connector standard (first). */
const printed = {
  standard: order('VBAT GND CURR TELEM M1 M2 M3 M4'),
  groundFirst: order('GND VBAT M1 M2 M3 M4 CURR TELEM'),
  groundLast: order('VBAT CURR TELEM M1 M2 M3 M4 GND'),
  noTelemetry: order('NC CURR M4 M3 M2 M1 VBAT GND'),
  motorsBackwards: order('VBAT GND CURR TELEM M4 M3 M2 M1'),
  batteryLast: order('M1 M2 M3 M4 CURR TELEM VBAT GND'),
  supplyExchanged: order('GND VBAT CURR TELEM M1 M2 M3 M4'),
  groundFirstBackwards: order('TELEM CURR M4 M3 M2 M1 VBAT GND'),
};
type Name = keyof typeof printed;
const read = (esc: Name, controller: Name, cable: Cable = 'straight') =>
  readHarness(printed[esc], printed[controller], cable);

describe('printed orders against each other', () => {
  it.each<[Name, Name, DangerClass, string]>([
    ['standard', 'standard', 0, 'none'],
    ['standard', 'motorsBackwards', 1, 'motors-permuted'],
    ['standard', 'groundFirst', 5, 'battery-reversed'],
    ['standard', 'groundLast', 4, 'ground-missing'],
    ['standard', 'supplyExchanged', 5, 'battery-reversed'],
    ['groundFirst', 'supplyExchanged', 2, 'signals-swapped'],
    ['standard', 'batteryLast', 5, 'battery-on-signal'],
    ['groundFirst', 'groundLast', 5, 'battery-on-signal'],
    ['groundFirst', 'motorsBackwards', 5, 'battery-reversed'],
    ['groundFirst', 'batteryLast', 5, 'battery-on-signal'],
    ['groundLast', 'motorsBackwards', 4, 'ground-missing'],
    ['groundLast', 'batteryLast', 5, 'battery-on-signal'],
    ['motorsBackwards', 'batteryLast', 5, 'battery-on-signal'],
    ['groundFirst', 'groundFirstBackwards', 5, 'battery-on-signal'],
  ])('%s to %s, straight: class %i, %s', (esc, controller, danger, fault) => {
    expect(read(esc, controller)).toMatchObject({ danger, fault });
  });

  it('joins an order printed from the other end with a crossed cable', () => {
    expect(read('groundFirst', 'groundFirstBackwards', 'crossed')).toMatchObject({
      danger: 0,
      fault: 'none',
      moves: [],
    });
    expect(read('groundFirst', 'noTelemetry', 'crossed').danger).toBe(0);
    expect(read('groundFirst', 'noTelemetry', 'straight').danger).toBe(5);
  });

  it.each(['standard', 'groundFirst', 'groundLast', 'motorsBackwards', 'batteryLast', 'supplyExchanged'] as const)(
    '%s on both sides of a crossed cable destroys',
    (name) => {
      expect(read(name, name, 'crossed').danger).toBe(5);
    },
  );

  it.each<[Name, Name, number[][]]>([
    [
      'standard',
      'groundFirst',
      [
        [1, 2],
        [3, 5, 7],
        [4, 6, 8],
      ],
    ],
    ['standard', 'groundLast', [[2, 3, 4, 5, 6, 7, 8]]],
    [
      'standard',
      'motorsBackwards',
      [
        [5, 8],
        [6, 7],
      ],
    ],
    ['standard', 'supplyExchanged', [[1, 2]]],
    [
      'standard',
      'batteryLast',
      [
        [1, 5, 3, 7],
        [2, 6, 4, 8],
      ],
    ],
    [
      'groundLast',
      'batteryLast',
      [
        [1, 4, 7],
        [2, 5],
        [3, 6],
      ],
    ],
  ])('%s to %s: the rings of holes to re-pin', (esc, controller, rings) => {
    const reading = read(esc, controller);
    expect(reading.cycles).toEqual(rings);
    expect(reading.moves.length).toBe(rings.flat().length);
  });

  it('needs one ring of eight from ground first to battery last', () => {
    expect(read('groundFirst', 'batteryLast').cycles.map((ring) => ring.length)).toEqual([8]);
  });

  it('offers the order in the firmware only when nothing but motors differs', () => {
    expect(read('standard', 'motorsBackwards').remap).toEqual([4, 3, 2, 1]);
    expect(read('standard', 'groundLast').remap).toBeUndefined();
    expect(read('standard', 'standard').remap).toBeUndefined();
  });
});

/** Written from the table of what each pair does, without looking at the code above. */
function plainDanger(esc: readonly PinRole[], controller: readonly PinRole[]): DangerClass {
  let worst = 0;
  let battery = false;
  let ground = false;
  for (let i = 0; i < 8; i++) {
    const a = esc[i]!;
    const b = controller[i]!;
    if (a === b) {
      if (a === 'VBAT') battery = true;
      if (a === 'GND') ground = true;
      continue;
    }
    let here: number;
    if (a === 'VBAT') here = 5;
    else if (a[0] === 'M' && b[0] === 'M') here = 1;
    else if (a === 'GND' || b === 'GND' || b === 'VBAT') here = 3;
    else here = 2;
    worst = Math.max(worst, here);
  }
  if (battery && !ground) worst = Math.max(worst, 4);
  return worst as DangerClass;
}

function* permutations<T>(items: readonly T[]): Generator<T[]> {
  if (items.length <= 1) {
    yield [...items];
    return;
  }
  for (let i = 0; i < items.length; i++)
    for (const rest of permutations([...items.slice(0, i), ...items.slice(i + 1)])) yield [items[i]!, ...rest];
}

it('is right for all 40,320 orders of eight pins: danger, moves and what they lead to', () => {
  const standard = [...printed.standard.values()];
  let tried = 0;
  const wrong: string[] = [];
  for (const roles of permutations(standard)) {
    tried++;
    const controller: PinMap = new Map(roles.map((role, i) => [i + 1, role]));
    const reading = readHarness(printed.standard, controller, 'straight');
    const name = roles.join(' ');
    if (reading.danger !== plainDanger(standard, roles)) wrong.push(`${name}: class ${reading.danger}`);
    const misplaced = roles.filter((role, i) => role !== standard[i]).length;
    if (reading.moves.length !== misplaced)
      wrong.push(`${name}: ${reading.moves.length} moves for ${misplaced} wrong contacts`);
    // Carry the moves out on a plug of eight wires and look where they end.
    const plug = [...standard];
    for (const move of reading.moves) plug[move.to - 1] = standard[move.from - 1]!;
    if (plug.join(' ') !== name) wrong.push(`${name}: moved to ${plug.join(' ')}`);
    if (readHarness(printed.standard, controller, reading.wanted).danger !== 0)
      wrong.push(`${name}: the wanted wires are not right`);
    const ringed = reading.cycles.flat();
    if (new Set(ringed).size !== misplaced || ringed.length !== misplaced)
      wrong.push(`${name}: rings ${JSON.stringify(reading.cycles)}`);
    if (wrong.length > 5) break;
  }
  expect(wrong).toEqual([]);
  expect(tried).toBe(40_320);
});

describe('cables that are not eight to eight', () => {
  it('leaves out what the other side lacks', () => {
    const ten = order('VBAT VBAT GND GND CURR TELEM M1 M2 M3 M4');
    const reading = readHarness(
      ten,
      printed.standard,
      new Map([
        [1, 1],
        [3, 2],
        [5, 3],
        [6, 4],
        [7, 5],
        [8, 6],
        [9, 7],
        [10, 8],
      ]),
    );
    expect(reading).toMatchObject({ danger: 0, fault: 'none', moves: [] });
  });

  it('follows wires one by one', () => {
    const rewired = readHarness(
      printed.standard,
      printed.groundFirst,
      new Map([
        [1, 2],
        [2, 1],
        [3, 7],
        [4, 8],
        [5, 3],
        [6, 4],
        [7, 5],
        [8, 6],
      ]),
    );
    expect(rewired.danger).toBe(0);
  });

  it('takes five volts on a signal for a damaged pin', () => {
    expect(readHarness(order('GND 5V'), order('GND CURR'), 'straight')).toMatchObject({
      danger: 3,
      fault: 'supply-on-signal',
    });
    expect(readHarness(order('VBAT GND'), order('5V GND'), 'straight')).toMatchObject({
      danger: 5,
      fault: 'battery-on-signal',
    });
  });
});
