/** One language server process over stdio, with the clock, its CPU time and its memory. Knows no particular server. */
import { spawn } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { createMessageConnection, StreamMessageReader, StreamMessageWriter } from 'vscode-jsonrpc/node';

export class TimedServer {
  constructor(command, { settings = {}, folder }) {
    this.began = performance.now();
    this.child = spawn(command[0], command.slice(1), {
      stdio: ['pipe', 'pipe', process.env.DRYFIT_BENCH_VERBOSE ? 'inherit' : 'ignore'],
    });
    this.settings = settings;
    this.folder = folder;
    this.waiting = [];
    this.connection = createMessageConnection(
      new StreamMessageReader(this.child.stdout),
      new StreamMessageWriter(this.child.stdin),
    );
    this.connection.onNotification('textDocument/publishDiagnostics', (params) => {
      this.waiting = this.waiting.filter((wait) => !wait(params));
    });
    this.connection.onRequest('workspace/configuration', ({ items }) =>
      items.map(({ section }) => this.settings[section] ?? {}),
    );
    for (const method of [
      'client/registerCapability',
      'workspace/workspaceFolders',
      'window/workDoneProgress/create',
      'vscode/content',
      'custom/schema/request',
      'custom/schema/content',
      'workspace/codeLens/refresh',
    ])
      this.connection.onRequest(method, () => null);
    this.connection.listen();
  }

  async initialize() {
    await this.connection.sendRequest('initialize', {
      processId: process.pid,
      rootUri: this.folder,
      workspaceFolders: [{ uri: this.folder, name: 'bench' }],
      capabilities: {
        workspace: { configuration: true, workspaceFolders: true, didChangeConfiguration: {} },
        textDocument: {
          hover: { contentFormat: ['markdown'] },
          publishDiagnostics: { versionSupport: true },
          completion: { completionItem: { snippetSupport: true } },
        },
      },
    });
    this.initialized = performance.now() - this.began;
    await this.connection.sendNotification('initialized', {});
    await this.connection.sendNotification('workspace/didChangeConfiguration', { settings: this.settings });
  }

  next(uri, fits) {
    return new Promise((resolve, reject) => {
      const limit = setTimeout(
        () => reject(new Error(`no diagnostics for ${uri} from ${this.child.spawnargs.join(' ')}`)),
        20_000,
      );
      this.waiting.push((params) => {
        if (params.uri !== uri || !fits(params)) return false;
        clearTimeout(limit);
        resolve(params);
        return true;
      });
    });
  }

  /** ms of CPU of all threads so far, to the microsecond; what the process as a whole is said to have used comes in steps of 10 ms. */
  cpu() {
    const tasks = `/proc/${this.child.pid}/task`;
    return readdirSync(tasks).reduce(
      (sum, task) => sum + Number(readFileSync(`${tasks}/${task}/schedstat`, 'utf8').split(' ')[0]) / 1e6,
      0,
    );
  }

  /** MiB */
  memory() {
    return Number(/VmRSS:\s+(\d+)/.exec(readFileSync(`/proc/${this.child.pid}/status`, 'utf8'))[1]) / 1024;
  }

  stop() {
    this.connection.dispose();
    this.child.kill('SIGKILL');
  }
}
