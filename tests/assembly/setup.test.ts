/** The set-up sheet: every wiring, re-map and sensor decision of a build exactly once, each with its one gate; charging within every limit; deliveries written back with as few characters as possible. */
import { describe, expect, it } from 'vitest';
import { analyse, craftsOf } from '../../server/src/analysis';
import type { Craft } from '../../server/src/build/craft';
import { Workspace } from '../../server/src/library/workspace';
import { gateNames, gateOf } from '../../server/src/plan/assembly-gates';
import { gateStates } from '../../server/src/plan/assembly-steps';
import { chargingPlan } from '../../server/src/plan/charging-plan';
import { arrival } from '../../server/src/plan/delivery';
import { setupSheet } from '../../server/src/plan/setup-sheet';
import { setupAsMarkdown, setupAsText, setupReport } from '../../server/src/report/setup-report';
import { tickEdit } from '../../server/src/report/tick-gate';
import { buildUri, generated } from '../property/generated-build';
import { seeds } from '../property/seeds';
import { craftOf } from '../support/craft-of';
import { sampleText, sampleUri, sampleWorkspace } from '../support/samples';

const names = ['ossel-5', 'heron-7'];
const uriOf = (name: string): string => sampleUri(`builds/${name}.dryfit.yaml`);
const withText = (name: string, text: string) => {
  const workspace = sampleWorkspace();
  workspace.set(uriOf(name), text);
  const file = workspace.get(uriOf(name))!;
  return { workspace, file, craft: craftsOf(workspace, file)[0]! };
};

/** Every line under `wiring` and `setup`, by its path. */
function decisions(craft: Craft): readonly string[] {
  const wiring = [...(craft.said.wiring?.entries ?? [])].flatMap(([device, facts]) =>
    Object.keys(facts).flatMap((key) => (key === 'where' || key === 'used' ? [] : [`wiring.${device}.${key}`])),
  );
  const setup = Object.keys(craft.said.setup ?? {}).flatMap((key) => (key === 'where' ? [] : [`setup.${key}`]));
  return [...wiring, ...setup];
}

describe.each(names)('%s', (name) => {
  const { craft } = withText(name, sampleText(`builds/${name}.dryfit.yaml`));
  const rows = setupSheet(craft);

  it('has each decision exactly once', () => {
    const said = decisions(craft);
    expect(said.length).toBeGreaterThan(15);
    for (const path of said)
      expect(
        rows.filter((row) => row.path === path),
        path,
      ).toHaveLength(1);
    const paths = rows.map((row) => row.path);
    expect(paths.filter((path, i) => paths.indexOf(path) !== i)).toEqual([]);
  });

  it('gives each decision one gate', () => {
    for (const row of rows) expect(gateOf(row.path), row.path).toBe(row.gate);
    for (const row of rows) expect(row.gate, row.path).toBeDefined();
  });

  it('voids that gate and only that when a decision is edited', () => {
    let text = sampleText(`builds/${name}.dryfit.yaml`);
    for (const gate of gateNames) {
      const { file, craft: now } = withText(name, text);
      const { span, text: written } = tickEdit(file, now, gate, '2026-11-24');
      text = text.slice(0, span.start) + written + text.slice(span.end);
    }
    const ticked = withText(name, text);
    let edited = 0;
    for (const path of decisions(ticked.craft)) {
      let here: unknown = ticked.craft.said;
      for (const key of path.split('.'))
        here =
          (here as { entries?: ReadonlyMap<string, unknown> }).entries?.get(key) ??
          (here as Record<string, unknown>)[key];
      const { at, text: now } = here as { at: { span: { start: number; end: number } }; text: string };
      const other: Readonly<Record<string, string>> = {
        yes: 'no',
        no: 'yes',
        AUTO: 'PAL',
        drop: 'land',
        return: 'drop',
        'props out': 'props in',
        'props in': 'props out',
        DShot300: 'DShot600',
        DShot600: 'DShot300',
        '5V': '9V',
        '9V': '5V',
      };
      const changed = other[now] ?? now.replace(/\d/, (digit) => String((Number(digit) % 8) + 1));
      if (changed === now) continue;
      const after = withText(name, text.slice(0, at.span.start) + changed + text.slice(at.span.end));
      const isVoid = gateStates(after.craft).flatMap((state) => (state.is === 'void' ? [state.gate] : []));
      expect(isVoid, `${path}: ${now} to ${changed}`).toEqual([gateOf(path)]);
      edited++;
    }
    expect(edited).toBeGreaterThan(15);
  });
});

it('tells the motor order that the cable asks for, once, by the same word as when it is said', () => {
  const pins = (list: string): string =>
    `{ ${list
      .split(' ')
      .map((role, i) => `${i + 1}: ${role}`)
      .join(', ')} }`;
  const text = `dryfit: build\nname: A\nparts:\n  esc:\n    type: 4-in-1\n    controller-socket:\n      counted-from: marked pin\n      pins: ${pins('VBAT GND M1 M2 M3 M4')}\n  flight-controller:\n    esc-socket:\n      counted-from: marked pin\n      pins: ${pins('VBAT GND M4 M3 M2 M1')}\n  harness:\n    type: straight\n`;
  const order = (more: string) =>
    setupSheet(craftOf(text + more).craft)
      .filter((row) => row.path === 'setup.motor-map')
      .map((row) => [row.value, row.basis]);
  expect(order('')).toEqual([['4-3-2-1', 'worked out']]);
  expect(order('setup:\n  motor-map: 4-3-2-1\n')).toEqual([['4-3-2-1', 'said']]);
});

it('on drawn builds lists no decision twice and leaves no hole', { timeout: 60_000 }, () => {
  for (const seed of seeds(150)) {
    const workspace = new Workspace();
    for (const [uri, text] of generated(seed).files) workspace.set(uri, text);
    const craft = craftsOf(workspace, workspace.get(buildUri)!)[0]!;
    const paths = setupSheet(craft).map((row) => row.path);
    expect(
      paths.filter((path, i) => paths.indexOf(path) !== i),
      `seed ${seed}`,
    ).toEqual([]);
    for (const path of decisions(craft)) expect(paths, `seed ${seed}`).toContain(path);
    const report = setupReport(craft);
    for (const text of [setupAsText(report), setupAsMarkdown(report)])
      expect(text).not.toMatch(/undefined|NaN|\[object/);
  }
});

describe('charging', () => {
  const plan = (pack: string, charger: string) =>
    chargingPlan(
      craftOf(
        `dryfit: build\nname: A\npacks:\n  main:\n${pack.replace(/^/gm, '    ')}\n---\ndryfit: bench\ncharger:\n${charger.replace(/^/gm, '  ')}\n`,
      ).craft,
    )[0]!;

  it('goes at 1 C, or at what label and charger allow', () => {
    expect(plan('cells: 6S\ncapacity: 1300 mAh', 'current: 10 A\npower: 200 W')).toMatchObject({
      current: 1.3,
      limitedBy: '1 C',
      minutes: 69,
      storage: 23.1,
    });
    expect(plan('cells: 6S\ncapacity: 1300 mAh\ncharge-limit: 0.5 C', 'current: 10 A')).toMatchObject({
      current: 0.65,
      limitedBy: 'label',
    });
    expect(plan('cells: 6S\ncapacity: 5000 mAh', 'current: 10 A\npower: 50 W')).toMatchObject({
      limitedBy: 'charger power',
    });
    expect(plan('cells: 6S\ncapacity: 5000 mAh', 'current: 2 A')).toMatchObject({
      current: 2,
      limitedBy: 'charger current',
    });
  });

  it('puts packs side by side only with a board for it, and never more than the charger feeds', () => {
    const packs = 'cells: 4S\ncapacity: 1000 mAh\ncount: 6';
    expect(plan(packs, 'current: 10 A\npower: 60 W').together).toBe(1);
    expect(plan(packs, 'current: 10 A\npower: 60 W\nparallel-board: yes').together).toBe(3);
  });

  it('says what this charger cannot do', () => {
    expect(plan('cells: 6S\ncapacity: 1300 mAh', 'cells: 1S-4S').cannot).toBe('the charger takes 1S-4S');
    expect(plan('cells: 6S\ncapacity: 1300 mAh\nplug: XT60', 'plugs: XT30').plug).toBe('adapter');
  });
});

describe('a delivery', () => {
  const name = 'ossel-5';
  const text = sampleText(`builds/${name}.dryfit.yaml`);
  const write = (from: string, path: string, value: string): string => {
    const { file, craft } = withText(name, from);
    const found = arrival(file, craft, path, value, '2026-11-25');
    if (!found.ok) throw new Error(found.why);
    const { span, text: written } = found.arrived.edit;
    return from.slice(0, span.start) + written + from.slice(span.end);
  };

  it.each(['\n', '\r\n'])('writes what was weighed beside the part, and nothing else', (end) => {
    const before = text.replace(/\r?\n/g, end);
    const after = write(before, 'motors.weight', '32.9 g');
    expect(after).toBe(
      before.replace(
        `    use: brunt-2207-1800${end}`,
        `    use: brunt-2207-1800${end}    weight: 32.9 g (weighed 2026-11-25)${end}`,
      ),
    );
    expect(write(after, 'motors.weight', '33 g')).toBe(after.replace('32.9 g (weighed', '33 g (weighed'));
    const { workspace } = withText(name, after);
    expect(analyse(workspace, uriOf(name))!.findings.filter((one) => one.severity === 'error')).toEqual([]);
  });

  it('tells the difference and whose word was wrong', () => {
    const { file, craft } = withText(name, text);
    const found = arrival(file, craft, 'battery-lead.weight', '19 g', '2026-11-25');
    expect(found).toMatchObject({
      ok: true,
      arrived: { expected: '15.8 g', trust: 'weighed', came: '19 g (weighed 2026-11-25)' },
    });
    expect(found.ok && found.arrived.off).toBeCloseTo(0.2025, 3);
  });

  it('refuses what no field takes', () => {
    const { file, craft } = withText(name, text);
    for (const [path, value] of [
      ['motors.weight', '32'],
      ['motors.wieght', '32 g'],
      ['wings.weight', '3 g'],
      ['battery-lead.plug', 'XT61'],
    ] as const)
      expect(arrival(file, craft, path, value, '2026-11-25').ok, path).toBe(false);
  });
});
