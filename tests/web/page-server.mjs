/** Serves a workbench page that has no remote behind it: the editor's files, extensions, and the files of the workspace as a seed; keeps what the page writes. */
import { createReadStream, statSync } from 'node:fs';
import { createServer } from 'node:http';
import path from 'node:path';
import { atEnd } from '../support/at-end.mjs';

const types = {
  '.js': 'text/javascript',
  '.cjs': 'text/javascript',
  '.css': 'text/css',
  '.html': 'text/html; charset=utf-8',
  '.json': 'application/json',
  '.svg': 'image/svg+xml',
  '.wasm': 'application/wasm',
};

/** The page is under a name below localhost, so that frames of it count as the same site. */
const host = 'web.localhost';

/**
 * @param {{ editor: string, extensions: Record<string, string>, seed: Record<string, string>, folder: string, settings: object }} what
 *   editor and extensions are folders on disk; seed is text by path in memory, folder the path there to open
 */
export async function servePage({ editor, extensions, seed, folder, settings }) {
  const written = new Map();
  const waiting = new Map();
  const missing = [];
  const server = createServer((request, response) => {
    const { pathname } = new URL(request.url, 'http://any');
    const file = decodeURIComponent(pathname);
    const authority = request.headers.host;
    const send = (type, text) => response.writeHead(200, { 'content-type': types[type] }).end(text);
    if (request.method === 'POST' && file.startsWith('/written/')) {
      let text = '';
      request.on('data', (chunk) => {
        text += chunk;
      });
      request.on('end', () => {
        const name = file.slice('/written'.length);
        written.set(name, text);
        waiting.get(name)?.(text);
        response.writeHead(204).end();
      });
    } else if (file === '/') send('.html', page({ authority, extensions, folder, settings }));
    else if (file === '/start.js') send('.js', start);
    else if (file === '/seed') send('.json', JSON.stringify(seed));
    else {
      const onDisk = diskFile(file, editor, extensions);
      if (onDisk === undefined || !statSync(onDisk, { throwIfNoEntry: false })?.isFile()) {
        missing.push(file);
        response.writeHead(404).end();
        return;
      }
      response.writeHead(200, { 'content-type': types[path.extname(onDisk)] ?? 'application/octet-stream' });
      createReadStream(onDisk).pipe(response);
    }
  });
  atEnd(() => {
    server.closeAllConnections();
    return new Promise((resolve) => server.close(resolve));
  });
  await new Promise((resolve) => server.listen(0, '127.0.0.1', resolve));
  const { port } = server.address();
  return {
    url: `http://${host}:${port}/`,
    port,
    host,
    missing,
    /** The text that the page writes to this path, once it does. */
    written: (name) =>
      new Promise((resolve) => {
        if (written.has(name)) resolve(written.get(name));
        else waiting.set(name, resolve);
      }),
  };
}

/** Nothing outside the two kinds of folders that are served. */
function diskFile(file, editor, extensions) {
  const [, kind, ...rest] = file.split('/');
  if (rest.includes('..')) return undefined;
  if (kind === 'editor') return path.join(editor, ...rest);
  const [name, ...inside] = rest;
  return kind === 'extension' && Object.hasOwn(extensions, name) ? path.join(extensions[name], ...inside) : undefined;
}

function page({ authority, extensions, folder, settings }) {
  const configuration = {
    folderUri: { scheme: 'memory', authority: '', path: folder },
    additionalBuiltinExtensions: Object.keys(extensions).map((name) => ({
      scheme: 'http',
      authority,
      path: `/extension/${name}`,
    })),
    configurationDefaults: settings,
    productConfiguration: {
      nameShort: 'Editor',
      nameLong: 'Editor',
      applicationName: 'editor',
      dataFolderName: '.editor',
      enableTelemetry: false,
      quality: 'stable',
    },
  };
  const attribute = JSON.stringify(configuration).replaceAll('&', '&amp;').replaceAll('"', '&quot;');
  const base = `http://${authority}/editor`;
  return `<!DOCTYPE html><html><head><meta charset="utf-8"><title>Editor</title>
<meta id="vscode-workbench-web-configuration" data-settings="${attribute}">
<meta id="vscode-workbench-auth-session" data-settings="">
<link data-name="vs/workbench/workbench.web.main" rel="stylesheet" href="${base}/out/vs/workbench/workbench.web.main.css">
</head><body aria-label=""></body>
<script src="${base}/out/vs/loader.js"></script><script src="${base}/out/vs/webPackagePaths.js"></script>
<script>
for (const name of Object.keys(self.webPackagePaths))
  self.webPackagePaths[name] = '${base}/node_modules/' + name + '/' + self.webPackagePaths[name];
require.config({ baseUrl: '${base}/out', recordStats: true, paths: self.webPackagePaths });
</script>
<script src="${base}/out/vs/workbench/workbench.web.main.nls.js"></script>
<script src="${base}/out/vs/workbench/workbench.web.main.js"></script>
<script src="/start.js"></script></html>`;
}

/** The editor's own start script takes a folder from the address only, and none in memory. */
const start = `require(['vs/workbench/workbench.web.main'], (workbench) => {
  const configuration = JSON.parse(document.getElementById('vscode-workbench-web-configuration').dataset.settings);
  const workspace = { folderUri: workbench.URI.revive(configuration.folderUri) };
  workbench.create(document.body, {
    ...configuration,
    workspaceProvider: { workspace, trusted: true, payload: [], open: async () => false },
  });
});`;
