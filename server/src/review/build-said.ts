/** All that a build draws on: its own words, the parts it uses, the bench and the settings around it, the offers for its parts. One place decides. */

import { kidOf } from '../build/slot';
import type { SourceFile } from '../build/source-file';
import type { Workspace } from '../library/workspace';
import type { FileKind } from '../vocabulary';
import { isOnlyWords } from './library';
import { nowhere, type Said, type SaidMap, saidOf } from './said';

export function buildSaid(workspace: Workspace, file: SourceFile | undefined, bench?: string): SaidMap {
  const out = new Map<string, Said>();
  if (!file) return out;
  const builds = file.documents.filter((document) => document.kind === 'build' && document.slot);
  builds.forEach((document, i) => {
    const layer = { slot: document.slot!, document, file: file.uri };
    for (const [path, said] of saidOf(layer, workspace.finder(file.uri)))
      out.set(i === 0 ? path : `${i + 1}: ${path}`, i === 0 ? said : { ...said, head: `${i + 1}: ${said.head}` });
  });
  if (builds.length === 0) return out;
  const around: [FileKind, string | undefined][] = [
    ['bench', workspace.benchFor(file.uri, bench)?.where?.file],
    ['settings', workspace.settingsFor(file.uri)?.where?.file],
  ];
  for (const [kind, uri] of around)
    for (const [path, said] of documentSaid(uri === undefined ? undefined : workspace.get(uri), kind))
      if (!isOnlyWords(path)) out.set(`${kind}.${path}`, { ...said, head: kind, through: said.at });
  const used = new Set([...out].filter(([path]) => path.endsWith('.use')).map(([, said]) => said.text));
  for (const [id, offers] of offersById(workspace)) {
    if (!used.has(id)) continue;
    for (const [path, said] of offers) out.set(path, said);
  }
  return out;
}

/** What a file of another kind says, its first document of that kind. */
export function documentSaid(file: SourceFile | undefined, kind: FileKind | undefined): SaidMap {
  const document = file?.documents.find((one) => one.kind === kind && one.slot);
  return document?.slot ? saidOf({ slot: document.slot, document, file: file!.uri }, nowhere) : new Map();
}

const offers = new WeakMap<Workspace, { version: number; byId: ReadonlyMap<string, SaidMap> }>();

/** What each shop says of a part, without when it was seen. */
export function offersById(workspace: Workspace): ReadonlyMap<string, SaidMap> {
  const known = offers.get(workspace);
  if (known?.version === workspace.version) return known.byId;
  const byId = new Map<string, Map<string, Said>>();
  for (const { file, document } of workspace.documents('shops'))
    for (const shop of kidOf(document.slot, 'shops')?.kids ?? []) {
      const currency = kidOf(shop, 'currency')?.node;
      const table = kidOf(shop, 'offers');
      for (const [id, said] of table ? saidOf({ slot: table, document, file: file.uri }, nowhere) : []) {
        const rows = said.rows?.map((row) => row.replace(/(?:, )?(?:seen|note) [^,]*/g, '').replace(/^, /, ''));
        const entry: Said = {
          ...said,
          text: rows?.join('; ') ?? said.text,
          rows,
          head: 'shops',
          through: said.at,
          hidden: currency?.is === 'scalar' ? currency.text : undefined,
        };
        byId.set(id, (byId.get(id) ?? new Map()).set(`shops.${shop.key}.offers.${id}`, entry));
      }
    }
  offers.set(workspace, { version: workspace.version, byId });
  return byId;
}
