/** Sends findings: at once for what is open, little by little for the other files of the workspace. Finds nothing itself. */
import type { Connection, Diagnostic } from 'vscode-languageserver';
import { diagnosticOf } from '../language/protocol';
import type { Session } from './session';

/** Work on files that nobody looks at pauses this often, in ms, so that an answer is never kept waiting. */
const pause = 8;

export class Publishing {
  /** Nothing is shown before the folders are read: every `use:` would look lost. */
  private ready = false;
  private readonly waiting = new Set<string>();
  private working = false;
  /** What was last sent for a file that is not open, to send only what differs. */
  private readonly sent = new Map<string, string>();

  constructor(
    private readonly connection: Connection,
    private readonly session: Session,
  ) {}

  start(): void {
    this.ready = true;
    this.everything();
  }

  /** One file has changed. @param shared whether others may see a difference */
  changed(uri: string, shared: boolean): void {
    if (shared) this.everything();
    else this.show(uri);
  }

  /** A file is gone, or closed: its findings are those of the disk, or none. */
  closed(uri: string, spelled: string): void {
    this.session.forget(uri);
    if (spelled !== uri || !this.session.workspace.get(uri))
      void this.connection.sendDiagnostics({ uri: spelled, diagnostics: [] });
    this.sent.delete(uri);
    this.later(uri);
  }

  private everything(): void {
    for (const uri of this.session.open.keys()) this.show(uri);
    for (const uri of new Set([...this.session.workspace.uris(), ...this.sent.keys()]))
      if (!this.session.open.has(uri)) this.later(uri);
  }

  private show(uri: string): void {
    const shown = this.session.open.get(uri);
    if (!shown) {
      this.later(uri);
      return;
    }
    const diagnostics = this.ready ? this.diagnosticsOf(uri) : undefined;
    if (!diagnostics) return;
    this.sent.delete(uri);
    void this.connection.sendDiagnostics({ uri: shown.spelled, version: shown.document.version, diagnostics });
  }

  private diagnosticsOf(uri: string): Diagnostic[] | undefined {
    const analysis = this.session.analysisOf(uri);
    return analysis?.findings.map((finding) => diagnosticOf(this.session.files, analysis.file, finding));
  }

  private later(uri: string): void {
    this.waiting.add(uri);
    if (this.working || !this.ready) return;
    this.working = true;
    setTimeout(() => this.work(), 0);
  }

  private work(): void {
    let spent = 0;
    for (const uri of this.waiting) {
      this.waiting.delete(uri);
      if (this.session.open.has(uri)) continue;
      const diagnostics = this.diagnosticsOf(uri) ?? [];
      this.session.forget(uri);
      const text = JSON.stringify(diagnostics);
      if ((this.sent.get(uri) ?? '[]') !== text) void this.connection.sendDiagnostics({ uri, diagnostics });
      if (diagnostics.length > 0) this.sent.set(uri, text);
      else this.sent.delete(uri);
      // A build takes a millisecond or two; there is no clock to ask here.
      spent += 2;
      if (spent >= pause) break;
    }
    if (this.waiting.size > 0) setTimeout(() => this.work(), 0);
    else this.working = false;
  }
}
