/** An open build is checked anew when a parts file changes, in the editor or on disk. */
import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import type * as vscode from 'vscode';
import { closeAll, fileUri, finding, noFinding, open, replace } from './workspace.ts';

const build = 'editor-tests/ill-matched.dryfit.yaml';
const parts = 'editor-tests/parts.dryfit.yaml';

describe('parts files', () => {
  let document: vscode.TextDocument;

  beforeEach(async () => {
    document = await open(build);
    await finding(document, 'esc-cells-exceeded');
  });
  afterEach(closeAll);

  it('count as they are being edited, saved or not', async () => {
    const library = await open(parts);
    await replace(library, 'cells: 3S-4S', 'cells: 3S-6S');
    await noFinding(document, 'esc-cells-exceeded');
    await replace(library, 'cells: 3S-6S', 'cells: 3S-4S');
    await finding(document, 'esc-cells-exceeded');
  });

  it('count as they are on disk', async () => {
    const file = fileUri(parts).fsPath;
    const before = readFileSync(file, 'utf8');
    try {
      writeFileSync(file, before.replace('cells: 3S-4S', 'cells: 3S-6S'));
      await noFinding(document, 'esc-cells-exceeded');
    } finally {
      writeFileSync(file, before);
    }
    await finding(document, 'esc-cells-exceeded');
  });

  it('count once they exist and no longer once they are gone', async () => {
    const file = fileUri('editor-tests/later.dryfit.yaml').fsPath;
    await replace(document, 'use: fixture-esc-4s', 'use: fixture-esc-later');
    await finding(document, 'part-unknown');
    try {
      writeFileSync(
        file,
        'dryfit: parts\nparts:\n  fixture-esc-later:\n    kind: esc\n    cells: 3S-4S\n    current: 45 A\n',
      );
      await noFinding(document, 'part-unknown');
    } finally {
      rmSync(file, { force: true });
    }
    await finding(document, 'part-unknown');
  });
});
