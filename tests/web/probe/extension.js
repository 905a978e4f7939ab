/** An extension for tests that opens every build file of the workspace and writes down what the editor then shows of it; judges nothing. Runs in Node and in a web worker. */
const vscode = require('vscode');

const answer = 'probe.json';
const quietMs = 1500;
const waitMs = 30_000;

exports.activate = () => {
  // Not awaited: the editor would hold everything else back until this extension is active.
  void run();
};

async function run() {
  const folder = vscode.workspace.workspaceFolders[0].uri;
  let report;
  try {
    report = await look(folder);
  } catch (error) {
    report = { error: String(error?.stack ?? error) };
  }
  await vscode.workspace.fs.writeFile(
    vscode.Uri.joinPath(folder, answer),
    new TextEncoder().encode(JSON.stringify(report)),
  );
}

async function look(folder) {
  const files = await buildFiles(folder);
  await vscode.workspace.openTextDocument(files[0]);
  const closed = await findingsOnceQuiet(folder);
  const documents = [];
  for (const file of files) documents.push(await vscode.workspace.openTextDocument(file));
  const opened = await findingsOnceQuiet(folder);
  const hovers = [];
  for (const document of documents) hovers.push(...(await hoversOf(document, folder)));
  const wish = { craft: 'freestyle-5', cells: 6, propeller: 5.1 };
  const built = await vscode.commands.executeCommand('dryfit.newBuild', wish);
  const began = Date.now();
  const planned = await vscode.commands.executeCommand('dryfit.planOrder', files.find(isOrdered).toString());
  const plannedMs = Date.now() - began;
  return {
    order: planned && (await vscode.workspace.openTextDocument(planned)).getText(),
    plannedMs,
    built: built && (await vscode.workspace.openTextDocument(built)).getText(),
    version: vscode.version,
    // An extension that runs in another host cannot be seen from here.
    activeHere: vscode.extensions.getExtension('dryfit.dryfit')?.isActive === true,
    // The worker's own host has a `process` too, but no way to load Node's modules.
    node: nodeHere(),
    closed,
    opened,
    hovers,
  };
}

const isOrdered = ({ path }) => path.endsWith('/builds/ossel-5.dryfit.yaml');

function nodeHere() {
  try {
    return typeof require('node:os').hostname() === 'string';
  } catch {
    return false;
  }
}

async function buildFiles(folder) {
  const found = [];
  for (const [name, type] of await vscode.workspace.fs.readDirectory(folder)) {
    const uri = vscode.Uri.joinPath(folder, name);
    if (type === vscode.FileType.Directory) found.push(...(await buildFiles(uri)));
    else if (/\.dryfit\.ya?ml$/.test(name)) found.push(uri);
  }
  return found.sort((a, b) => (a.path < b.path ? -1 : 1));
}

async function findingsOnceQuiet(folder) {
  const end = Date.now() + waitMs;
  let last = Date.now();
  const listening = vscode.languages.onDidChangeDiagnostics(() => {
    last = Date.now();
  });
  try {
    while (Date.now() < end) {
      await new Promise((resolve) => setTimeout(resolve, 100));
      if (ours().length > 0 && Date.now() - last > quietMs) break;
    }
    return ours().map(([uri, diagnostic]) => ({
      file: nameIn(folder, uri),
      check: codeOf(diagnostic),
      severity: vscode.DiagnosticSeverity[diagnostic.severity],
      message: diagnostic.message,
      start: [diagnostic.range.start.line, diagnostic.range.start.character],
      end: [diagnostic.range.end.line, diagnostic.range.end.character],
    }));
  } finally {
    listening.dispose();
  }
}

function ours() {
  return vscode.languages
    .getDiagnostics()
    .flatMap(([uri, diagnostics]) =>
      diagnostics.filter(({ source }) => source === 'dryfit').map((diagnostic) => [uri, diagnostic]),
    );
}

/** What is told over the name of the file's first thing and over each `use:`. */
async function hoversOf(document, folder) {
  const told = [];
  for (const match of document.getText().matchAll(/^(?:name: |\s*(?:- )?use: )(\S+)/gm)) {
    const at = document.positionAt(match.index + match[0].length - 1);
    const hovers = await vscode.commands.executeCommand('vscode.executeHoverProvider', document.uri, at);
    told.push({
      file: nameIn(folder, document.uri),
      over: match[0].trim(),
      words: hovers.flatMap(({ contents }) => contents.map((part) => part.value ?? part)).join('\n'),
    });
  }
  return told;
}

function nameIn(folder, uri) {
  return uri.path.slice(folder.path.length).replace(/^\//, '');
}

function codeOf({ code }) {
  return String(typeof code === 'object' ? code.value : code);
}
