/** Three builds as somebody new would write them: sound without a work-around, alike in YAML 1.1 and 1.2, and with believable figures. */
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { parseDocument, visit } from 'yaml';
import { analyse } from '../../server/src/analysis';
import { Workspace } from '../../server/src/library/workspace';
import { figuresFor } from '../../server/src/plan/worked';

const folder = path.resolve(import.meta.dirname, '../fixtures/newcomer');
const text = (name: string): string => readFileSync(path.join(folder, `${name}.dryfit.yaml`), 'utf8');
const uri = (name: string): string => `file:///new/${name}.dryfit.yaml`;

function open(): Workspace {
  const workspace = new Workspace();
  for (const name of ['whoop', 'five', 'seven', 'five-parts']) workspace.set(uri(name), text(name));
  return workspace;
}

describe.each(['whoop', 'five', 'seven', 'five-parts'])('%s', (name) => {
  it('gives no error and no warning', () => {
    const { findings } = analyse(open(), uri(name))!;
    expect(
      findings
        .filter((finding) => finding.severity !== 'information')
        .map((finding) => `${finding.check}: ${finding.message}`),
    ).toEqual([]);
  });

  it('has the same source text for every scalar in YAML 1.1 and 1.2', () => {
    const scalars = (version: '1.1' | '1.2'): string[] => {
      const document = parseDocument(text(name), { version });
      const found: string[] = [];
      visit(document, { Scalar: (_, node) => void found.push(node.source ?? String(node.value)) });
      expect(document.errors).toEqual([]);
      return found;
    };
    expect(scalars('1.1')).toEqual(scalars('1.2'));
  });
});

describe('figures', () => {
  const figures = (name: string) => {
    const craft = analyse(open(), uri(name))!.crafts[0]!;
    const made = figuresFor(craft, craft.packs[0]!)!;
    if (!made.full.ok || !made.asFlown.ok || !made.hovering.ok || !made.hover.ok)
      throw new Error(`${name} does not fly`);
    return {
      lift: made.full.value.thrustToWeight.value,
      flown: made.asFlown.value.minutes.value,
      hovering: made.hovering.value.minutes.value,
      throttle: made.hover.value.throttle.value,
      landing: made.asFlown.value.landingCellVoltage.value,
    };
  };

  // Envelopes of common practice: a 65 mm whoop 2 to 4 of weight and 2 to 5 minutes; a 5 inch for tricks 3.5 to 5.5 minutes, 8 to 12; a 7 inch on Li-ion 15 to 35 minutes.
  it('of a whoop', () => {
    const { lift, flown } = figures('whoop');
    expect(lift).toBeGreaterThan(1.8);
    expect(lift).toBeLessThan(4.5);
    expect(flown).toBeGreaterThan(1.5);
    expect(flown).toBeLessThan(5.5);
  });

  it('of a 5 inch', () => {
    const { lift, flown } = figures('five');
    expect(lift).toBeGreaterThan(7);
    expect(lift).toBeLessThan(14);
    expect(flown).toBeGreaterThan(3);
    expect(flown).toBeLessThan(6.5);
  });

  it('of a 7 inch, down to the landing voltage of Li-ion', () => {
    const { lift, flown, landing } = figures('seven');
    expect(lift).toBeGreaterThan(2.5);
    expect(lift).toBeLessThan(8);
    expect(flown).toBeGreaterThan(12);
    expect(flown).toBeLessThan(40);
    expect(landing).toBeGreaterThanOrEqual(2.85);
  });
});
