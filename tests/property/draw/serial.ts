/** Gives each device of a drawn build a serial port by hand, the strictest first, as a builder does on paper. Knows nothing of the checker's own plan. */
import type { Chip } from '../trade/boards';
import type { Luck } from './luck';

export interface SerialWish {
  readonly device: string;
  readonly rx: boolean;
  readonly tx: boolean;
  readonly inverted?: boolean;
  readonly slow?: boolean;
}

export interface SerialPads {
  readonly name: string;
  readonly pads: 'rx+tx' | 'rx' | 'tx';
  readonly inverter: 'none' | 'built-in' | 'on pad';
  readonly reserved?: string;
}

/** The ports of the board; on a chip that cannot invert one receiving pad may have an inverter. */
export function padsOf(chip: Chip, invertedPad: boolean, reserved: string | undefined): SerialPads[] {
  return chip.uarts.map(([name, pads], i) => ({
    name,
    pads,
    inverter: chip.inverts ? 'built-in' : invertedPad && i === 1 ? 'on pad' : 'none',
    ...(reserved !== undefined && i === chip.uarts.length - 1 ? { reserved } : {}),
  }));
}

/** Port by device, or nothing when one is left without. */
export function assign(
  wishes: readonly SerialWish[],
  ports: readonly SerialPads[],
  soft: number,
  blocked: string | undefined,
): Readonly<Record<string, string>> | undefined {
  const free = ports.filter((port) => port.reserved === undefined && port.name !== blocked);
  const taken: Record<string, string> = {};
  let softLeft = soft;
  const strictness = (wish: SerialWish): number =>
    (wish.inverted ? 4 : 0) + (wish.rx && wish.tx ? 2 : 0) + (wish.slow ? 0 : 1);
  for (const wish of [...wishes].sort((a, b) => strictness(b) - strictness(a))) {
    const able = free
      .filter((port) => (!wish.rx || port.pads.includes('rx')) && (!wish.tx || port.pads.includes('tx')))
      .filter((port) => (wish.inverted ? port.inverter !== 'none' : port.inverter !== 'on pad' || !wish.rx))
      .sort(
        (a, b) => a.pads.length - b.pads.length || Number(b.inverter === 'on pad') - Number(a.inverter === 'on pad'),
      );
    const port = able[0];
    if (port) {
      free.splice(free.indexOf(port), 1);
      taken[wish.device] = port.name;
    } else if (wish.slow && softLeft > 0) {
      softLeft--;
      taken[wish.device] = `soft-serial${soft - softLeft}`;
    } else return undefined;
  }
  return taken;
}

/** Without the last ones of the list, until all have a port. */
export function assignAsFar(
  wishes: readonly SerialWish[],
  ports: readonly SerialPads[],
  soft: number,
  blocked: string | undefined,
): { readonly kept: readonly SerialWish[]; readonly taken: Readonly<Record<string, string>> } {
  for (let count = wishes.length; count > 0; count--) {
    const kept = wishes.slice(0, count);
    const taken = assign(kept, ports, soft, blocked);
    if (taken) return { kept, taken };
  }
  return { kept: [], taken: {} };
}

export const shuffled = <T>(luck: Luck, list: readonly T[]): T[] => {
  const left = [...list];
  const out: T[] = [];
  while (left.length > 0) out.push(...left.splice(luck.below(left.length), 1));
  return out;
};
