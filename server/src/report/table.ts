/** Lays rows out as a table, for a terminal or as Markdown. Knows nothing of what stands in it. */
export interface Rows {
  readonly heads: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

export function tableAsText({ heads, rows }: Rows, indent = '  '): string {
  const all = [heads, ...rows];
  const widths = heads.map((_, i) => Math.max(...all.map((row) => (row[i] ?? '').length)));
  return all.map((row) => `${indent}${row.map((cell, i) => cell.padEnd(widths[i]!)).join('  ')}`.trimEnd()).join('\n');
}

export function tableAsMarkdown({ heads, rows }: Rows): string {
  const cell = (text: string): string => text.replaceAll('|', '\\|').replace(/[\r\n]+/g, ' ');
  const line = (row: readonly string[]): string => `| ${row.map(cell).join(' | ')} |`;
  return [line(heads), line(heads.map(() => '---')), ...rows.map(line)].join('\n');
}
