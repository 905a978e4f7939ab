/** `Dryfit: New build…`: asks for class, cells and propeller, and opens the file that the server composes. Chooses no part itself. */
import * as vscode from 'vscode';

export type Ask = <T>(method: string, params?: object, token?: vscode.CancellationToken) => Promise<T>;

interface Wish {
  readonly craft: string;
  readonly cells: number;
  /** in */
  readonly propeller: number;
}

interface Built {
  readonly text: string;
  readonly left: readonly string[];
  readonly from: 'workspace' | 'samples';
}

/** Given whole when another command or a test already knows the answers. */
export function registerNewBuild(ask: Ask): vscode.Disposable {
  return vscode.commands.registerCommand('dryfit.newBuild', async (given?: Wish) => {
    const wish = given ?? (await askForWish(ask));
    if (!wish) return undefined;
    const uri = await freeFile(wish.craft);
    const built = await ask<Built | null>('dryfit/newBuild', {
      ...wish,
      uri: (uri ?? vscode.Uri.parse('untitled:new.dryfit.yaml')).toString(),
    });
    if (!built) {
      const size = `${wish.cells}S and ${wish.propeller} in propellers`;
      void vscode.window.showWarningMessage(
        `Neither this workspace nor the sample library has parts for ${wish.craft} with ${size}. Add parts with "Dryfit: New part…", or choose another size.`,
      );
      return undefined;
    }
    const document = await opened(uri, built.text);
    await vscode.window.showTextDocument(document);
    const whence =
      built.from === 'workspace'
        ? 'of parts of this workspace'
        : 'of sample parts, their values written out; replace them by yours';
    void vscode.window.showInformationMessage(`A build ${whence}.`);
    return document.uri;
  });
}

async function askForWish(ask: Ask): Promise<Wish | undefined> {
  const usual = await ask<Record<string, Omit<Wish, 'craft'>>>('dryfit/wishes');
  const chosen = await vscode.window.showQuickPick(
    Object.entries(usual).map(([label, { cells, propeller }]) => ({
      label,
      description: `usually ${cells}S, ${propeller} in`,
    })),
    { title: 'New build (1 of 3)', placeHolder: 'What kind of craft?' },
  );
  const wish = chosen && usual[chosen.label];
  if (!wish) return undefined;
  const cells = await vscode.window.showInputBox({
    title: 'New build (2 of 3)',
    prompt: 'How many cells has the pack?',
    value: `${wish.cells}S`,
    validateInput: (text) => (/^([1-9]|1[0-4])S?$/i.test(text.trim()) ? undefined : 'A number of cells, such as 6S'),
  });
  if (cells === undefined) return undefined;
  const propeller = await vscode.window.showInputBox({
    title: 'New build (3 of 3)',
    prompt: 'How large are the propellers?',
    value: `${wish.propeller} in`,
    validateInput: (text) => (inches(text) === undefined ? 'A diameter, such as 5.1 in or 40 mm' : undefined),
  });
  const size = propeller === undefined ? undefined : inches(propeller);
  return size === undefined ? undefined : { craft: chosen.label, cells: Number.parseInt(cells, 10), propeller: size };
}

function inches(text: string): number | undefined {
  const match = /^(\d+(?:[.,]\d+)?)\s*(in|inch|"|mm)?$/i.exec(text.trim());
  if (!match) return undefined;
  const number = Number(match[1]!.replace(',', '.'));
  const size = match[2]?.toLowerCase() === 'mm' ? number / 25.4 : number;
  return size >= 1 && size <= 20 ? Number(size.toFixed(2)) : undefined;
}

/** Beside the file that is open, else on top of the workspace; none in a window without a folder. */
async function freeFile(craft: string): Promise<vscode.Uri | undefined> {
  const active = vscode.window.activeTextEditor?.document.uri;
  const folder =
    active && vscode.workspace.getWorkspaceFolder(active)
      ? vscode.Uri.joinPath(active, '..')
      : vscode.workspace.workspaceFolders?.[0]?.uri;
  if (!folder) return undefined;
  for (let n = 1; ; n++) {
    const uri = vscode.Uri.joinPath(folder, `my-${craft}${n === 1 ? '' : `-${n}`}.dryfit.yaml`);
    const there = await vscode.workspace.fs.stat(uri).then(
      () => true,
      () => false,
    );
    if (!there) return uri;
  }
}

async function opened(uri: vscode.Uri | undefined, text: string): Promise<vscode.TextDocument> {
  if (!uri) return vscode.workspace.openTextDocument({ language: 'dryfit', content: text });
  await vscode.workspace.fs.writeFile(uri, new TextEncoder().encode(text));
  return vscode.workspace.openTextDocument(uri);
}
