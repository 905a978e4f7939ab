/** The set-up sheet and the charging plan as text, Markdown and JSON. Decides nothing. */
import type { Craft } from '../build/craft';
import { type Charging, chargingPlan } from '../plan/charging-plan';
import { type SetupGroup, type SetupRow, setupSheet } from '../plan/setup-sheet';
import { tableAsMarkdown, tableAsText } from './table';

export interface SetupReport {
  readonly name: string;
  readonly rows: readonly SetupRow[];
  readonly charging: readonly Charging[];
}

export const setupReport = (craft: Craft): SetupReport => ({
  name: craft.said.name?.value ?? 'craft',
  rows: setupSheet(craft),
  charging: chargingPlan(craft),
});

const titles: Readonly<Record<SetupGroup, string>> = {
  ports: 'Ports',
  pads: 'At the pads',
  motors: 'Motors',
  sensors: 'Sensors',
  cells: 'Battery voltages, each cell',
  receiver: 'Receiver',
  video: 'Video',
  firmware: 'Firmware',
};

const basis: Readonly<Record<SetupRow['basis'], string>> = {
  said: 'the build',
  part: 'the part',
  'worked out': 'worked out',
  usual: 'usual, not decided',
};

const textHeads = ['', '', 'from', 'gate', ''];
const cells = (row: SetupRow): readonly string[] => [
  row.setting,
  row.value + (row.note ? ` (${row.note})` : ''),
  basis[row.basis],
  row.gate ?? '',
];

/** In a terminal a long note stands last, where it parts no columns. */
const textCells = (row: SetupRow): readonly string[] => [
  row.setting,
  row.value,
  basis[row.basis],
  row.gate ?? '',
  row.note ?? '',
];

const groups = (report: SetupReport): readonly (readonly [string, readonly SetupRow[]])[] =>
  (Object.keys(titles) as SetupGroup[]).flatMap((group) => {
    const rows = report.rows.filter((row) => row.group === group);
    return rows.length > 0 ? [[titles[group], rows] as const] : [];
  });

const chargingHeads = ['pack', 'charge to', 'current', 'time', 'store at', 'plug', 'side by side'];
const chargingCells = (one: Charging): readonly string[] => [
  `${one.pack} (${one.count})`,
  one.cannot ? `not here: ${one.cannot}` : `${one.full.toFixed(2)} V`,
  one.current === undefined
    ? 'capacity not known'
    : `${one.current.toFixed(2)} A${one.limitedBy ? ` (${one.limitedBy})` : ''}`,
  one.minutes === undefined ? '' : `${one.minutes} min`,
  `${one.storage.toFixed(2)} V`,
  one.plugName === undefined ? '' : one.plug === 'adapter' ? `${one.plugName}, by adapter` : one.plugName,
  one.together === 1 ? 'one at a time' : `${one.together}, alike and within 0.1 V a cell`,
];

const careful =
  'Charge attended, balanced, on a surface that does not burn; never a swollen, dented or cold pack; no faster than its label allows.';

export const setupAsText = (report: SetupReport): string =>
  `${[
    `${report.name}: set-up sheet`,
    ...groups(report).flatMap(([title, rows]) => [
      '',
      title,
      tableAsText({ heads: textHeads, rows: rows.map(textCells) })
        .split('\n')
        .slice(title === 'Ports' ? 0 : 1)
        .join('\n'),
    ]),
    ...(report.charging.length > 0
      ? [
          '',
          'Charging',
          `  ! ${careful}`,
          tableAsText({ heads: chargingHeads, rows: report.charging.map(chargingCells) }),
        ]
      : []),
  ].join('\n')}\n`;

export const setupAsMarkdown = (report: SetupReport): string =>
  `${[
    `# ${report.name}: set-up sheet`,
    ...groups(report).flatMap(([title, rows]) => [
      '',
      `## ${title}`,
      '',
      tableAsMarkdown({ heads: ['setting', 'value', 'from', 'gate'], rows: rows.map(cells) }),
    ]),
    ...(report.charging.length > 0
      ? [
          '',
          '## Charging',
          '',
          `> **Caution.** ${careful}`,
          '',
          tableAsMarkdown({ heads: chargingHeads, rows: report.charging.map(chargingCells) }),
        ]
      : []),
  ].join('\n')}\n`;

export const setupAsJson = (report: SetupReport): unknown => ({
  name: report.name,
  settings: report.rows.map((row) => ({ ...row, gate: row.gate ?? null, note: row.note ?? null })),
  charging: report.charging.map((one) => ({
    ...one,
    current: one.current ?? null,
    minutes: one.minutes ?? null,
    limitedBy: one.limitedBy ?? null,
    plug: one.plug ?? null,
    plugName: one.plugName ?? null,
    cannot: one.cannot ?? null,
  })),
});
