/** Tokens of a text by our grammar over the editor's own YAML grammars, as the editor itself would make them; asserts nothing. */
import { readFileSync } from 'node:fs';
import path from 'node:path';
import * as vscode from 'vscode';
import { createOnigScanner, createOnigString, loadWASM } from 'vscode-oniguruma';
import { INITIAL, parseRawGrammar, Registry } from 'vscode-textmate';

export interface Token {
  text: string;
  scopes: string;
}

export async function tokenize(text: string): Promise<Token[]> {
  const root = extensionPath('dryfit.dryfit');
  await loadWASM(readFileSync(path.join(root, 'node_modules/vscode-oniguruma/release/onig.wasm')));
  const files = grammarFiles();
  const registry = new Registry({
    onigLib: Promise.resolve({ createOnigScanner, createOnigString }),
    loadGrammar: async (scope) => {
      const file = files.get(scope);
      return file ? parseRawGrammar(readFileSync(file, 'utf8'), file) : null;
    },
  });
  const grammar = await registry.loadGrammar('source.dryfit');
  if (!grammar) throw new Error('The extension contributes no grammar source.dryfit');
  let state = INITIAL;
  return text.split('\n').flatMap((line) => {
    const { tokens, ruleStack } = grammar.tokenizeLine(line, state);
    state = ruleStack;
    return tokens.map(({ startIndex, endIndex, scopes }) => ({
      text: line.slice(startIndex, endIndex),
      scopes: scopes.join(' '),
    }));
  });
}

/** What the manifests of the running editor say, so that a wrong path in ours shows. */
function grammarFiles(): Map<string, string> {
  const files = new Map<string, string>();
  for (const id of ['vscode.yaml', 'dryfit.dryfit']) {
    const { contributes } = vscode.extensions.getExtension(id)?.packageJSON ?? {};
    for (const grammar of contributes?.grammars ?? []) {
      files.set(grammar.scopeName, path.join(extensionPath(id), grammar.path));
    }
  }
  return files;
}

function extensionPath(id: string): string {
  const extension = vscode.extensions.getExtension(id);
  if (!extension) throw new Error(`The editor lacks the extension ${id}`);
  return extension.extensionUri.fsPath;
}
