/** A file system in memory for an editor without a disk: its first content comes with the page, and what is written is handed back; knows nothing of builds. */
const vscode = require('vscode');

const scheme = 'memory';

exports.activate = ({ extensionUri, subscriptions }) => {
  subscriptions.push(memoryFiles(extensionUri));
};

function memoryFiles({ scheme: transport, authority }) {
  const { FileType, FileChangeType, FileSystemError } = vscode;
  /** Text by path; null is a folder. */
  const files = new Map([['/', null]]);
  const changed = new vscode.EventEmitter();
  const born = Date.now();

  const put = (path, bytes) => {
    const folders = path.split('/').slice(1, -1);
    for (let depth = 1; depth <= folders.length; depth++) files.set(`/${folders.slice(0, depth).join('/')}`, null);
    files.set(path, bytes);
  };
  const have = ({ path }) => {
    if (!files.has(path)) throw FileSystemError.FileNotFound(path);
    return files.get(path);
  };
  const page = `${transport}://${authority}`;
  const filled = fetch(`${page}/seed`)
    .then((response) => response.json())
    .then((seed) => {
      for (const [path, text] of Object.entries(seed)) put(path, new TextEncoder().encode(text));
    });

  return vscode.workspace.registerFileSystemProvider(
    scheme,
    {
      onDidChangeFile: changed.event,
      watch: () => new vscode.Disposable(() => {}),
      async stat(uri) {
        await filled;
        const bytes = have(uri);
        return { type: bytes ? FileType.File : FileType.Directory, ctime: born, mtime: born, size: bytes?.length ?? 0 };
      },
      async readDirectory(uri) {
        await filled;
        have(uri);
        const above = uri.path.endsWith('/') ? uri.path : `${uri.path}/`;
        return [...files]
          .filter(([path]) => path !== above && path.startsWith(above) && !path.slice(above.length).includes('/'))
          .map(([path, bytes]) => [path.slice(above.length), bytes ? FileType.File : FileType.Directory]);
      },
      async readFile(uri) {
        await filled;
        const bytes = have(uri);
        if (!bytes) throw FileSystemError.FileIsADirectory(uri);
        return bytes;
      },
      async writeFile(uri, bytes) {
        await filled;
        const type = files.has(uri.path) ? FileChangeType.Changed : FileChangeType.Created;
        put(uri.path, bytes);
        changed.fire([{ type, uri }]);
        await fetch(`${page}/written${uri.path}`, { method: 'POST', body: bytes });
      },
      async createDirectory(uri) {
        files.set(uri.path, null);
      },
      async delete(uri) {
        files.delete(uri.path);
        changed.fire([{ type: FileChangeType.Deleted, uri }]);
      },
      async rename(from, to) {
        put(to.path, have(from));
        files.delete(from.path);
      },
    },
    { isCaseSensitive: true },
  );
}
