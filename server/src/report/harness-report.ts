/** The cable between ESC and flight controller: wire by wire what it joins, what that does, and what to move. Lays out; works nothing out itself. */
import type { CraftHarness } from '../plan/craft-harness';
import type { DangerClass, Pair, Reading } from '../plan/harness';
import { type Rows, tableAsMarkdown, tableAsText } from './table';

const verdicts: Readonly<Record<DangerClass, string>> = {
  0: 'Plug it in: every wire meets its like.',
  1: 'Harmless: set the motor order in the firmware, or move the wires.',
  2: 'Move the wires before use: readings would be wrong or a motor dead.',
  3: 'Do not plug it in as it is: one wrong plug-in may damage a pin.',
  4: 'Do not plug it in: without a common ground the current goes through a signal pin, which burns within seconds.',
  5: 'Do not plug it in: battery voltage would reach a pin that it destroys.',
};

const effects: Readonly<Record<DangerClass, string>> = {
  0: 'right',
  1: 'harmless, but not right',
  2: 'wrong reading or dead channel',
  3: 'stresses a pin',
  4: 'burns',
  5: 'destroys at plug-in',
};

export interface HarnessReport {
  readonly verdict: string;
  readonly danger: DangerClass;
  readonly mirrored: { readonly danger: DangerClass; readonly verdict: string } | undefined;
  readonly pairs: readonly Pair[];
  readonly moves: Reading['moves'];
  readonly remap: Reading['remap'];
  readonly wires: Readonly<Record<string, number>>;
  readonly cable: string;
}

export function harnessReport(harness: CraftHarness): HarnessReport {
  const { reading, mirrored, cable } = harness;
  return {
    verdict: verdicts[reading.danger],
    danger: reading.danger,
    mirrored: mirrored && { danger: mirrored.danger, verdict: verdicts[mirrored.danger] },
    pairs: reading.pairs,
    moves: reading.moves,
    remap: reading.remap,
    wires: Object.fromEntries([...reading.wanted].map(([contact, hole]) => [String(contact), hole])),
    cable:
      typeof cable === 'string'
        ? harness.assumed
          ? `${cable}, as nothing was said`
          : cable
        : 'wire by wire, as written',
  };
}

export const pairRows = (report: HarnessReport): Rows => ({
  heads: ['ESC', 'carries', 'controller', 'expects', 'which is'],
  rows: report.pairs.map((pair) => [
    String(pair.esc),
    pair.from,
    String(pair.controller),
    pair.to,
    effects[pair.danger],
  ]),
});

export const moveLines = (report: HarnessReport): readonly string[] => {
  if (report.danger === 0) return [];
  const lines: string[] = [];
  if (report.remap)
    lines.push(
      `Or leave the wires and set the motor order in the firmware to ${report.remap.join('-')}, propellers off; flashing it anew forgets that.`,
    );
  if (report.moves.length > 0)
    lines.unshift(
      `Move in the plug at the flight controller: ${report.moves.map((move) => `${move.role} from hole ${move.from} to hole ${move.to}`).join('; ')}.`,
    );
  return lines;
};

/** Always after wires were moved; the meter decides, not the drawing. */
const gate = [
  'Plug the cable into the ESC only. Its far GND contact to battery minus: below 1 Ω.',
  'Its far VBAT contact to battery plus: below 1 Ω. VBAT to GND: no short.',
  'Each signal contact to VBAT: open.',
  'Battery through a current limiter, flight controller not plugged in: VBAT shows the pack, every other contact at most 3.6 V.',
  'Only then plug in the flight controller.',
];

const mirroredLine = (report: HarnessReport): readonly string[] =>
  report.mirrored
    ? [
        `It is not known from which end the drawings count. Read the other way round: ${report.mirrored.verdict} Find contact 1 with a meter before anything is powered.`,
      ]
    : [];

export function harnessAsText(report: HarnessReport): string {
  const lines = [
    `Cable: ${report.cable}`,
    '',
    tableAsText(pairRows(report)),
    '',
    report.verdict,
    ...mirroredLine(report),
    ...moveLines(report),
  ];
  if (report.danger > 0 || report.mirrored)
    lines.push('', 'With the meter, before power:', ...gate.map((step, i) => `  ${i + 1}. ${step}`));
  return `${lines.join('\n')}\n`;
}

export function harnessAsMarkdown(report: HarnessReport): string {
  const parts = [
    `**${report.verdict}**`,
    tableAsMarkdown(pairRows(report)),
    ...mirroredLine(report),
    ...moveLines(report),
  ];
  if (report.danger > 0 || report.mirrored)
    parts.push(`With the meter, before power:\n\n${gate.map((step, i) => `${i + 1}. ${step}`).join('\n')}`);
  return parts.join('\n\n');
}
