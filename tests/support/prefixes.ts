/** The prefix tests of some samples, shared by several test files so that several cores can run them. */
import { expect, it } from 'vitest';
import { sampleNames, sampleText, sampleUri, sampleWorkspace } from './samples';
import { throughEverything } from './through-everything';

export function prefixTests(chosen: (name: string) => boolean): void {
  for (const name of sampleNames.filter(chosen))
    for (const [kind, lineEnd] of [
      ['LF', '\n'],
      ['CRLF', '\r\n'],
    ] as const)
      it(`${name}, ${kind}`, { timeout: 240_000 }, () => {
        const workspace = sampleWorkspace();
        const text = sampleText(name).replace(/\r?\n/g, lineEnd);
        for (let end = 0; end <= text.length; end++)
          throughEverything(workspace, sampleUri(name), text.slice(0, end), end);
        expect(workspace.get(sampleUri(name))!.text).toBe(text);
      });
}
