/** Which names findings may have: those of the checks, and those of mistakes of form, which no check file stands for. */
import { allChecks } from './generated/all';
import { shopFindingNames } from './shop-files';

/** Findings that the reading of files makes itself. */
export const formFindings = [
  'yaml-syntax',
  'key-twice',
  'alias-unknown',
  'text-cut-short',
  'file-too-large',
  'file-too-deep',
  'not-text',
  'file-kind-missing',
  'file-kind-unknown',
  'key-unknown',
  'key-missing',
  'value-empty',
  'value-misread',
  'value-shape',
  'term-unknown',
  'part-unknown',
  'part-of-other-kind',
  'part-defined-twice',
  'role-filled-twice',
  'facts-missing',
  'accepted-needlessly',
  'check-unknown',
  'check-crashed',
  'rules-profile-old',
  'too-many-findings',
  ...shopFindingNames,
] as const;

const known: ReadonlySet<string> = new Set<string>([...allChecks.map((check) => check.id), ...formFindings]);

export const isCheck = (name: string): boolean => known.has(name);
