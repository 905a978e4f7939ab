/** Entry of the suite in either host: runs every *.tests file beside it and writes down each result; holds no test itself. */
import { readdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import Mocha from 'mocha';
import * as vscode from 'vscode';

/** A host's console is full of its own lines: the results go into the report alone. */
class Silent extends Mocha.reporters.Base {}

export async function run(): Promise<void> {
  const mocha = new Mocha({ ui: 'bdd', timeout: 30_000, color: false, reporter: Silent });
  for (const file of readdirSync(__dirname).sort()) {
    if (file.endsWith('.tests.cjs')) mocha.addFile(path.join(__dirname, file));
  }
  const passed: string[] = [];
  const failed: string[] = [];
  const skipped: string[] = [];
  const errors: string[] = [];
  await new Promise<void>((resolve) => {
    mocha
      .run(() => resolve())
      .on('pass', (test) => passed.push(test.fullTitle()))
      .on('pending', (test) => skipped.push(test.fullTitle()))
      .on('fail', (test, error: Error) => {
        failed.push(test.fullTitle());
        errors.push(`${test.fullTitle()}\n${error.stack ?? error.message}`);
      });
  });
  const host = `editor ${vscode.version}, Node ${process.versions.node}`;
  const report = process.env.DRYFIT_EDITOR_REPORT;
  if (report) writeFileSync(report, JSON.stringify({ host, passed, failed, skipped, errors }));
  if (failed.length > 0) throw new Error(`${failed.length} of ${passed.length + failed.length} tests failed`);
}
