/** `dryfit check`: what doesn't fit in the named files. Chooses files and form; the findings come from the analysis. */
import { statSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { type Analysis, analyse } from '../analysis';
import { type Finding, isAtLeast, type Severity } from '../build/finding';
import { fileAsJson, findingsAsJson, type Where } from '../report/findings-json';
import { findingsAsText } from '../report/findings-text';
import { visible } from '../report/markdown-safe';
import { changedSince } from './changed';
import { forHost, isForHost, repositoryAbove } from './check-hosts';
import { CannotRun, type Console } from './console';
import { open, shown } from './files';
import { readShard, shardOf } from './shard';

const formats = ['text', 'json', 'ndjson', 'sarif', 'annotations', 'markdown'] as const;

export function check(args: readonly string[], console: Console): number {
  const { values, positionals } = words(args);
  const format = oneOf('format', values.format ?? 'text', formats);
  const threshold = oneOf('fail-on', values['fail-on'] ?? 'error', ['error', 'warning', 'information']) as Severity;
  const shard = values.shard === undefined ? undefined : readShard(values.shard);
  const since = values['changed-since'];
  const choose = (asked: readonly string[]): readonly string[] => {
    const changed = since === undefined ? undefined : changedSince(console.cwd, since);
    const left = changed ? asked.filter((file) => changed.has(file)) : asked;
    return shard ? shardOf(left, shard, (file) => statSync(file).size) : left;
  };
  const { workspace, asked, uri } = open(
    console.cwd,
    positionals,
    values,
    shard || since !== undefined ? choose : undefined,
  );
  const bench = values.bench === undefined ? undefined : benchUri(console.cwd, values.bench, workspace, uri);
  const run = (file: string): Analysis => analyse(workspace, uri(file), { bench, today: console.today })!;
  // Hosts call files by their path from the top of the repository.
  const top = isForHost(format) ? (repositoryAbove(console.cwd) ?? console.cwd) : console.cwd;
  const where = {
    name: (file: string): string => shown(top, fileURLToPath(file)),
    file: (file: string) => workspace.get(file),
  };
  if (format === 'ndjson') {
    // Written file by file: thousands need not be in memory at once.
    const findings = asked.flatMap((file) => {
      const analysis = run(file);
      console.out(`${JSON.stringify(fileAsJson(analysis, where))}\n`);
      return analysis.findings;
    });
    return exitCode(findings, threshold);
  }
  const analyses = asked.map(run);
  const findings = analyses.flatMap((analysis) => analysis.findings);
  console.out(isForHost(format) ? forHost(format, analyses, where) : plain(format, analyses, where));
  return exitCode(findings, threshold);
}

function plain(format: string, analyses: readonly Analysis[], where: Where): string {
  return format === 'json'
    ? `${JSON.stringify(findingsAsJson(analyses, where), null, 2)}\n`
    : findingsAsText(analyses, { ...where, name: (file) => visible(where.name(file)) });
}

function exitCode(findings: readonly Finding[], threshold: Severity): number {
  const counted = findings.filter((finding) => finding.accepted === undefined || finding.danger !== undefined);
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
        'changed-since': { type: 'string' },
        shard: { type: 'string' },
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
