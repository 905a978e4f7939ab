import { writeFileSync } from 'node:fs';
import { it } from 'vitest';
import { analysed, generated } from './generated-build';

it('show', { timeout: 600000 }, () => {
  const out: string[] = [];
  for (const s of (process.env.SEEDS ?? '1').split(',').map(Number)) {
    const g = generated(s);
    const a = analysed(g.files);
    const bad = a.findings.filter((f) => f.severity !== 'information' || process.env.ALL);
    const { train, cells, packs, board, unit, propeller, esc, payload } = g.choices;
    out.push(
      `== ${s} ${g.choices.craft.name} ${train.motor.stator} ${train.motor.kv} ${cells}S ${packs.map((p) => `${p.chemistry} ${p.capacity}`)} ${propeller.size} ${board} esc ${esc} ${unit.system} ${g.choices.level} pay ${payload}`,
    );
    out.push(...bad.map((f) => `${f.severity} ${f.check} ${f.at.path}: ${f.message}`));
    if (process.env.FILES) for (const [n, t] of g.files) out.push(`--- ${n}\n${t}`);
  }
  writeFileSync('/tmp/show.txt', out.join('\n'));
});
