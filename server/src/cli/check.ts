/** `dryfit check`: what doesn't fit in the named files. Chooses files and form; the findings come from the analysis. */
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { analyse } from '../analysis';
import { isAtLeast, type Severity } from '../build/finding';
import { findingsAsJson } from '../report/findings-json';
import { findingsAsText } from '../report/findings-text';
import { CannotRun, type Console } from './console';
import { open, shown } from './files';

export function check(args: readonly string[], console: Console): number {
  const { values, positionals } = words(args);
  const format = oneOf('format', values.format ?? 'text', ['text', 'json']);
  const threshold = oneOf('fail-on', values['fail-on'] ?? 'error', ['error', 'warning', 'information']) as Severity;
  const { workspace, asked, uri } = open(console.cwd, positionals, values);
  const bench = values.bench === undefined ? undefined : benchUri(console.cwd, values.bench, workspace, uri);
  const analyses = asked.map((file) => analyse(workspace, uri(file), { bench, today: console.today })!);
  const where = {
    name: (file: string): string => shown(console.cwd, fileURLToPath(file)),
    file: (file: string) => workspace.get(file),
  };
  console.out(
    format === 'json'
      ? `${JSON.stringify(findingsAsJson(analyses, where), null, 2)}\n`
      : findingsAsText(analyses, where),
  );
  const counted = analyses
    .flatMap((analysis) => analysis.findings)
    .filter((finding) => finding.accepted === undefined || finding.danger !== undefined);
  if (counted.some((finding) => finding.check === 'check-crashed')) return 2;
  return counted.some((finding) => isAtLeast(finding.severity, threshold)) ? 1 : 0;
}

function words(args: readonly string[]) {
  try {
    return parseArgs({
      args: [...args],
      allowPositionals: true,
      options: {
        format: { type: 'string' },
        'fail-on': { type: 'string' },
        bench: { type: 'string' },
        workspace: { type: 'string' },
      },
    });
  } catch (error) {
    throw new CannotRun(`${(error as Error).message.split('. ')[0]}. \`dryfit --help\` lists the options.`);
  }
}

export function oneOf(option: string, value: string, known: readonly string[]): string {
  if (!known.includes(value)) throw new CannotRun(`--${option} takes ${known.join(', ')}; not \`${value}\`.`);
  return value;
}

export function benchUri(
  cwd: string,
  name: string,
  workspace: { get(uri: string): { documents: readonly { kind: string | undefined }[] } | undefined },
  uri: (file: string) => string,
): string {
  const address = new URL(name.replaceAll('\\', '/'), `${uri(cwd)}/`).href;
  if (!workspace.get(address)?.documents.some((document) => document.kind === 'bench'))
    throw new CannotRun(`${name} is not a bench file; its first line would be \`dryfit: bench\`.`);
  return address;
}
