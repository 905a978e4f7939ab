/** Thousands of edits of one file in one session, ten thousand with DRYFIT_SOAK=10000: what is alive in the server's memory stays as it was, and the findings are those of a fresh start. Needs `npm run build`. */
import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { expect, it } from 'vitest';
import { samplesFolder, sampleText } from '../support/samples';
import { seeded } from '../support/seeded';
import { startServer } from '../support/spawned-server';

const edits = Number(process.env.DRYFIT_SOAK ?? 3000);
const batch = 100;

it(`${edits} edits`, { timeout: 300_000 }, async () => {
  const folder = mkdtempSync(path.join(tmpdir(), 'dryfit-soak-'));
  cpSync(samplesFolder, folder, { recursive: true });
  const server = await startServer([pathToFileURL(folder).href]);
  try {
    const uri = pathToFileURL(path.join(folder, 'builds/pip-75.dryfit.yaml')).href;
    const text = sampleText('builds/pip-75.dryfit.yaml');
    const lines = text.split('\n');
    const chance = seeded(20261126);
    server.open(uri, text);
    const memory: number[] = [];
    let version = 1;
    for (let done = 0; done < edits; done += batch) {
      for (let i = 0; i < batch; i += 2) {
        const line = chance.below(lines.length - 1);
        const at = { line, character: chance.below(lines[line]!.length + 1) };
        const put = chance.pick(['1', ' ', ':', '\n', '- ', '# ', '"', 'kv']);
        const behind = put === '\n' ? { line: line + 1, character: 0 } : { line, character: at.character + put.length };
        server.change(uri, ++version, [{ range: { start: at, end: at }, text: put }]);
        server.change(uri, ++version, [{ range: { start: at, end: behind }, text: '' }]);
      }
      const last = version;
      await server.diagnostics(uri, (_, seen) => seen === last);
      memory.push((await server.liveMemory()) / 2 ** 20);
    }
    const after = await server.diagnostics(uri, () => true);
    const fresh = await startServer([pathToFileURL(folder).href]);
    fresh.open(uri, text);
    const anew = await fresh.diagnostics(uri, (_, seen) => seen === 1);
    await fresh.stop();
    expect(after.map(({ code, range }) => [code, range])).toEqual(anew.map(({ code, range }) => [code, range]));
    // The first fifth warms up: what is compiled and remembered by then is not growth.
    const settled = memory.slice(memory.length / 5);
    const middle = (list: readonly number[]): number => [...list].sort((a, b) => a - b)[list.length >> 1]!;
    const some = Math.ceil(settled.length / 4);
    const [early, late] = [middle(settled.slice(0, some)), middle(settled.slice(-some))];
    expect(late, `${early.toFixed(1)} MiB early, ${late.toFixed(1)} MiB late`).toBeLessThan(1.1 * early);
  } finally {
    await server.stop();
    rmSync(folder, { recursive: true, force: true });
  }
});
