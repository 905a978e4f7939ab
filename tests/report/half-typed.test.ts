/** Half-typed and damaged builds: the card in every form and the lenses answer with what is there. */
import { describe, expect, it } from 'vitest';
import { analyse } from '../../server/src/analysis';
import { whatIfLenses, whatIfLines } from '../../server/src/language/what-if';
import { cardOf } from '../../server/src/report/card';
import { cardAsJson } from '../../server/src/report/card-json';
import { cardAsMarkdown, cardAtAGlance } from '../../server/src/report/card-markdown';
import { cardAsText } from '../../server/src/report/card-text';
import { faultyBuilds, sampleText, sampleUri, sampleWorkspace, soundBuilds } from '../support/samples';

function everyForm(workspace: ReturnType<typeof sampleWorkspace>, uri: string, text: string): void {
  workspace.set(uri, text);
  const analysis = analyse(workspace, uri, { checks: [] })!;
  whatIfLenses(analysis.file, analysis.crafts);
  for (const craft of analysis.crafts) {
    const card = cardOf(craft, analysis);
    const forms = [cardAsText(card), cardAsMarkdown(card), cardAtAGlance(card), JSON.stringify(cardAsJson(card))];
    for (const form of forms) expect(form).not.toMatch(/NaN|Infinity|undefined|\[object/);
    for (const path of [
      ['parts', 'motors', 'kv'],
      ['packs', 'main', 'capacity'],
      ['parts', 'extras', 'a', 'weight'],
      ['flight', 'altitude'],
    ])
      whatIfLines(craft, path);
  }
}

describe.each([...soundBuilds, ...faultyBuilds])('%s', (name) => {
  const text = sampleText(name);

  it('cut anywhere', { timeout: 60_000 }, () => {
    const workspace = sampleWorkspace();
    for (let end = 0; end <= text.length; end += 11) everyForm(workspace, sampleUri(name), text.slice(0, end));
  });

  it('without any one of its lines', { timeout: 60_000 }, () => {
    const workspace = sampleWorkspace();
    const lines = text.split('\n');
    for (let i = 0; i < lines.length; i += 2)
      everyForm(workspace, sampleUri(name), lines.filter((_, k) => k !== i).join('\n'));
  });

  it('with a value of every line spoilt', { timeout: 60_000 }, () => {
    const workspace = sampleWorkspace();
    const lines = text.split('\n');
    for (let i = 1; i < lines.length; i += 2)
      everyForm(
        workspace,
        sampleUri(name),
        lines.map((line, k) => (k === i ? line.replace(/: .*/, ': 0 g') : line)).join('\n'),
      );
  });
});
