/** The assembly plan of one build as data, and its forms: text for the terminal, Markdown as a checklist kept in git, JSON. Plans nothing. */
import type { Craft } from '../build/craft';
import { benchMinutes, countOf, ironFor, type Joint, jointsOf } from '../plan/assembly-joints';
import { type GateState, gateStates, type Step, stepsOf } from '../plan/assembly-steps';
import { type Consumable, consumablesOf, type Tool, toolsOf } from '../plan/assembly-tools';
import { worked } from '../plan/worked';
import { harnessAsMarkdown, harnessAsText, harnessReport } from './harness-report';
import { tableAsMarkdown, tableAsText } from './table';

export interface AssemblyReport {
  readonly name: string;
  readonly tools: readonly Tool[];
  readonly consumables: readonly Consumable[];
  readonly joints: readonly Joint[];
  readonly jointCount: number;
  readonly minutes: number;
  readonly steps: readonly Step[];
  readonly gates: readonly GateState[];
  readonly harness: ReturnType<typeof harnessReport> | undefined;
}

export function assemblyReport(craft: Craft): AssemblyReport {
  const joints = jointsOf(craft);
  const harness = worked(craft, undefined, 'worked.harness')?.value;
  return {
    name: craft.said.name?.value ?? 'craft',
    tools: toolsOf(craft, joints),
    consumables: consumablesOf(craft, joints),
    joints,
    jointCount: countOf(joints),
    minutes: benchMinutes(joints),
    steps: stepsOf(craft, joints),
    gates: gateStates(craft),
    harness: harness && harness.reading.moves.length > 0 ? harnessReport(harness) : undefined,
  };
}

const owned = (one: { readonly owned: boolean | undefined }): string =>
  one.owned === undefined ? '' : one.owned ? 'have' : 'to buy';

const toolRows = (report: AssemblyReport): readonly (readonly string[])[] =>
  report.tools.map((one) => [one.name, one.why, owned(one)]);
const consumableRows = (report: AssemblyReport): readonly (readonly string[])[] =>
  report.consumables.map((one) => [one.name, one.amount, owned(one)]);
const jointRows = (report: AssemblyReport): readonly (readonly string[])[] =>
  report.joints.map((joint) => [
    String(joint.count),
    joint.part,
    joint.what,
    joint.gauge === undefined ? 'own legs' : `${joint.gauge} AWG${joint.known ? '' : ' (usual)'}`,
    `${ironFor(joint).from} to ${ironFor(joint).to} C`,
    ironFor(joint).tip,
  ]);
const jointHeads = ['', 'part', 'joint', 'wire', 'iron, leaded solder', 'tip'];

const hours = (minutes: number): string => `${(minutes / 60).toFixed(1)} h`;
const sum = (report: AssemblyReport): string =>
  `${report.jointCount} joints, about ${hours(report.minutes)} at the bench; a first build takes twice that.`;

export function assemblyAsText(report: AssemblyReport): string {
  const states = new Map(report.gates.map((gate) => [gate.gate, gate]));
  return `${[
    `${report.name}: assembly`,
    `  ${sum(report)}`,
    '',
    'Tools',
    tableAsText({ heads: ['', 'for', 'bench'], rows: toolRows(report) }),
    '',
    'Consumables',
    tableAsText({ heads: ['', 'amount', 'bench'], rows: consumableRows(report) }),
    '',
    'Joints',
    tableAsText({ heads: jointHeads, rows: jointRows(report) }),
    ...(report.harness ? ['', 'Cable to re-pin', harnessAsText(report.harness).trimEnd()] : []),
    ...report.steps.flatMap((step, i) => [
      '',
      `${String(i + 1).padStart(2)}  ${step.title}`,
      ...step.cautions.map((line) => `    ! ${line}`),
      ...step.todo.map((line) => `      ${line}`),
      ...(step.gate
        ? [
            `    ${mark(states.get(step.gate.name)!)} gate ${step.gate.name}${when(states.get(step.gate.name)!)}: ${step.gate.see.join(' ')}`,
          ]
        : []),
    ]),
  ].join('\n')}\n`;
}

const mark = (state: GateState): string => (state.is === 'passed' || state.is === 'unbound' ? '[x]' : '[ ]');
const when = (state: GateState): string =>
  state.is === 'open' ? '' : state.is === 'void' ? ` (void: passed ${state.date}, changed since)` : ` (${state.date})`;

export function assemblyAsMarkdown(report: AssemblyReport): string {
  const states = new Map(report.gates.map((gate) => [gate.gate, gate]));
  const box = (step: Step): string => (step.gate && mark(states.get(step.gate.name)!) === '[x]' ? '[x]' : '[ ]');
  return `${[
    `# ${report.name}: assembly`,
    '',
    sum(report),
    '',
    '## Tools',
    '',
    ...report.tools.map((one) => `- ${one.owned ? '[x]' : '[ ]'} ${one.name}: ${one.why}`),
    '',
    '## Consumables',
    '',
    ...report.consumables.map((one) => `- ${one.owned ? '[x]' : '[ ]'} ${one.name}, ${one.amount}`),
    '',
    '## Joints',
    '',
    tableAsMarkdown({ heads: jointHeads, rows: jointRows(report) }),
    ...(report.harness ? ['', '## Cable to re-pin', '', harnessAsMarkdown(report.harness)] : []),
    '',
    '## Steps',
    ...report.steps.flatMap((step, i) => [
      '',
      `### ${i + 1}. ${step.title}`,
      '',
      ...step.cautions.map((line) => `> **Caution.** ${line}`),
      ...(step.cautions.length > 0 ? [''] : []),
      ...step.todo.map((line) => `- ${box(step)} ${line}`),
      ...(step.gate
        ? [
            `- ${box(step)} **Gate \`${step.gate.name}\`**${when(states.get(step.gate.name)!)}: ${step.gate.see.join(' ')}`,
          ]
        : []),
    ]),
  ].join('\n')}\n`;
}

export const assemblyAsJson = (report: AssemblyReport): unknown => ({
  name: report.name,
  joints: report.jointCount,
  minutes: report.minutes,
  tools: report.tools.map((one) => ({ ...one, owned: one.owned ?? null })),
  consumables: report.consumables.map((one) => ({ ...one, owned: one.owned ?? null })),
  jointList: report.joints.map((joint) => ({ ...joint, gauge: joint.gauge ?? null, iron: ironFor(joint) })),
  harness: report.harness ?? null,
  steps: report.steps.map((step) => ({ ...step, gate: step.gate ?? null })),
  gates: report.gates.map((gate) => ({ ...gate, date: gate.date ?? null })),
});
