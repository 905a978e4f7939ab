/** What the checks on serial ports share: ports as the file wires them, and the nearest port that would do instead. */
import type { Fix } from '../build/finding';
import { nameOf, type Port, type PortPlan, unfit } from '../plan/ports';
import type { SerialNeed } from '../plan/serial-needs';

/** Devices that the file wires to a port the board has, with what makes the port unfit. */
export function wiredPorts(plan: PortPlan): readonly {
  readonly need: SerialNeed;
  readonly said: NonNullable<SerialNeed['said']>;
  readonly port: Port;
  readonly fault: ReturnType<typeof unfit>;
}[] {
  return plan.needs.flatMap((need) => {
    const port = need.said && plan.ports.find((one) => one.name === nameOf(need.said!.value));
    return need.said && port ? [{ need, said: need.said, port, fault: unfit(need, port) }] : [];
  });
}

/** A port nobody takes that would do. */
export function freePort(plan: PortPlan, need: SerialNeed): string | undefined {
  const taken = new Set([...plan.taken.values()].map((one) => one.port));
  return plan.ports.find((port) => !taken.has(port.name) && unfit(need, port) === undefined)?.name;
}

export function moveFix(plan: PortPlan, need: SerialNeed): readonly Fix[] {
  const free = freePort(plan, need);
  return free && need.said && !need.said.through
    ? [{ title: `Wire it to ${free}`, edits: [{ file: need.said.at.file, span: need.said.at.span, text: free }] }]
    : [];
}

export const moveWords = (plan: PortPlan, need: SerialNeed): string => {
  const free = freePort(plan, need);
  return free ? `Wire it to ${free}.` : 'No other free port would do; see what else could move.';
};

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
