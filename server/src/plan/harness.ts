/**
 * The cable between ESC and flight controller as wires: which contacts it joins, what each wrong pair does, and what to
 * move to mend it. Pure arithmetic on pin maps; knows no build and words no findings.
 */
export type PinRole =
  | 'VBAT'
  | 'GND'
  | 'CURR'
  | 'TELEM'
  | 'M1'
  | 'M2'
  | 'M3'
  | 'M4'
  | 'M5'
  | 'M6'
  | 'M7'
  | 'M8'
  | '5V'
  | '3V3'
  | '9V'
  | '12V'
  | 'RX'
  | 'TX'
  | 'SDA'
  | 'SCL'
  | 'VIDEO'
  | 'SBUS'
  | 'LED'
  | 'BUZZER'
  | 'CONTROL'
  | 'NC';

export type PinMap = ReadonlyMap<number, PinRole>;

/** Pin 1 to pin 1, pin 1 to the last pin, or wire by wire from the ESC's contact to the flight controller's. */
export type Cable = 'straight' | 'crossed' | ReadonlyMap<number, number>;

/** 0 right, 1 harmless but wrong, 2 wrong readings or dead channels, 3 stressed pins, 4 burns in seconds, 5 destroyed at plug-in. */
export type DangerClass = 0 | 1 | 2 | 3 | 4 | 5;

export type Fault =
  | 'none'
  | 'motors-permuted'
  | 'wire-idle'
  | 'signals-swapped'
  | 'signal-on-ground'
  | 'supply-on-signal'
  | 'controller-unpowered'
  | 'ground-missing'
  | 'battery-on-signal'
  | 'battery-shorted'
  | 'battery-reversed';

export interface Pair {
  readonly esc: number;
  readonly controller: number;
  readonly from: PinRole;
  readonly to: PinRole;
  readonly danger: DangerClass;
}

export interface Move {
  /** Hole of the flight controller's plug where the wire sits now. */
  readonly from: number;
  readonly to: number;
  readonly role: PinRole;
}

export interface Reading {
  readonly pairs: readonly Pair[];
  readonly wrong: readonly Pair[];
  readonly danger: DangerClass;
  readonly fault: Fault;
  /** Wires to move in the plug at the flight controller. */
  readonly moves: readonly Move[];
  /** The wires as they should run: the ESC's contact to the flight controller's. */
  readonly wanted: ReadonlyMap<number, number>;
  /** The moves as rings: each hole takes its wire from the next one named. */
  readonly cycles: readonly (readonly number[])[];
  /** Motor numbers as they arrive, when setting the motor order in the firmware is enough. */
  readonly remap: readonly number[] | undefined;
}

const supplies: ReadonlySet<PinRole> = new Set(['5V', '3V3', '9V', '12V']);
const motorNumber = (role: PinRole): number | undefined => (/^M[1-8]$/.test(role) ? Number(role[1]) : undefined);
const isSignal = (role: PinRole): boolean => role !== 'VBAT' && role !== 'GND' && role !== 'NC' && !supplies.has(role);

/** What one joined pair does by itself. */
export function pairDanger(from: PinRole, to: PinRole): DangerClass {
  if (from === to) return 0;
  if (from === 'NC' || to === 'NC') return from === 'TELEM' || to === 'TELEM' ? 0 : 1;
  if (motorNumber(from) !== undefined && motorNumber(to) !== undefined) return 1;
  if (isSignal(from) && isSignal(to)) return 2;
  // The battery comes from the ESC: on anything but the flight controller's own battery pin it destroys.
  if (from === 'VBAT') return 5;
  return 3;
}

/** The whole cable, as it is. */
export function readHarness(
  esc: PinMap,
  controller: PinMap,
  cable: Cable,
  contacts = sizeOf(esc, controller),
): Reading {
  const pairs = joined(esc, controller, cable, contacts);
  const wrong = pairs.filter((pair) => pair.from !== pair.to);
  const groundLost =
    pairs.some((pair) => pair.from === 'VBAT' && pair.to === 'VBAT') &&
    !pairs.some((pair) => pair.from === 'GND' && pair.to === 'GND');
  const own = Math.max(0, ...pairs.map((pair) => pair.danger)) as DangerClass;
  const danger = groundLost && own < 4 ? 4 : own;
  const source = wantedSources(esc, controller, cable, contacts);
  const moves = movesFor(source, esc, cable, contacts);
  const wanted = new Map([...source].map(([hole, contact]) => [contact, hole] as const).sort((a, b) => a[0] - b[0]));
  return {
    pairs,
    wrong,
    danger,
    fault: faultOf(wrong, danger),
    moves,
    wanted,
    cycles: cyclesOf(moves),
    remap: remapOf(pairs),
  };
}

const sizeOf = (...maps: PinMap[]): number => Math.max(0, ...maps.flatMap((map) => [...map.keys()]));

/** The flight controller's contact that a contact of the ESC leads to. */
const leadsTo = (cable: Cable, contact: number, contacts: number): number | undefined =>
  cable === 'straight' ? contact : cable === 'crossed' ? contacts + 1 - contact : cable.get(contact);

function joined(esc: PinMap, controller: PinMap, cable: Cable, contacts: number): readonly Pair[] {
  return [...esc].flatMap(([contact, from]) => {
    const end = leadsTo(cable, contact, contacts);
    const to = end === undefined ? undefined : controller.get(end);
    return end === undefined || to === undefined
      ? []
      : [{ esc: contact, controller: end, from, to, danger: pairDanger(from, to) }];
  });
}

/** The gravest thing that is wrong; battery faults first. */
function faultOf(wrong: readonly Pair[], danger: DangerClass): Fault {
  const has = (from: PinRole, to: PinRole): boolean => wrong.some((pair) => pair.from === from && pair.to === to);
  if (danger === 5)
    return has('VBAT', 'GND') ? (has('GND', 'VBAT') ? 'battery-reversed' : 'battery-shorted') : 'battery-on-signal';
  if (danger === 4) return 'ground-missing';
  if (danger === 3) {
    const third = wrong.filter((pair) => pair.danger === 3);
    if (third.some((pair) => pair.to === 'VBAT')) return 'controller-unpowered';
    return third.some((pair) => supplies.has(pair.from) || supplies.has(pair.to))
      ? 'supply-on-signal'
      : 'signal-on-ground';
  }
  if (danger === 2) return 'signals-swapped';
  if (danger === 1)
    return wrong.some((pair) => pair.from === 'NC' || pair.to === 'NC') ? 'wire-idle' : 'motors-permuted';
  return 'none';
}

/** The ESC's contact whose wire each hole should hold, so that every role of the flight controller gets its like. */
function wantedSources(esc: PinMap, controller: PinMap, cable: Cable, contacts: number): ReadonlyMap<number, number> {
  const free = new Set([...esc.keys()]);
  const source = new Map<number, number>();
  const holeOf = (contact: number): number | undefined => leadsTo(cable, contact, contacts);
  // Contacts that are right stay; only then the others look for their like.
  for (const [hole, role] of controller) {
    const right = [...free].find((contact) => holeOf(contact) === hole && esc.get(contact) === role);
    if (right === undefined) continue;
    source.set(hole, right);
    free.delete(right);
  }
  for (const [hole, role] of controller) {
    if (source.has(hole) || role === 'NC') continue;
    const like = [...free].find((contact) => esc.get(contact) === role);
    if (like === undefined) continue;
    source.set(hole, like);
    free.delete(like);
  }
  return source;
}

/** Which hole takes its wire from which other hole. */
function movesFor(source: ReadonlyMap<number, number>, esc: PinMap, cable: Cable, contacts: number): readonly Move[] {
  return [...source].flatMap(([hole, contact]) => {
    const from = leadsTo(cable, contact, contacts);
    return from === undefined || from === hole ? [] : [{ from, to: hole, role: esc.get(contact)! }];
  });
}

function cyclesOf(moves: readonly Move[]): readonly (readonly number[])[] {
  const from = new Map(moves.map((move) => [move.to, move.from]));
  const into = new Set(moves.map((move) => move.from));
  const seen = new Set<number>();
  const rings: number[][] = [];
  // Open chains start at the hole that gives no wire away; rings anywhere.
  const starts = [...from.keys()].sort((a, b) => Number(into.has(a)) - Number(into.has(b)) || a - b);
  for (const start of starts) {
    const ring: number[] = [];
    for (let at: number | undefined = start; at !== undefined && !seen.has(at); at = from.get(at)) {
      seen.add(at);
      ring.push(at);
    }
    if (ring.length > 0) rings.push(ring);
  }
  return rings;
}

/** Motor k of the flight controller arrives at motor `remap[k - 1]` of the ESC; nothing when more than motors differ. */
function remapOf(pairs: readonly Pair[]): readonly number[] | undefined {
  const wrong = pairs.filter((pair) => pair.from !== pair.to && pair.danger > 0);
  if (wrong.length === 0 || wrong.some((pair) => pair.danger !== 1 || pair.from === 'NC' || pair.to === 'NC'))
    return undefined;
  const motors = pairs.filter((pair) => motorNumber(pair.from) !== undefined && motorNumber(pair.to) !== undefined);
  const arrives = new Map(motors.map((pair) => [motorNumber(pair.to)!, motorNumber(pair.from)!]));
  const outputs = [...arrives.keys()].sort((a, b) => a - b);
  const reached = [...arrives.values()].sort((a, b) => a - b);
  return outputs.join() === reached.join() ? outputs.map((output) => arrives.get(output)!) : undefined;
}
