/** Reads a check's example back into plain data, every scalar as its source text. For the examples only; files of users are read by the engine. */
import { parseAllDocuments } from 'yaml';
import { unmark } from '../support/marked';
import type { Branch } from './tree';

export interface Example {
  readonly build: Branch;
  readonly bench: Branch | undefined;
  /** Shops files and reference builds that stand beside it. */
  readonly beside: readonly Branch[];
  /** Another kind of file stands in it, which cannot be laid over a build. */
  readonly other: boolean;
}

export function readExample(marked: string): Example {
  const documents = parseAllDocuments(unmark(marked).text, { schema: 'failsafe', version: '1.2' }).map(
    (document) => document.toJS() as Branch,
  );
  const build = documents.find((one) => one.dryfit === 'build');
  const bench = documents.find((one) => one.dryfit === 'bench');
  const beside = documents.filter((one) => one.dryfit === 'shops' || (one.dryfit === 'build' && one !== build));
  const known = new Set([build, bench, ...beside]);
  return { build: build ?? {}, bench, beside, other: !build || documents.some((one) => !known.has(one)) };
}
