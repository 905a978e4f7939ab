/** Serial ports worked out: which device goes to which port of the flight controller, and who competes when one is left out. What the file wires is kept. */
import type { Craft } from '../build/craft';
import type { Facts, Table } from '../build/fact';
import type { FlightControllerFacts } from '../build/generated/facts';
import type { Place } from '../build/place';
import { match } from './matching';
import { type SerialDevice, type SerialNeed, serialNeeds } from './serial-needs';

type UartFacts = NonNullable<FlightControllerFacts['uarts']> extends Table<infer T> ? T : never;

export interface Port {
  /** `uart2`, `soft-serial1` */
  readonly name: string;
  readonly soft: boolean;
  readonly rx: boolean;
  readonly tx: boolean;
  readonly inverter: 'none' | 'built-in' | 'on pad' | undefined;
  readonly reserved: string | undefined;
  /** Where the board says so. */
  readonly where: Place | undefined;
}

export interface PortPlan {
  readonly ports: readonly Port[];
  readonly needs: readonly SerialNeed[];
  /** Port by device; the file's word where there is one, else the one worked out. */
  readonly taken: ReadonlyMap<SerialDevice, { readonly port: string; readonly said: boolean }>;
  readonly left: readonly {
    readonly need: SerialNeed;
    readonly rivals: readonly SerialNeed[];
    readonly ports: readonly string[];
    readonly ways: readonly string[];
  }[];
}

/** Nothing when the board doesn't say which ports it brings out: the chip's count is only an upper bound. */
export function planPorts(craft: Craft): PortPlan | undefined {
  const board = craft.roles['flight-controller'];
  if (!board?.uarts) return undefined;
  const ports = portsOf(board, craft);
  const needs = serialNeeds(craft);
  const said = new Map<SerialDevice, string>();
  for (const need of needs) if (need.said) said.set(need.device, nameOf(need.said.value));
  const takenNames = new Set(said.values());
  const open = needs.filter((need) => !need.said);
  const free = ports.filter((port) => !takenNames.has(port.name));
  const { placeOf, shortages } = match(open.map((need) => preferred(need, free)));
  const taken = new Map<SerialDevice, { port: string; said: boolean }>();
  for (const [device, port] of said) taken.set(device, { port, said: true });
  open.forEach((need, i) => {
    const place = placeOf[i];
    if (place !== undefined) taken.set(need.device, { port: free[place]!.name, said: false });
  });
  const left = shortages.map((shortage) => {
    const need = open[shortage.left]!;
    const rivals = shortage.takers.filter((taker) => taker !== shortage.left).map((taker) => open[taker]!);
    // A device that the file wires to a port which would have done is a rival as well.
    for (const other of needs)
      if (other.said && ports.some((port) => port.name === said.get(other.device) && unfit(need, port) === undefined))
        rivals.push(other);
    return {
      need,
      rivals,
      ports: shortage.places.map((place) => free[place]!.name),
      ways: waysOut(need, rivals, ports),
    };
  });
  return { ports, needs, taken, left };
}

export const nameOf = (port: { readonly is: 'uart' | 'soft'; readonly number: number }): string =>
  port.is === 'uart' ? `uart${port.number}` : `soft-serial${port.number}`;

function portsOf(board: FlightControllerFacts, craft: Craft): readonly Port[] {
  const compass =
    craft.roles.gps?.compass?.value === true || craft.said.wiring?.entries.get('gps')?.i2c?.value === true;
  const hard = [...(board.uarts?.entries ?? [])].map(([name, facts]): Port => {
    const uart = facts as UartFacts & Facts;
    const pads = uart.pads?.value ?? 'rx+tx';
    const shared = compass && board['i2c-uart']?.value === name ? 'the compass, whose wires share its pins' : undefined;
    return {
      name,
      soft: false,
      rx: pads.includes('rx'),
      tx: pads.includes('tx'),
      inverter: uart.inverter?.value ?? inverterOf(board),
      reserved: uart.reserved?.value ?? shared,
      where: uart.where,
    };
  });
  const soft = Array.from(
    { length: Math.min(2, board['soft-serial']?.value ?? 0) },
    (_, i): Port => ({
      name: `soft-serial${i + 1}`,
      soft: true,
      rx: true,
      tx: true,
      inverter: 'built-in',
      reserved: undefined,
      where: board['soft-serial']?.at,
    }),
  );
  return [...hard, ...soft];
}

/** F4 chips cannot invert in the port; F7, H7, G4 and AT32 can. Source: design guidelines of widely used open flight firmware; AT32 from memory. */
export function inverterOf(board: FlightControllerFacts): Port['inverter'] {
  const mcu = board.mcu?.value;
  if (mcu === undefined || mcu === 'RP2350') return undefined;
  return mcu.startsWith('F4') ? 'none' : 'built-in';
}

/** Why a device cannot use a port; nothing when it can. */
export function unfit(
  need: SerialNeed,
  port: Port,
): 'reserved' | 'rx' | 'tx' | 'inverter' | 'inverted' | 'slow' | undefined {
  if (port.reserved !== undefined) return 'reserved';
  if (need.rx && !port.rx) return 'rx';
  if (need.tx && !port.tx) return 'tx';
  if (port.soft && !need.softWillDo) return 'slow';
  if (need.inverted && port.inverter === 'none') return 'inverter';
  if (!need.inverted && need.rx && port.inverter === 'on pad') return 'inverted';
  return undefined;
}

/** Ports that would do: those with nothing to spare first, so that full ports stay free for those who need them. */
function preferred(need: SerialNeed, ports: readonly Port[]): readonly number[] {
  const spare = (port: Port): number =>
    (port.soft ? 4 : 0) +
    Number(port.rx && !need.rx) +
    Number(port.tx && !need.tx) +
    Number(port.inverter === 'on pad' && !need.inverted);
  return ports
    .map((port, i) => ({ port, i }))
    .filter(({ port }) => unfit(need, port) === undefined)
    .sort((a, b) => spare(a.port) - spare(b.port) || a.i - b.i)
    .map(({ i }) => i);
}

function waysOut(need: SerialNeed, rivals: readonly SerialNeed[], ports: readonly Port[]): readonly string[] {
  const ways: string[] = [];
  const all = [need, ...rivals];
  if (all.some((one) => one.device === 'esc'))
    ways.push('leave the telemetry wire of the ESC out and use rpm over the signal wire');
  const soft = all.find((one) => one.softWillDo);
  if (soft && !ports.some((port) => port.soft)) ways.push(`wire ${soft.words} to a pad that can serve as soft-serial`);
  const reserved = ports.filter(
    (port) => port.reserved !== undefined && unfit(need, { ...port, reserved: undefined }) === undefined,
  );
  if (reserved.length > 0)
    ways.push(
      `free ${reserved.map((port) => port.name).join(' or ')} (${reserved[0]!.reserved}), if the board allows it`,
    );
  if (need.inverted && ports.some((port) => unfit({ ...need, inverted: false }, port) === undefined))
    ways.push('set the receiver to a protocol that is not inverted');
  ways.push('take a board with more serial ports');
  return ways;
}
