/** All that a build draws on: its own words, the parts it uses, the bench and the settings around it, the offers for its parts. One place decides. */

import type { SourceFile } from '../build/source-file';
import type { Workspace } from '../library/workspace';
import type { FileKind } from '../vocabulary';
import { isOnlyWords } from './library';
import { boughtIds, nowhere, type Said, type SaidMap, saidOf, saidOfUsers } from './said';
import { shopsSaid } from './shops-said';

/** Enough to tell how an unchanged build is affected. */
export interface Narrowed {
  readonly ids: ReadonlySet<string>;
  /** Fields that may differ in what they name; absent when any may. */
  readonly keys: ReadonlySet<string> | undefined;
  /** Another bench or other settings may apply. */
  readonly around: boolean;
}

export function buildSaid(
  workspace: Workspace,
  file: SourceFile | undefined,
  bench?: string,
  narrowed?: Narrowed,
): SaidMap {
  const out = new Map<string, Said>();
  const builds = file?.documents.filter((document) => document.kind === 'build' && document.slot) ?? [];
  if (!file || builds.length === 0) return out;
  const find = workspace.finder(file.uri);
  builds.forEach((document, i) => {
    const layer = { slot: document.slot!, document, file: file.uri };
    for (const [path, said] of narrowed ? saidOfUsers(layer, find, narrowed.ids, narrowed.keys) : saidOf(layer, find))
      out.set(i === 0 ? path : `${i + 1}: ${path}`, i === 0 ? said : { ...said, head: `${i + 1}: ${said.head}` });
  });
  if (!narrowed || narrowed.around) {
    const around: [FileKind, string | undefined][] = [
      ['bench', workspace.benchFor(file.uri, bench)?.where?.file],
      ['settings', workspace.settingsFor(file.uri)?.where?.file],
    ];
    for (const [kind, uri] of around)
      for (const [path, said] of surroundingsSaid(uri === undefined ? undefined : workspace.get(uri), kind))
        out.set(path, said);
  }
  const used = new Set(builds.flatMap(({ slot }) => [...boughtIds(slot!, find)]));
  const { byPart } = shopsSaid(workspace);
  for (const id of used) for (const [path, said] of byPart.get(id) ?? []) out.set(path, said);
  return out;
}

const surroundings = new WeakMap<SourceFile, Map<FileKind, SaidMap>>();

/** What a bench or settings file says that means something to a check. */
function surroundingsSaid(file: SourceFile | undefined, kind: FileKind): SaidMap {
  if (!file) return new Map();
  const ofFile = surroundings.get(file) ?? new Map<FileKind, SaidMap>();
  surroundings.set(file, ofFile);
  let known = ofFile.get(kind);
  if (!known) {
    known = new Map(
      [...documentSaid(file, kind)]
        .filter(([path]) => !isOnlyWords(path))
        .map(([path, said]) => [`${kind}.${path}`, { ...said, head: kind, through: said.at }]),
    );
    ofFile.set(kind, known);
  }
  return known;
}

/** What a file of another kind says, its first document of that kind. */
export function documentSaid(file: SourceFile | undefined, kind: FileKind | undefined): SaidMap {
  const document = file?.documents.find((one) => one.kind === kind && one.slot);
  return document?.slot ? saidOf({ slot: document.slot, document, file: file!.uri }, nowhere) : new Map();
}
