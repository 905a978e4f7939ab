/** One line above a build with its decisive figures, and above a library part how many builds use it. Computes through the card. */
import type { CodeLens } from 'vscode-languageserver-types';
import type { Analysis } from '../analysis';
import { kidOf } from '../build/slot';
import type { Workspace } from '../library/workspace';
import { weightOf } from '../plan/weight';
import { valuesFor } from '../plan/worked';
import { mainPack } from '../report/card';
import { mentions } from './mentions';
import { rangeOf } from './protocol';
import { everything, type Showing } from './showing';
import { whatIfLenses } from './what-if';

export function codeLenses(
  workspace: Workspace,
  analysis: Analysis,
  spelled: (uri: string) => string,
  showing: Showing = everything,
): readonly CodeLens[] {
  const { file, crafts, findings } = analysis;
  const lenses: CodeLens[] = [];
  for (const craft of showing.figures ? crafts : []) {
    const pack = mainPack(craft);
    const made = valuesFor(craft, pack);
    const open = findings.filter(
      (finding) => finding.accepted === undefined && finding.severity !== 'information',
    ).length;
    const words = [
      `${(weightOf(craft, pack).ready.value * 1000).toFixed(0)} g${pack ? ' ready to fly' : ' without a pack'}`,
      made?.full.ok ? `${made.full.value.thrustToWeight.toFixed(1)} times its weight` : '',
      made?.asFlown.ok ? `${made.asFlown.value.minutes.toFixed(1)} min as you fly it` : '',
      open === 0 ? 'nothing to mend' : `${open} to mend`,
    ];
    lenses.push({
      range: rangeOf(file, craft.where.key ?? craft.where.span),
      command: {
        title: words.filter(Boolean).join('  ·  '),
        command: 'dryfit.showCard',
        arguments: [spelled(file.uri)],
      },
    });
  }
  for (const { span, title } of showing.steps ? whatIfLenses(file, crafts) : [])
    lenses.push({ range: rangeOf(file, span), command: { title, command: '' } });
  for (const document of file.documents) {
    if (document.kind !== 'parts' || !showing.uses) continue;
    const uses = new Map<string, Set<string>>();
    for (const mention of mentions(workspace))
      if (mention.as === 'use') uses.set(mention.id, (uses.get(mention.id) ?? new Set()).add(mention.file.uri));
    for (const slot of kidOf(document.slot, 'parts')?.kids ?? []) {
      if (!slot.keySpan) continue;
      const count = uses.get(slot.key)?.size ?? 0;
      const range = rangeOf(file, slot.keySpan);
      lenses.push({
        range,
        command: {
          title: count === 0 ? 'not used' : `used by ${count} ${count === 1 ? 'file' : 'files'}`,
          command: count === 0 ? '' : 'dryfit.showUses',
          arguments: [spelled(file.uri), range.start],
        },
      });
    }
  }
  return lenses;
}
