/** What happens when a device's lead is plugged straight into the flight controller: contact by contact. Knows no build. */
import type { PinMap, PinRole } from './harness';

export interface PlugTrouble {
  readonly words: string;
  /** Supply where it destroys something. */
  readonly grave: boolean;
  /** Both lists say where contact 1 is. */
  readonly sure: boolean;
}

const supplies: ReadonlySet<PinRole> = new Set(['VBAT', '5V', '3V3', '9V', '12V']);

/** Both ends call sending TX; so TX meets RX. */
const partner = (role: PinRole): PinRole => (role === 'TX' ? 'RX' : role === 'RX' ? 'TX' : role);

export function plugTrouble(board: PinMap, device: PinMap, sure: boolean): PlugTrouble | undefined {
  const wrong: { readonly text: string; readonly grave: boolean }[] = [];
  let crossings = 0;
  let serial = 0;
  for (const [contact, here] of board) {
    const there = device.get(contact);
    if (there === undefined || here === 'NC' || there === 'NC') continue;
    const isSerial = (here === 'TX' || here === 'RX') && (there === 'TX' || there === 'RX');
    if (isSerial) {
      serial++;
      if (here === there) crossings++;
      continue;
    }
    if (there === here || there === partner(here)) continue;
    // A unit may name its supply otherwise than the board names its rail; the voltages are compared elsewhere.
    if (supplies.has(here) && supplies.has(there)) continue;
    const grave = supplies.has(here) || supplies.has(there);
    wrong.push({ text: `${here} of the flight controller meets ${there} (contact ${contact})`, grave });
  }
  // Lists written from the board's side say TX where the device's RX is; when all are alike that is what happened.
  if (wrong.length === 0)
    return crossings > 0 && crossings < serial
      ? { words: 'one of the two serial wires meets its like, TX on TX or RX on RX', grave: false, sure }
      : undefined;
  return {
    words: wrong
      .slice(0, 3)
      .map((one) => one.text)
      .join(', '),
    grave: wrong.some((one) => one.grave),
    sure,
  };
}
