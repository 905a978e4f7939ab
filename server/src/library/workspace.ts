/** The files of a workspace as last seen, with its parts by id and the bench that applies to a folder. Reads no disk: texts are given to it. */
import type { BenchFileFacts, PartsFileFacts, SettingsFileFacts, ShopsFileFacts } from '../build/generated/facts';
import type { Place } from '../build/place';
import { type FindPart, type Layer, placeOf, readMap } from '../build/read-facts';
import { kidOf } from '../build/slot';
import { type FileDocument, readSourceFile, type SourceFile } from '../build/source-file';
import type { FileKind } from '../vocabulary';

export interface LibraryPart {
  readonly id: string;
  readonly kind: string;
  readonly layer: Layer;
  /** Where its id is written. */
  readonly at: Place;
}

/** State lives here and only here: one entry a file, replaced whole when its text changes. */
export class Workspace {
  private readonly files = new Map<string, SourceFile>();
  private index: ReadonlyMap<string, readonly LibraryPart[]> | undefined;
  /** What was read of the bench and the settings around a folder. */
  private readonly nearest = new Map<string, unknown>();
  /** Grows whenever something that other files can see has changed. */
  private shared = 0;

  /** Returns whether other files may see a difference. */
  set(uri: string, text: string): boolean {
    const before = this.files.get(uri);
    if (before?.text === text) return false;
    return this.take(readSourceFile(uri, text));
  }

  /** A file read elsewhere: two workspaces that hold the same text need it read once. */
  take(file: SourceFile): boolean {
    const before = this.files.get(file.uri);
    this.files.set(file.uri, file);
    return this.noteChange(before, file);
  }

  delete(uri: string): boolean {
    const before = this.files.get(uri);
    this.files.delete(uri);
    return before ? this.noteChange(before, undefined) : false;
  }

  private noteChange(before: SourceFile | undefined, after: SourceFile | undefined): boolean {
    const matters = [before, after].some((file) => file?.documents.some(isShared));
    if (!matters) return false;
    this.index = undefined;
    this.nearest.clear();
    this.shared++;
    return true;
  }

  get version(): number {
    return this.shared;
  }

  get(uri: string): SourceFile | undefined {
    return this.files.get(uri);
  }

  uris(): readonly string[] {
    return [...this.files.keys()];
  }

  documents(kind: FileKind): readonly { file: SourceFile; document: FileDocument }[] {
    return [...this.files.values()].flatMap((file) =>
      file.documents.filter((document) => document.kind === kind).map((document) => ({ file, document })),
    );
  }

  /** Library parts by id. An id said in several files has several parts, in the order of their files' names. */
  parts(): ReadonlyMap<string, readonly LibraryPart[]> {
    this.index ??= this.indexParts();
    return this.index;
  }

  /** The part of this id; of several, the one whose file is nearest in the folders. */
  find(id: string, from: string): LibraryPart | undefined {
    const all = this.parts().get(id);
    if (!all || all.length < 2) return all?.[0];
    return all.reduce((best, part) =>
      sharedFolders(part.at.file, from) > sharedFolders(best.at.file, from) ? part : best,
    );
  }

  /** A part and the parts that it builds on, in the order in which they outweigh one another. */
  lineage(part: LibraryPart): readonly LibraryPart[] {
    const line = [part];
    for (;;) {
      const last = line.at(-1)!;
      const use = kidOf(last.layer.slot, 'use')?.node;
      const next = use?.is === 'scalar' ? this.find(use.text, last.layer.file) : undefined;
      if (!next || line.includes(next)) return line;
      line.push(next);
    }
  }

  /** For following `use:` from a file. */
  finder(from: string): FindPart {
    return (id) => (id === undefined ? undefined : this.find(id, from)?.layer);
  }

  private indexParts(): ReadonlyMap<string, readonly LibraryPart[]> {
    const index = new Map<string, LibraryPart[]>();
    const sources = [...this.documents('parts')].sort((a, b) => (a.file.uri < b.file.uri ? -1 : 1));
    for (const { file, document } of sources) {
      for (const slot of kidOf(document.slot, 'parts')?.kids ?? []) {
        const kind = kidOf(slot, 'kind')?.node;
        if (slot.node.is !== 'map') continue;
        const part: LibraryPart = {
          id: slot.key,
          kind: kind?.is === 'scalar' ? kind.text : '',
          layer: { slot, document, file: file.uri },
          at: placeOf({ slot, file: file.uri }),
        };
        const list = index.get(slot.key);
        if (list) list.push(part);
        else index.set(slot.key, [part]);
      }
    }
    return index;
  }

  /** The nearest bench file up the folders from a file, or the one that was asked for. */
  benchFor(uri: string, asked?: string): BenchFileFacts | undefined {
    return this.nearestFacts('bench', uri, asked) as unknown as BenchFileFacts | undefined;
  }

  settingsFor(uri: string): SettingsFileFacts | undefined {
    return this.nearestFacts('settings', uri) as unknown as SettingsFileFacts | undefined;
  }

  /** Read once for as long as no shared file changes: they are long, and every build is looked at with them. */
  shops(): readonly ShopsFileFacts[] {
    if (this.shopFacts?.at !== this.shared) this.shopFacts = { at: this.shared, facts: this.readShops() };
    return this.shopFacts.facts;
  }

  private shopFacts: { readonly at: number; readonly facts: readonly ShopsFileFacts[] } | undefined;

  private readShops(): readonly ShopsFileFacts[] {
    return this.documents('shops').flatMap(({ file, document }) =>
      document.slot
        ? [readMap([{ slot: document.slot, document, file: file.uri }], () => undefined) as unknown as ShopsFileFacts]
        : [],
    );
  }

  partsFacts(file: SourceFile, document: FileDocument): PartsFileFacts | undefined {
    if (!document.slot) return undefined;
    return readMap(
      [{ slot: document.slot, document, file: file.uri }],
      this.finder(file.uri),
    ) as unknown as PartsFileFacts;
  }

  private nearestFacts(kind: FileKind, uri: string, asked?: string): unknown {
    const key = `${kind} ${asked ?? folderOf(uri)}`;
    if (!this.nearest.has(key)) this.nearest.set(key, this.readNearest(kind, uri, asked));
    return this.nearest.get(key);
  }

  private readNearest(kind: FileKind, uri: string, asked?: string): unknown {
    const all = this.documents(kind).filter(({ document }) => document.slot);
    const near = asked
      ? all.filter(({ file }) => file.uri === asked)
      : all
          .filter(({ file }) => uri.startsWith(folderOf(file.uri)))
          .sort(
            (a, b) => folderOf(b.file.uri).length - folderOf(a.file.uri).length || (a.file.uri < b.file.uri ? -1 : 1),
          );
    const found = near[0];
    if (!found?.document.slot) return undefined;
    return readMap([{ slot: found.document.slot, document: found.document, file: found.file.uri }], () => undefined);
  }
}

/** Whether other files are judged by it: all but builds, and of those the references. */
const isShared = ({ kind, slot }: FileDocument): boolean =>
  kind !== undefined && (kind !== 'build' || kidOf(slot, 'reference') !== undefined);

export const folderOf = (uri: string): string => uri.slice(0, uri.lastIndexOf('/') + 1);

/** How many folders two addresses have in common. */
export function sharedFolders(a: string, b: string): number {
  const [left, right] = [a.split('/').slice(0, -1), b.split('/').slice(0, -1)];
  let n = 0;
  while (n < left.length && left[n] === right[n]) n++;
  return n;
}
