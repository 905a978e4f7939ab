/** Reads a check's example back into plain data, every scalar as its source text. For the examples only; files of users are read by the engine. */
import { parseAllDocuments } from 'yaml';
import { unmark } from '../support/marked';
import type { Branch } from './tree';

export interface Example {
  readonly build: Branch;
  readonly bench: Branch | undefined;
  /** Another kind of file stands in it, which cannot be laid over a build. */
  readonly other: boolean;
}

export function readExample(marked: string): Example {
  const documents = parseAllDocuments(unmark(marked).text, { schema: 'failsafe', version: '1.2' }).map(
    (document) => document.toJS() as Branch,
  );
  const build = documents.find((one) => one.dryfit === 'build');
  const bench = documents.find((one) => one.dryfit === 'bench');
  return { build: build ?? {}, bench, other: !build || documents.some((one) => one !== build && one !== bench) };
}
