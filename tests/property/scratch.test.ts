import { writeFileSync } from 'node:fs';
import { it } from 'vitest';
import { allChecks } from '../../server/src/checks/generated/all';
import { analysed, generated } from './generated-build';

it('scratch', { timeout: 600000 }, () => {
  const found = new Map<string, { n: number; seeds: number[]; sample: string }>();
  const ran = new Map<string, number>();
  const t = performance.now();
  const N = Number(process.env.N ?? 300);
  for (let s = 1; s <= N; s++) {
    const g = generated(s);
    const a = analysed(g.files);
    for (const id of a.ran) ran.set(id, (ran.get(id) ?? 0) + 1);
    for (const f of a.findings) {
      const k = `${f.severity} ${f.check}`;
      const e = found.get(k) ?? { n: 0, seeds: [], sample: f.message };
      e.n++;
      if (e.seeds.length < 6) e.seeds.push(s);
      if (e.n === 1) e.sample = `${f.at.path}: ${f.message}`;
      found.set(k, e);
    }
  }
  const out = [...found].sort().map(([k, e]) => `${k} x${e.n} [${e.seeds}] ${e.sample.slice(0, 420)}`);
  const counts = allChecks.map((c) => [ran.get(c.id) ?? 0, c.id] as const).sort((a, b) => a[0] - b[0]);
  out.push(`time ${Math.round(performance.now() - t)} ms for ${N}`, `checks ${allChecks.length}`);
  out.push(
    counts
      .filter(([n]) => n < N / 20)
      .map(([n, id]) => `${n} ${id}`)
      .join('\n'),
  );
  writeFileSync('/tmp/scratch.txt', out.join('\n'));
});
