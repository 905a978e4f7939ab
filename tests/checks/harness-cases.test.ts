/** The cable of a craft as builders describe it: known ends, unknown ends, wire by wire, sold with the stack, not described at all. */
import { describe, expect, it } from 'vitest';
import type { Finding } from '../../server/src/build/finding';
import { analyseMarked } from '../support/marked';

const pins = (order: string): string =>
  `{ ${order
    .split(' ')
    .map((role, i) => `${i + 1}: ${role}`)
    .join(', ')} }`;

interface Described {
  readonly esc: string;
  readonly controller: string;
  readonly numbered?: boolean;
  readonly cable?: string;
}

function harnessFindings({ esc, controller, numbered = true, cable = '' }: Described): readonly Finding[] {
  const from = numbered ? '\n      counted-from: marked pin' : '';
  const text = `
dryfit: build
name: Cable
parts:
  esc:
    type: 4-in-1
    controller-socket:${from}
      pins: ${pins(esc)}
  flight-controller:
    esc-socket:${from}
      pins: ${pins(controller)}
${cable}`;
  return analyseMarked(text).analysis.findings.filter((finding) => finding.check.startsWith('harness-'));
}

const ids = (described: Described): readonly string[] => harnessFindings(described).map((finding) => finding.check);

const standard = 'VBAT GND CURR TELEM M1 M2 M3 M4';
const exchanged = 'GND VBAT CURR TELEM M1 M2 M3 M4';
const printed = 'GND VBAT M1 M2 M3 M4 CURR TELEM';
const otherEnd = 'TELEM CURR M4 M3 M2 M1 VBAT GND';
const straight = '  harness:\n    type: straight\n';
const crossed = '  harness:\n    type: crossed\n';

describe('ends that are known', () => {
  it('says nothing of boards that match', () => {
    expect(ids({ esc: standard, controller: standard, cable: straight })).toEqual([]);
    expect(ids({ esc: printed, controller: otherEnd, cable: crossed })).toEqual([]);
  });

  it('names the danger once, the gravest', () => {
    expect(ids({ esc: standard, controller: exchanged, cable: straight })).toEqual(['harness-battery-reversed']);
    expect(ids({ esc: standard, controller: standard, cable: crossed })).toEqual(['harness-battery-on-signal']);
  });

  it('offers the other ready-made cable when that is all it takes', () => {
    const [finding] = harnessFindings({ esc: standard, controller: standard, cable: crossed });
    expect(finding?.fixes.map((fix) => fix.title)).toEqual(['Use a straight cable']);
  });

  it('is milder about a cable that nobody described, and says what was taken', () => {
    const [finding] = harnessFindings({ esc: standard, controller: exchanged });
    expect(finding).toMatchObject({ check: 'harness-battery-reversed', severity: 'warning', danger: 'fire' });
    expect(finding?.message).toMatch(/straight one was taken/);
  });
});

describe('ends that are not known', () => {
  it('asks where contact 1 is when only one reading is right', () => {
    expect(ids({ esc: standard, controller: standard, cable: straight, numbered: false })).toEqual([
      'harness-viewpoint-unknown',
    ]);
    expect(ids({ esc: printed, controller: otherEnd, cable: straight, numbered: false })).toEqual([
      'harness-viewpoint-unknown',
    ]);
  });

  it('is certain of the danger when both readings destroy', () => {
    expect(ids({ esc: standard, controller: exchanged, cable: straight, numbered: false })).toEqual([
      'harness-battery-reversed',
    ]);
  });
});

describe('wire by wire', () => {
  const wires = (list: string, between = 'esc, flight-controller'): string =>
    `  harness:\n    between: ${between}\n    wires: { ${list} }\n`;
  it('follows the wires in either direction', () => {
    const right = '1: 2, 2: 1, 3: 3, 4: 4, 5: 5, 6: 6, 7: 7, 8: 8';
    expect(ids({ esc: standard, controller: exchanged, cable: wires(right) })).toEqual([]);
    expect(
      ids({
        esc: standard,
        controller: printed,
        cable: wires('1: 2, 2: 1, 3: 5, 4: 6, 5: 7, 6: 8, 7: 3, 8: 4', 'flight-controller, esc'),
      }),
    ).toEqual([]);
    expect(
      ids({ esc: standard, controller: printed, cable: wires('1: 2, 2: 1, 3: 5, 4: 6, 5: 7, 6: 8, 7: 3, 8: 4') }),
    ).toEqual(['harness-signals-swapped']);
  });

  it('takes contacts that are left out for left out', () => {
    expect(ids({ esc: standard, controller: standard, cable: wires('1: 1, 2: 2, 5: 5, 6: 6, 7: 7, 8: 8') })).toEqual(
      [],
    );
    expect(ids({ esc: standard, controller: standard, cable: wires('1: 1, 5: 5, 6: 6, 7: 7, 8: 8') })).toEqual([
      'harness-ground-missing',
    ]);
  });
});

describe('boards that need no answer', () => {
  const stack = (more: string): readonly string[] =>
    analyseMarked(`
dryfit: build
name: Cable
parts:
  stack:
${more}    flight-controller:
      esc-socket:
        counted-from: marked pin
        pins: ${pins(exchanged)}
    esc:
      type: 4-in-1
      controller-socket:
        counted-from: marked pin
        pins: ${pins(standard)}
`).analysis.findings.flatMap((finding) =>
      finding.check.startsWith('harness-') ? [`${finding.check} ${finding.severity}`] : [],
    );

  it('leaves the cable that comes with a stack to its maker, and only that', () => {
    expect(stack('    cable-supplied: yes\n')).toEqual([]);
    expect(stack('    cable-supplied: no\n')).toEqual(['harness-battery-reversed warning']);
    expect(stack('')).toEqual(['harness-battery-reversed warning']);
  });

  it('knows that single ESCs have no such plug', () => {
    const { analysis } = analyseMarked(
      '\ndryfit: build\nname: Cable\nparts:\n  esc:\n    type: single\n  flight-controller:\n    mcu: F722\n',
    );
    expect(analysis.notChecked.filter((one) => one.check.startsWith('harness-'))).toEqual([]);
  });
});
