/** Serial ports with their devices, and the cable between ESC and flight controller wire by wire. Lays out the plans of ports and harness. */
import type { Craft } from '../../../build/craft';
import type { CraftHarness } from '../../../plan/craft-harness';
import type { PortPlan } from '../../../plan/ports';
import { type HarnessReport, harnessReport } from '../../harness-report';
import type { Spot, Spots } from './spots';

export interface PortView {
  readonly ports: readonly PortRow[];
  /** Devices for which no port is left. */
  readonly left: readonly string[];
}

export interface PortRow {
  readonly name: string;
  /** Pads that the board brings out. */
  readonly rx: boolean;
  readonly tx: boolean;
  readonly state: 'free' | 'reserved' | 'taken';
  readonly words: string;
  /** Pads that the device uses. */
  readonly usesRx: boolean;
  readonly usesTx: boolean;
  /** The file says so; otherwise it was worked out. */
  readonly said: boolean;
  readonly spot: Spot | undefined;
}

export function portView(craft: Craft, plan: PortPlan, spots: Spots): PortView {
  const { stack, 'all-in-one': board } = craft.roles;
  const part = board ? 'parts.all-in-one' : stack ? 'parts.stack' : 'parts.flight-controller';
  return {
    ports: plan.ports.map((port): PortRow => {
      const [device, taken] = [...plan.taken].find(([, one]) => one.port === port.name) ?? [];
      const need = plan.needs.find((one) => one.device === device);
      const own = { name: port.name, rx: port.rx, tx: port.tx };
      if (port.reserved !== undefined)
        return {
          ...own,
          state: 'reserved',
          words: `taken by the board: ${port.reserved}`,
          usesRx: false,
          usesTx: false,
          said: true,
          spot: spots.place(port.where, part),
        };
      if (!need)
        return {
          ...own,
          state: 'free',
          words: 'free',
          usesRx: false,
          usesTx: false,
          said: true,
          spot: spots.place(port.where, part),
        };
      return {
        ...own,
        state: 'taken',
        words: need.words,
        usesRx: need.rx,
        usesTx: need.tx,
        said: taken?.said === true,
        spot: spots.spot(need.said ?? need.because, `parts.${need.device}`),
      };
    }),
    left: plan.left.map(({ need }) => need.words),
  };
}

export interface HarnessView {
  readonly report: HarnessReport;
  readonly esc: readonly Contact[];
  readonly controller: readonly Contact[];
  /** Wires as the cable has them. */
  readonly wires: readonly { readonly esc: number; readonly controller: number; readonly danger: number }[];
  /** Wires as they should run where that differs. */
  readonly moved: readonly { readonly esc: number; readonly controller: number; readonly role: string }[];
  readonly spot: Spot | undefined;
}

export interface Contact {
  readonly number: number;
  readonly role: string;
  readonly spot: Spot | undefined;
}

export function harnessView(craft: Craft, harness: CraftHarness, spots: Spots): HarnessView {
  const part = (role: 'esc' | 'flight-controller'): string => (craft.roles.stack ? 'parts.stack' : `parts.${role}`);
  const contacts = (pins: CraftHarness['escPins'], role: 'esc' | 'flight-controller'): readonly Contact[] =>
    [...pins.entries]
      .map(([number, fact]) => ({ number: Number(number), role: fact.value, spot: spots.spot(fact, part(role)) }))
      .sort((a, b) => a.number - b.number);
  const { reading } = harness;
  return {
    report: harnessReport(harness),
    esc: contacts(harness.escPins, 'esc'),
    controller: contacts(harness.controllerPins, 'flight-controller'),
    wires: reading.pairs.map(({ esc, controller, danger, from, to }) => ({
      esc,
      controller,
      danger: from === to ? 0 : Math.max(1, danger),
    })),
    moved: [...reading.wanted].flatMap(([esc, controller]) => {
      const now = reading.pairs.find((pair) => pair.esc === esc);
      return reading.moves.length > 0 && now?.controller !== controller
        ? [{ esc, controller, role: harness.esc.get(esc) ?? '' }]
        : [];
    }),
    spot: spots.spot(harness.at, 'parts.harness'),
  };
}
