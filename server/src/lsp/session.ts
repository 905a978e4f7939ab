/** What one connection knows: the workspace as the client sees it, what is open, and what was found last. Answers nothing by itself. */
import type { TextDocument } from 'vscode-languageserver-textdocument';
import { type Analysis, analyse } from '../analysis';
import type { Files } from '../language/protocol';
import { everything, type Showing } from '../language/showing';
import { Workspace } from '../library/workspace';
import type * as Draw from '../report/sheet/draw/index';
import { offsetAt } from '../text/lines';
import type * as Requests from './requests';
import type * as Seldom from './seldom';
import { canonicalUri } from './uri';

export interface ServerSettings {
  readonly version: string;
  /** Address on the page of all checks where this one is explained; none where there is no such page. */
  explains?(check: string): string | undefined;
  /** Today as YYYY-MM-DD; the engine itself has no clock. */
  today(): string;
  /** What answers about an open text, and what answers the seldom questions; each loaded with the first one. */
  requests(): Promise<typeof Requests>;
  seldom(): Promise<typeof Seldom>;
  /** What draws the build sheet, loaded when one is asked for. */
  drawing(): Promise<typeof Draw>;
}

export interface Place {
  readonly uri: string;
  readonly offset: number;
}

export class Session {
  readonly workspace = new Workspace();
  readonly open = new Map<string, { spelled: string; document: TextDocument }>();
  readonly files: Files;
  showing: Showing = everything;
  /** Told once the folders have been read for the first time; before that every `use:` looks lost. */
  begin: () => void = () => undefined;
  readonly begun = new Promise<void>((resolve) => {
    this.begin = resolve;
  });
  private readonly analyses = new Map<string, { shared: number; analysis: Analysis }>();

  constructor(private readonly settings: ServerSettings) {
    this.files = {
      get: (uri) => this.workspace.get(uri),
      spelled: (uri) => this.open.get(uri)?.spelled ?? uri,
      explains: (check) => settings.explains?.(check),
    };
  }

  today(): string {
    return this.settings.today();
  }

  drawing(): Promise<typeof Draw> {
    return this.settings.drawing();
  }

  analysisOf(uri: string): Analysis | undefined {
    const file = this.workspace.get(uri);
    if (!file) return undefined;
    const known = this.analyses.get(uri);
    if (known && known.analysis.file === file && known.shared === this.workspace.version) return known.analysis;
    const analysis = analyse(this.workspace, uri, { today: this.settings.today(), before: known?.analysis });
    if (analysis) this.analyses.set(uri, { shared: this.workspace.version, analysis });
    return analysis;
  }

  forget(uri: string): void {
    this.analyses.delete(uri);
  }

  at(uri: string, position: { line: number; character: number }): Place | undefined {
    const canonical = canonicalUri(uri);
    const file = this.workspace.get(canonical);
    return file && { uri: canonical, offset: offsetAt(file.text, file.lines, position) };
  }
}
