/** The prefix tests of some samples, shared by several test files so that several cores can run them. */
import { expect, it } from 'vitest';
import { type Analysis, analyse } from '../../server/src/analysis';
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
        let before: Analysis | undefined;
        for (let end = 0; end <= text.length; end++) {
          before = throughEverything(workspace, sampleUri(name), text.slice(0, end), end, before);
          // What is taken over from letter to letter never adds up to anything else than a fresh look.
          if (end % 40 === 0) expect(before.findings).toEqual(analyse(workspace, sampleUri(name))!.findings);
        }
        expect(workspace.get(sampleUri(name))!.text).toBe(text);
      });
}
