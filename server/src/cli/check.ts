/** `dryfit check`: what doesn't fit in the named files. Chooses files and form; the findings come from the analysis. */
import { statSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type Analysis, analyse } from '../analysis';
import { type Finding, isAtLeast, type Severity, severities } from '../build/finding';
import type { SourceFile } from '../build/source-file';
import { fileAsJson, findingsAsJson, type Where } from '../report/findings-json';
import { findingsAsText } from '../report/findings-text';
import { visible } from '../report/markdown-safe';
import { changedSince } from './changed';
import { forHost, isForHost, repositoryAbove } from './check-hosts';
import { CannotRun, type Console } from './console';
import { open, shown } from './files';
import { benchUri } from './one-build';
import { readShard, shardOf } from './shard';
import { analyseAlone } from './share';
import { analyseElsewhere, threadsFor } from './share-thread';
import { asJson, oneOf, text, wordsOf } from './words';

const formats = ['text', 'json', 'ndjson', 'sarif', 'annotations', 'markdown'] as const;

export function check(args: readonly string[], console: Console): number | Promise<number> {
  const { values, positionals } = wordsOf(args, {
    format: text,
    'fail-on': text,
    'changed-since': text,
    shard: text,
    threads: text,
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
  const options = { bench, today: console.today };
  /** Files of builds that the workspace has let go. */
  const seen = new Map<string, SourceFile>();
  const noted = (analysis: Analysis): Analysis => {
    seen.set(analysis.file.uri, analysis.file);
    return analysis;
  };
  const run = (file: string): Analysis => {
    const alone = late.get(file);
    if (alone === undefined) return analyse(workspace, uri(file), options)!;
    return noted(analyseAlone(workspace, uri(file), alone, options));
  };
  // Hosts call files by their path from the top of the repository.
  const top = isForHost(format) ? (repositoryAbove(console.cwd) ?? console.cwd) : console.cwd;
  const where = {
    name: (file: string): string => shown(top, fileURLToPath(file)),
    file: (file: string) => workspace.get(file) ?? seen.get(file),
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
  const report = (analyses: readonly Analysis[]): number => {
    const findings = analyses.flatMap((analysis) => analysis.findings);
    console.out(isForHost(format) ? forHost(format, analyses, where) : plain(format, analyses, where));
    return exitCode(findings, threshold);
  };
  const threads = threadsFor(late.size, values.threads === undefined ? undefined : readThreads(values.threads));
  if (threads === 1) return report(asked.map(run));
  const shares = Array.from({ length: threads }, (_, share) => [...late].filter((_, i) => i % threads === share));
  const around = workspace.uris().map((one) => [one, workspace.get(one)!.text] as const);
  const elsewhere = shares.slice(1).map((share) => {
    const builds = share.map(([file, said]) => [uri(file), said] as const);
    return analyseElsewhere({ around, builds, ...options });
  });
  // Meanwhile this thread does what is left.
  const theirs = new Set(shares.slice(1).flatMap((share) => share.map(([file]) => file)));
  const own = asked.flatMap((file) => (theirs.has(file) ? [] : [run(file)]));
  return Promise.all(elsewhere).then((done) => {
    const all = new Map([...own, ...done.flat().map(noted)].map((analysis) => [analysis.file.uri, analysis]));
    return report(asked.map((file) => all.get(uri(file))!));
  });
}

function readThreads(said: string): number {
  const threads = Number(said);
  if (!/^\d{1,2}$/.test(said) || threads < 1)
    throw new CannotRun(`--threads takes a number from 1 to 99; not \`${said}\`.`);
  return threads;
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
