/** The words for a cable that joins unlike contacts; each check of the harness names the faults it answers for. Computes no wires. */
import type { Craft } from '../build/craft';
import type { Fix, Severity } from '../build/finding';
import type { CraftHarness } from '../plan/craft-harness';
import type { Fault, Reading } from '../plan/harness';
import type { Verdict } from './check';

/** What is certain: the one reading, or the milder one when both are bad enough not to be plugged in. */
export function settled(harness: CraftHarness): Reading | undefined {
  const { reading, mirrored } = harness;
  if (!mirrored) return reading;
  if (reading.danger < 4 || mirrored.danger < 4) return undefined;
  return reading.danger <= mirrored.danger ? reading : mirrored;
}

const softer: Readonly<Record<Severity, Severity>> = {
  error: 'warning',
  warning: 'information',
  information: 'information',
};

/** A finding when the gravest fault of the cable is one of these. */
export function harnessVerdict(
  craft: Craft,
  harness: CraftHarness,
  faults: readonly Fault[],
  severity: Severity,
  opening: (reading: Reading) => string,
): Verdict | undefined {
  const reading = settled(harness);
  if (!reading || !faults.includes(reading.fault)) return undefined;
  const assumed = harness.assumed ? ' The build does not describe the cable; a straight one was taken.' : '';
  return {
    at: harness.at,
    with: [
      ...(harness.at === harness.escPins ? [] : [{ fact: harness.escPins, says: 'the contacts of the ESC' }]),
      { fact: harness.controllerPins, says: 'the contacts of the flight controller' },
    ],
    severity: harness.assumed ? softer[severity] : severity,
    message: `${opening(reading)}${assumed} ${wayOut(harness, reading)}`,
    fixes: repinFixes(craft, harness, reading),
  };
}

/** `contact 1 of the ESC, VBAT, meets contact 1 of the flight controller, M1`, for the first few that are this grave. */
export function pairsInWords(reading: Reading, least: number): string {
  const worst = reading.wrong.filter((pair) => pair.danger >= least).sort((a, b) => b.danger - a.danger);
  const words = worst
    .slice(0, 3)
    .map((pair) =>
      pair.esc === pair.controller
        ? `contact ${pair.esc} joins ${pair.from} of the ESC to ${pair.to} of the flight controller`
        : `contact ${pair.esc} of the ESC (${pair.from}) leads to contact ${pair.controller} of the flight controller (${pair.to})`,
    );
  return `${words.join(', ')}${worst.length > 3 ? `, and ${worst.length - 3} more are wrong` : ''}`;
}

function wayOut(harness: CraftHarness, reading: Reading): string {
  const [other] = otherCable(harness);
  if (other) return `A ${other} cable joins everything rightly; use one.`;
  const idle = reading.wrong.filter((pair) => pair.danger > 0 && !reading.wanted.has(pair.esc)).map((pair) => pair.esc);
  const out =
    idle.length === 0
      ? ''
      : ` Take the ${idle.length === 1 ? 'wire of contact' : 'wires of contacts'} ${idle.join(', ')} out of the plug at the ESC and insulate ${idle.length === 1 ? 'it' : 'them'}.`;
  const moves = reading.moves.map((move) => `${move.role} from ${move.from} to ${move.to}`).join(', ');
  const move =
    moves === ''
      ? ''
      : ` In the plug at the flight controller move ${reading.moves.length === 1 ? 'one wire' : `${reading.moves.length} wires`}: ${moves}.`;
  return `${`${move}${out}`.trim() || 'Solder the wires one by one instead.'} Then check with a meter before anything is powered.`;
}

/** The other ready-made kind of cable, when everything would be right with it. */
function otherCable({ cable, esc, controller, reading, mirrored }: CraftHarness): readonly ('straight' | 'crossed')[] {
  if (mirrored || (cable !== 'straight' && cable !== 'crossed') || reading.danger === 0) return [];
  const size = Math.max(...esc.keys(), ...controller.keys());
  const right = [...esc].every(([contact, role]) => {
    const there = controller.get(cable === 'straight' ? size + 1 - contact : contact);
    return there === role || role === 'NC' || (there === 'NC' && role === 'TELEM');
  });
  return right ? [cable === 'straight' ? 'crossed' : 'straight'] : [];
}

/** Edits of the build's own harness only; a cable of a library serves other craft too. */
function repinFixes(craft: Craft, harness: CraftHarness, reading: Reading): readonly Fix[] {
  const { harness: said } = craft.roles;
  if (harness.mirrored || reading.wanted.size === 0) return [];
  const type = said?.type;
  if (said?.wires && !said.wires.through) {
    const backwards = said.between?.items[0]?.value === 'flight-controller';
    const edits = [...said.wires.entries].flatMap(([contact, end]) => {
      const wanted = backwards
        ? [...reading.wanted].find(([, hole]) => hole === Number(contact))?.[0]
        : reading.wanted.get(Number(contact));
      return wanted === undefined || wanted === end.value
        ? []
        : [{ file: end.at.file, span: end.at.span, text: String(wanted) }];
    });
    return edits.length > 0 ? [{ title: 'Write the wires as they should run', edits }] : [];
  }
  if (!type || type.through || !type.at.key) return [];
  const [other] = otherCable(harness);
  if (other)
    return [{ title: `Use a ${other} cable`, edits: [{ file: type.at.file, span: type.at.span, text: other }] }];
  const backwards = said?.between?.items[0]?.value === 'flight-controller';
  const wires = [...reading.wanted]
    .map(([contact, hole]) => (backwards ? `${hole}: ${contact}` : `${contact}: ${hole}`))
    .join(', ');
  return [
    {
      title: 'Write down the re-pinned wires',
      edits: [
        { file: type.at.file, span: { start: type.at.key.start, end: type.at.span.end }, text: `wires: { ${wires} }` },
      ],
    },
  ];
}
