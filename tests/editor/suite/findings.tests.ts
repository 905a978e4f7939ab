/** The editor shows the findings of the engine: at the right text, with both places, and the same as the command line gives. */
import assert from 'node:assert/strict';
import { execFile } from 'node:child_process';
import path from 'node:path';
import * as vscode from 'vscode';
import { checkId, closeAll, fileUri, finding, findings, open, until } from './workspace.ts';

interface Reported {
  check: string;
  message: string;
  file: string;
  range: { start: { line: number; character: number }; end: { line: number; character: number } };
}

describe('findings', () => {
  after(closeAll);

  it('underlines the value to change and names the other place', async () => {
    const document = await open('editor-tests/ill-matched.dryfit.yaml');
    const found = await finding(document, 'esc-cells-exceeded');
    assert.equal(document.getText(found.range), '6S');
    assert.equal(found.severity, vscode.DiagnosticSeverity.Error);
    assert.equal(found.source, 'dryfit');
    assert.match(found.message, /4S.*6S/s);
    const [other] = found.relatedInformation ?? [];
    assert.ok(other, 'a related place');
    assert.equal(other.location.uri.toString(), fileUri('editor-tests/parts.dryfit.yaml').toString());
  });

  it('gives what the command line gives, for every build of the workspace', async () => {
    const files = await vscode.workspace.findFiles('**/*.dryfit.{yaml,yml}');
    assert.ok(files.length > 6, `${files.length} files found`);
    const reported = await commandLine();
    assert.ok(reported.length > 0, 'the command line finds something');
    for (const uri of files) {
      const document = await open(vscode.workspace.asRelativePath(uri));
      const expected = reported
        .filter(({ file }) => fileUri(file).toString() === uri.toString())
        .map(({ check, range: { start }, message }) => `${start.line}:${start.character} ${check} ${message}`)
        .sort();
      let shown: string[] = [];
      await until(`the command line's findings in ${uri.path}`, () => {
        shown = findings(document)
          .map((each) => `${each.range.start.line}:${each.range.start.character} ${checkId(each)} ${each.message}`)
          .sort();
        return shown.join('\n') === expected.join('\n') ? true : undefined;
      }).catch(() => assert.deepEqual(shown, expected));
    }
  });
});

async function commandLine(): Promise<Reported[]> {
  const extension = vscode.extensions.getExtension('dryfit.dryfit');
  assert.ok(extension);
  const cli = path.join(extension.extensionUri.fsPath, 'dist/cli.cjs');
  const output = await new Promise<string>((resolve, reject) => {
    execFile(
      process.execPath,
      [cli, 'check', '--format', 'json'],
      // The desktop editor's executable is Node only when told so.
      {
        cwd: fileUri('').fsPath,
        env: { ...process.env, ELECTRON_RUN_AS_NODE: '1' },
        timeout: 20_000,
        maxBuffer: 2 ** 26,
      },
      (error, stdout, stderr) =>
        error && error.code !== 1 ? reject(new Error(`${error.message}\n${stderr}`)) : resolve(stdout),
    );
  });
  return JSON.parse(output).findings;
}
