/** The assembly plan: keys and nuts as the standards have them, joints as counted by hand, power never before its gate, ticks that hold exactly as long as they should. */
import { describe, expect, it } from 'vitest';
import { analyse, craftsOf } from '../../server/src/analysis';
import { Workspace } from '../../server/src/library/workspace';
import { gateNames, gatePrint } from '../../server/src/plan/assembly-gates';
import { countOf, ironFor, jointsOf, wireOf } from '../../server/src/plan/assembly-joints';
import { gateStates, stepsOf } from '../../server/src/plan/assembly-steps';
import { keyFor, nutFor } from '../../server/src/plan/fastener-keys';
import { assemblyAsMarkdown, assemblyAsText, assemblyReport } from '../../server/src/report/assembly-report';
import { tickEdit } from '../../server/src/report/tick-gate';
import { buildUri, generated } from '../property/generated-build';
import { seeds } from '../property/seeds';
import { sampleText, sampleUri, sampleWorkspace } from '../support/samples';

const sample = (name: string) =>
  analyse(sampleWorkspace(), sampleUri(`builds/${name}.dryfit.yaml`), { checks: [] })!.crafts[0]!;

/** Read in tables that quote the standards (metric bolt tables of a university and of fastener sellers), not in the standards themselves. */
const sockets = {
  // ISO 4762, hexagon socket head cap screws.
  cap: { 1.6: 1.5, 2: 1.5, 2.5: 2, 3: 2.5, 4: 3, 5: 4 },
  // ISO 7380-1, button head; starts at M3.
  button: { 3: 2, 4: 2.5, 5: 3 },
  // ISO 10642, countersunk head; starts at M3.
  countersunk: { 3: 2, 4: 2.5, 5: 3 },
} as const;

describe('keys and nuts', () => {
  it.each(Object.entries(sockets))('%s heads', (head, sizes) => {
    for (const [thread, size] of Object.entries(sizes))
      expect(keyFor({ thread: Number(thread), length: 0.008, head: head as 'cap' })).toEqual({
        size,
        basis: 'standard',
      });
  });

  it('marks what no standard has as trade habit', () => {
    for (const screw of [
      { thread: 2, head: 'button' },
      { thread: 2.5, head: 'button' },
      { thread: 2, head: 'countersunk' },
    ] as const)
      expect(keyFor({ ...screw, length: 0.006 })?.basis).toBe('trade');
    expect(keyFor({ thread: 3, length: 0.008 })).toBeUndefined();
  });

  it('ISO 4032 plain and ISO 10511 thin nylon-insert nuts, across flats', () => {
    expect([2, 2.5, 3, 4, 5].map(nutFor)).toEqual([4, 5, 5.5, 7, 8]);
  });
});

describe('joints, counted by hand', () => {
  /** How many, on which part, of which wire, with how hot an iron. */
  const counted = (name: string) =>
    jointsOf(sample(name)).map((joint) => [joint.count, joint.part, joint.gauge, ironFor(joint).from]);

  it('Ossel 5: 31', () => {
    expect(counted('ossel-5')).toEqual([
      [2, 'battery-lead', 12, 380],
      [2, 'battery-lead', 12, 380],
      [2, 'capacitor', undefined, 380],
      [12, 'motors', 20, 360],
      [3, 'camera', 28, 330],
      [2, 'video-transmitter', 26, 330],
      [2, 'video-transmitter', 28, 330],
      [4, 'receiver', 28, 330],
      [2, 'buzzer', 28, 330],
    ]);
    expect(countOf(jointsOf(sample('ossel-5')))).toBe(31);
    // 2 x 0.1 m of lead; supply and ground of the transmitter 2 x 0.08 m; thin ones 3 x 0.08 + 2 x 0.08 + 4 x 0.06 + 2 x 0.06 m;
    // a fifth more, in steps of 5 cm.
    expect(wireOf(jointsOf(sample('ossel-5')))).toEqual([
      { gauge: 12, length: 0.25 },
      { gauge: 26, length: 0.2 },
      { gauge: 28, length: 0.95 },
    ]);
  });

  // Counted from the file and the trade's table of joints, not from the program: one cell, all in one board with its receiver on it,
  // so no harness, no receiver, no capacitor; a camera with three wires; a transmitter with supply, ground, picture and control; an
  // antenna that plugs. The motors' own 30 AWG wires want a small tip, a 20 AWG lead no wider one than a motor's wire.
  it('Pip 75: 23, with the wire to have', () => {
    expect(counted('pip-75')).toEqual([
      [2, 'battery-lead', 20, 360],
      [2, 'battery-lead', 20, 360],
      [12, 'motors', 30, 330],
      [3, 'camera', 28, 330],
      [2, 'video-transmitter', 26, 330],
      [2, 'video-transmitter', 28, 330],
    ]);
    expect(countOf(jointsOf(sample('pip-75')))).toBe(23);
    // 2 x 45 mm = 0.09, and a fifth: 0.108; 2 x 80 = 0.16: 0.192; 5 x 80 = 0.40: 0.48; up to the next 5 cm. The motors bring their own.
    expect(wireOf(jointsOf(sample('pip-75')))).toEqual([
      { gauge: 20, length: 0.15 },
      { gauge: 26, length: 0.2 },
      { gauge: 28, length: 0.5 },
    ]);
  });
});

describe('the order of work on 400 drawn builds', () => {
  const drawn = seeds(400).map((seed) => {
    const build = generated(seed);
    const workspace = new Workspace();
    for (const [uri, text] of build.files) workspace.set(uri, text);
    return { seed, craft: craftsOf(workspace, workspace.get(buildUri)!)[0]! };
  });

  it('applies no power before its gates, radiates with no antenna, turns no propeller before the end', {
    timeout: 60_000,
  }, () => {
    for (const { seed, craft } of drawn) {
      const joints = jointsOf(craft);
      const steps = stepsOf(craft, joints);
      const passed = new Set<string>();
      const soldered = new Set<string>();
      for (const step of steps) {
        const told = `seed ${seed}, ${step.id}`;
        for (const need of step.needs) expect(passed, `${told}: ${need} first`).toContain(need);
        if (step.powers) {
          for (const gate of ['dry-fit', 'harness']) expect(passed, told).toContain(gate);
          if (joints.some((joint) => joint.part === 'battery-lead')) expect(passed, told).toContain('joints');
          if (joints.some((joint) => joint.part === 'motors')) expect(passed, told).toContain('motor-wires');
          if (step.id !== 'first-power') expect(passed, told).toContain('first-power');
          expect(step.cautions.length, `${told} has its caution`).toBeGreaterThan(0);
        } else if (step.todo.some((line) => /^\d+ x /.test(line)))
          expect(step.cautions.join(' '), told).toMatch(/powered|Ventilate/);
        if (step.propellersOn) {
          expect(step.id).toBe('first-hover');
          expect(passed, told).toContain('motors-turn');
          if (craft.roles.receiver) expect(passed, told).toContain('receiver');
        } else if (step.powers) expect(step.cautions, told).toContain('Propellers off.');
        if (step.radiates && step.id !== 'first-hover') expect(soldered, told).toContain(`${step.id}-joints`);
        soldered.add(step.id);
        if (step.gate) passed.add(step.gate.name);
      }
      expect(steps.at(-1)?.id).toBe('first-hover');
    }
  });

  it('names every joint in exactly one step', { timeout: 60_000 }, () => {
    for (const { seed, craft } of drawn) {
      const joints = jointsOf(craft);
      const lines = stepsOf(craft, joints).flatMap((step) => step.todo.filter((line) => /^\d+ x /.test(line)));
      expect(lines.length, `seed ${seed}`).toBe(joints.length);
      expect(new Set(lines).size, `seed ${seed}`).toBe(lines.length);
    }
  });

  it('writes itself down without a hole', { timeout: 60_000 }, () => {
    for (const { craft } of drawn.slice(0, 60)) {
      const report = assemblyReport(craft);
      for (const text of [assemblyAsText(report), assemblyAsMarkdown(report)])
        expect(text).not.toMatch(/undefined|NaN|\[object/);
    }
  });
});

describe('gates', () => {
  const uri = sampleUri('builds/ossel-5.dryfit.yaml');
  const withText = (text: string) => {
    const workspace = sampleWorkspace();
    workspace.set(uri, text);
    return { workspace, craft: craftsOf(workspace, workspace.get(uri)!)[0]! };
  };
  const allTicked = (): string => {
    let text = sampleText('builds/ossel-5.dryfit.yaml');
    for (const gate of gateNames) {
      const { workspace, craft } = withText(text);
      const { span, text: written } = tickEdit(workspace.get(uri)!, craft, gate, '2026-11-24');
      text = text.slice(0, span.start) + written + text.slice(span.end);
    }
    return text;
  };

  it('are ticked one by one, leaving every other line as it was', () => {
    const text = allTicked();
    expect(text.startsWith(sampleText('builds/ossel-5.dryfit.yaml'))).toBe(true);
    const { workspace, craft } = withText(text);
    expect(gateStates(craft).map((state) => state.is)).toEqual(gateNames.map(() => 'passed'));
    expect(analyse(workspace, uri)!.findings.filter((one) => one.severity !== 'information')).toEqual([]);
  });

  it.each([
    ['serial: uart2', 'serial: uart3', 'receiver'],
    ['serial: uart1', 'serial: uart4', 'video'],
    ['spin: props out', 'spin: props in', 'motors-turn'],
    ['sensor-scale: 179', 'sensor-scale: 200', 'rails'],
    ['board-rotation: 0 deg', 'board-rotation: 90 deg', 'rails'],
    ['cell-warning: 3.5 V', 'cell-warning: 3.6 V', 'rails'],
    ['failsafe: drop', 'failsafe: land', 'receiver'],
    ['type: straight', 'type: crossed', 'harness'],
    ['screws: M3x8 button', 'screws: M3x8 cap', 'dry-fit'],
    ['use: cap-1000-50', 'use: cap-470-35', 'joints'],
    ['wire: 12 AWG', 'wire: 14 AWG', 'joints'],
    ['use: whirl-51363', 'use: whirl-51463', 'first-hover'],
  ])('%s changed to %s voids %s and nothing else', (from, to, gate) => {
    const before = allTicked();
    expect(before).toContain(from);
    const { workspace, craft } = withText(before.replace(from, to));
    expect(gateStates(craft).flatMap((state) => (state.is === 'void' ? [state.gate] : []))).toEqual([gate]);
    const found = analyse(workspace, uri)!.findings.filter((one) => one.check === 'gate-void');
    expect(found.map((one) => one.at.path)).toEqual([`gates.${gate}`]);
  });

  it('outlive what changes nothing at the bench', () => {
    const before = allTicked();
    for (const [from, to] of [
      ['spares: 1', 'spares: 3'],
      ['budget: 600 EUR', 'budget: 610 EUR'],
      ['name: Ossel 5', 'name: Ossel'],
    ] as const) {
      const { craft } = withText(before.replace(from, to));
      expect(
        gateStates(craft).every((state) => state.is === 'passed'),
        from,
      ).toBe(true);
    }
    expect(gatePrint(sample('ossel-5'), 'rails')).toMatch(/^[0-9a-f]{6}$/);
  });
});
