/** What is worked out from a craft once and asked for by several checks and faces. Each value tells where it rests. */
import type { Craft, Pack } from '../build/craft';
import type { Pointable } from '../build/fact';
import type { FactAt } from '../build/generated/facts';
import { type CraftFigures, type CraftValues, figures, values } from '../physics';
import { lazily } from '../physics/lazily';
import type { Screw } from '../text/notation/screw';
import { cellVoltage } from './cell-voltage';
import { type CraftHarness, contactsOf, craftHarness } from './craft-harness';
import { type FlightInput, flightInput } from './flight-input';
import { lately } from './lately';
import { motorScrew } from './motor-screw';
import { once } from './once';
import { type CraftOrder, craftOrder } from './order-craft';
import { type PortPlan, planPorts } from './ports';
import { type PropellerGap, propellerGap } from './propeller-gap';
import { planRails, type Rails } from './rails';
import { stackHeight, stackScrew } from './stack';
import { type Weight, weightOf } from './weight';

/** A value of our own making; points at the fact that decides it. */
export interface Worked<T> extends Pointable {
  readonly value: T;
}

export interface WorkedAt {
  /** V with the pack full, by its chemistry. */
  'worked.pack-full-voltage': Worked<number>;
  /** A at full throttle on a full pack, one motor, the high end of its range. */
  'worked.pack-motor-current': Worked<{ readonly typical: number; readonly high: number }>;
  /** A out of the pack at full throttle, and mean as it is flown. */
  'worked.pack-current': Worked<{ readonly peak: number; readonly mean: number | undefined }>;
  'worked.pack-values': Worked<CraftValues>;
  'worked.pack-figures': Worked<CraftFigures>;
  'worked.pack-weight': Worked<Weight>;
  /** The screw that will hold each motor. */
  'worked.motor-screw': Worked<Screw>;
  /** The screws of the stack. */
  'worked.stack-screw': Worked<Screw>;
  /** m, the boards in the middle with their gap. */
  'worked.stack-height': Worked<number>;
  /** Between the tips of neighbouring propellers. */
  'worked.propeller-gap': Worked<PropellerGap>;
  /** The cable between ESC and flight controller, with what each of its wires does. */
  'worked.harness': Worked<CraftHarness>;
  /** Contacts of the sockets for the cable between ESC and flight controller, said or counted. */
  'worked.esc-contacts': Worked<number>;
  'worked.controller-contacts': Worked<number>;
  /** Which device goes to which serial port. */
  'worked.ports': Worked<PortPlan>;
  /** What is taken from each rail of the flight controller. */
  'worked.rails': Worked<Rails>;
  /** What the craft has to be bought, with the shops of the workspace and the order that the build itself says. */
  'worked.order': Worked<CraftOrder>;
}

const flight = ['motors.stator', 'motors.kv', 'propellers.size', 'pack.cells', 'pack.capacity'] as const;

/** The facts each of these is worked out from: what to ask for when it cannot be. */
export const restsOn: { readonly [K in keyof WorkedAt]: readonly (keyof FactAt)[] } = {
  'worked.pack-full-voltage': ['pack.cells'],
  'worked.pack-motor-current': flight,
  'worked.pack-current': flight,
  'worked.pack-values': flight,
  'worked.pack-figures': flight,
  'worked.pack-weight': ['pack.cells'],
  'worked.motor-screw': ['motors.screws'],
  'worked.stack-screw': ['frame.stack-screws'],
  'worked.stack-height': ['flight-controller.outside', 'esc.outside'],
  'worked.propeller-gap': ['propellers.size', 'frame.wheelbase', 'frame.motor-positions'],
  'worked.harness': ['esc.controller-socket.pins', 'flight-controller.esc-socket.pins'],
  'worked.esc-contacts': ['esc.controller-socket.contacts'],
  'worked.controller-contacts': ['flight-controller.esc-socket.contacts'],
  'worked.ports': ['flight-controller.uarts'],
  'worked.rails': ['flight-controller.regulators'],
  'worked.order': ['shops.shops'],
};

export function worked<K extends keyof WorkedAt>(
  craft: Craft,
  pack: Pack | undefined,
  key: K,
): WorkedAt[K] | undefined {
  // What is the craft's alone is worked out once, whichever pack is looked at.
  const name = pack && key.startsWith('worked.pack') ? `${key} ${pack.name}` : key;
  return once(craft, name, () => makers[key](craft, pack) as WorkedAt[K] | undefined);
}

const makers: { readonly [K in keyof WorkedAt]: (craft: Craft, pack: Pack | undefined) => WorkedAt[K] | undefined } = {
  'worked.pack-full-voltage': (_, pack) => {
    const cells = pack?.facts.cells;
    return cells && { ...cells, value: cells.value.series * cellVoltage(pack.facts.chemistry?.value).full };
  },
  'worked.pack-motor-current': (craft, pack) => {
    const made = valuesFor(craft, pack);
    const { motors } = craft.roles;
    if (!made?.full.ok || !motors?.kv || !pack) return undefined;
    const typical = made.full.value.escCurrent;
    const value = lazily<{ readonly typical: number; readonly high: number }>({
      typical: () => typical,
      high: () => {
        const full = figuresFor(craft, pack)?.full;
        return full?.ok ? full.value.escCurrent.high : typical;
      },
    });
    return { ...motors.kv, value };
  },
  'worked.pack-current': (craft, pack) => {
    const made = valuesFor(craft, pack);
    if (!made?.full.ok || !pack?.facts.cells) return undefined;
    return {
      ...pack.facts.cells,
      value: { peak: made.full.value.packCurrent, mean: made.asFlown.ok ? made.asFlown.value.meanCurrent : undefined },
    };
  },
  'worked.pack-values': (craft, pack) => resting(pack, valuesFor(craft, pack)),
  'worked.pack-figures': (craft, pack) => resting(pack, pack && figuresFor(craft, pack)),
  'worked.pack-weight': (craft, pack) => pack?.facts.cells && { ...pack.facts.cells, value: weightOf(craft, pack) },
  'worked.motor-screw': (craft) => motorScrew(craft),
  'worked.stack-screw': (craft) => stackScrew(craft),
  'worked.stack-height': (craft) => stackHeight(craft),
  'worked.propeller-gap': (craft) => {
    const gap = propellerGap(craft);
    return gap && { ...gap.rests, value: gap };
  },
  'worked.harness': (craft) => {
    const harness = craftHarness(craft);
    return harness && { ...harness.at, value: harness };
  },
  'worked.esc-contacts': (craft) => counted(craft.roles.esc?.['controller-socket']),
  'worked.controller-contacts': (craft) => counted(craft.roles['flight-controller']?.['esc-socket']),
  'worked.ports': (craft) => {
    const plan = planPorts(craft);
    const rests = craft.roles['flight-controller']?.uarts;
    return plan && rests && { ...rests, value: plan };
  },
  'worked.rails': (craft) => {
    const rails = planRails(craft);
    const rests = craft.roles['flight-controller']?.regulators;
    return rails && rests && { ...rests, value: rails };
  },
  'worked.order': (craft) =>
    craft.shops.length === 0 ? undefined : { at: craft.where, text: '', value: craftOrder(craft) },
};

function counted(socket: Parameters<typeof contactsOf>[0]): Worked<number> | undefined {
  const value = contactsOf(socket);
  const rests = socket?.contacts ?? socket?.pins;
  return value === undefined || !rests ? undefined : { ...rests, value };
}

const resting = <T>(pack: Pack | undefined, value: T | undefined): Worked<T> | undefined =>
  value === undefined || !pack?.facts.cells ? undefined : { ...pack.facts.cells, value };

/** A few packs of a few craft that are being edited. */
const latelyValues = lately(16, values);
const latelyFigures = lately(16, figures);

export const inputFor = (craft: Craft, pack: Pack): FlightInput =>
  once(craft, `input ${pack.name}`, () => flightInput(craft, pack));

export const valuesFor = (craft: Craft, pack: Pack | undefined): CraftValues | undefined =>
  pack &&
  once(craft, `values ${pack.name}`, () => {
    const input = inputFor(craft, pack);
    return input.ok ? latelyValues(input.input) : undefined;
  });

export const figuresFor = (craft: Craft, pack: Pack): CraftFigures | undefined =>
  once(craft, `figures ${pack.name}`, () => {
    const input = inputFor(craft, pack);
    return input.ok ? latelyFigures(input.input) : undefined;
  });
