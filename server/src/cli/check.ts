/** `dryfit check`: what doesn't fit in the named files. Chooses files and form; the findings come from the analysis. */
import { statSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type Analysis, analyse } from '../analysis';
import { type Finding, isAtLeast, type Severity, severities } from '../build/finding';
import { fileAsJson, findingsAsJson, type Where } from '../report/findings-json';
import { findingsAsText } from '../report/findings-text';
import { visible } from '../report/markdown-safe';
import { changedSince } from './changed';
import { forHost, isForHost, repositoryAbove } from './check-hosts';
import type { Console } from './console';
import { open, shown } from './files';
import { benchUri } from './one-build';
import { readShard, shardOf } from './shard';
import { asJson, oneOf, text, wordsOf } from './words';

const formats = ['text', 'json', 'ndjson', 'sarif', 'annotations', 'markdown'] as const;

export function check(args: readonly string[], console: Console): number {
  const { values, positionals } = wordsOf(args, {
    format: text,
    'fail-on': text,
    'changed-since': text,
    shard: text,
    bench: text,
    workspace: text,
  });
  const format = oneOf('format', values.format ?? 'text', formats);
  const threshold = oneOf('fail-on', values['fail-on'] ?? 'error', severities);
  const shard = values.shard === undefined ? undefined : readShard(values.shard);
  const since = values['changed-since'];
  const choose = (asked: readonly string[]): readonly string[] => {
    const changed = since === undefined ? undefined : changedSince(console.cwd, since);
    const left = changed ? asked.filter((file) => changed.has(file)) : asked;
    return shard ? shardOf(left, shard, (file) => statSync(file).size) : left;
  };
  const { workspace, asked, uri, late } = open(
    console.cwd,
    positionals,
    values,
    shard || since !== undefined ? choose : undefined,
    true,
  );
  const bench = benchUri(console.cwd, values.bench, workspace, uri);
  const lines = new Map<string, readonly number[]>();
  // What was worked out of a build is let go with its turn: of ten thousand it would be gigabytes.
  const run = (file: string): Analysis => {
    const alone = late.get(file);
    if (alone !== undefined) workspace.set(uri(file), alone);
    const analysis = analyse(workspace, uri(file), { bench, today: console.today })!;
    if (alone === undefined) return analysis;
    workspace.delete(uri(file));
    lines.set(uri(file), analysis.file.lines);
    return { ...analysis, crafts: [], file: { ...analysis.file, documents: [] } };
  };
  // Hosts call files by their path from the top of the repository.
  const top = isForHost(format) ? (repositoryAbove(console.cwd) ?? console.cwd) : console.cwd;
  const where = {
    name: (file: string): string => shown(top, fileURLToPath(file)),
    file: (file: string) => workspace.get(file) ?? (lines.has(file) ? { lines: lines.get(file)! } : undefined),
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

function plain(format: 'text' | 'json', analyses: readonly Analysis[], where: Where): string {
  return format === 'json'
    ? asJson(findingsAsJson(analyses, where))
    : findingsAsText(analyses, { ...where, name: (file) => visible(where.name(file)) });
}

function exitCode(findings: readonly Finding[], threshold: Severity): number {
  const counted = findings.filter((finding) => finding.accepted === undefined || finding.danger !== undefined);
  if (counted.some((finding) => finding.check === 'check-crashed')) return 2;
  return counted.some((finding) => isAtLeast(finding.severity, threshold)) ? 1 : 0;
}
