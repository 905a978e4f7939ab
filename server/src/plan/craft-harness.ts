/** The harness of a craft: the pin maps of both boards, the cable as it was described, and every way it may be read. */
import type { Craft } from '../build/craft';
import type { Fact, Pointable, Table } from '../build/fact';
import type { EscFacts } from '../build/generated/facts';
import { type Cable, type PinMap, type PinRole, type Reading, readHarness } from './harness';

type Socket = NonNullable<EscFacts['controller-socket']>;

export interface CraftHarness {
  /** As described, contact 1 being contact 1 on both boards. */
  readonly reading: Reading;
  /** The other way round, when it is not known how the drawings count; absent when it is known. */
  readonly mirrored: Reading | undefined;
  /** Nothing was said of the cable; a straight one was taken. */
  readonly assumed: boolean;
  readonly cable: Cable;
  readonly esc: PinMap;
  readonly controller: PinMap;
  /** What to point at: the cable, else the pins of the ESC. */
  readonly at: Pointable;
  readonly escPins: Table<Fact<PinRole>>;
  readonly controllerPins: Table<Fact<PinRole>>;
}

/** Whether a cable between the two boards is part of what the builder answers for. */
export function joinsBoards(craft: Craft): boolean {
  if (craft.boards === 'all-in-one' || craft.boards === 'none' || craft.roles.esc?.type?.value === 'single')
    return false;
  const { harness, stack } = craft.roles;
  if (!harness) return craft.boards === 'apart' || isOwnCable(craft, stack?.['cable-supplied']?.value);
  const between = harness.between?.items.map((item) => item.value);
  return !between || (between.includes('esc') && between.includes('flight-controller'));
}

/** The cable that comes with a stack is its maker's business; of one that nobody speaks of only the pin lists can tell. */
const isOwnCable = (craft: Craft, supplied: boolean | undefined): boolean =>
  supplied === false ||
  (supplied === undefined &&
    craft.roles.esc?.['controller-socket']?.pins !== undefined &&
    craft.roles['flight-controller']?.['esc-socket']?.pins !== undefined);

export function craftHarness(craft: Craft): CraftHarness | undefined {
  if (!joinsBoards(craft)) return undefined;
  const { harness } = craft.roles;
  const from = craft.roles.esc?.['controller-socket'];
  const to = craft.roles['flight-controller']?.['esc-socket'];
  if (!from?.pins || !to?.pins) return undefined;
  const esc = pinMap(from.pins);
  const controller = pinMap(to.pins);
  const contacts = Math.max(contactsOf(from) ?? 0, contactsOf(to) ?? 0);
  const said = saidCable(craft);
  if (said === undefined && harness?.soldered?.value === true) return undefined;
  const cable = said ?? 'straight';
  const other: Cable = cable === 'crossed' ? 'straight' : cable === 'straight' ? 'crossed' : cable;
  // Wire by wire the ends are numbered by whoever wrote them down; still the drawings may count from either end.
  const known = isNumbered(from) && isNumbered(to) && harness?.type?.value !== 'unknown';
  return {
    reading: readHarness(esc, controller, cable, contacts),
    mirrored: known || other === cable ? undefined : readHarness(esc, controller, other, contacts),
    assumed: said === undefined,
    cable,
    esc,
    controller,
    at: harness?.wires ?? harness?.type ?? from.pins,
    escPins: from.pins,
    controllerPins: to.pins,
  };
}

/** A marked pin 1 is the same whoever looks; a place in a drawing is not. */
const isNumbered = (socket: Socket): boolean =>
  socket['counted-from']?.value === 'marked pin' && socket['seen-from']?.value !== 'unknown';

export const contactsOf = (socket: Socket | undefined): number | undefined =>
  socket?.contacts?.value ?? (socket?.pins ? Math.max(...[...socket.pins.entries.keys()].map(Number)) : undefined);

export const pinMap = (pins: Table<Fact<PinRole>>): PinMap =>
  new Map([...pins.entries].map(([contact, role]) => [Number(contact), role.value]));

function saidCable(craft: Craft): Cable | undefined {
  const { harness } = craft.roles;
  if (harness?.wires) {
    const wires = [...harness.wires.entries].map(([contact, end]) => [Number(contact), end.value] as const);
    const backwards = harness.between?.items[0]?.value === 'flight-controller';
    return new Map(backwards ? wires.map(([contact, end]) => [end, contact] as const) : wires);
  }
  const type = harness?.type?.value;
  return type === 'straight' || type === 'crossed' ? type : undefined;
}
