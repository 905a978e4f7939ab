/** Short words behind a line that tell what was worked out: the serial port chosen for a device. Works nothing out itself. */
import { type InlayHint, InlayHintKind } from 'vscode-languageserver-types';
import type { Craft } from '../build/craft';
import type { SourceFile } from '../build/source-file';
import { worked } from '../plan/worked';
import { positionAt } from '../text/lines';

export function inlayHints(file: SourceFile, crafts: readonly Craft[]): readonly InlayHint[] {
  return crafts.flatMap((craft) => portHints(file, craft));
}

function portHints(file: SourceFile, craft: Craft): readonly InlayHint[] {
  const plan = worked(craft, undefined, 'worked.ports')?.value;
  if (!plan) return [];
  return [...plan.taken].flatMap(([device, { port, said }]) => {
    const where = (
      craft.said.parts as
        | Readonly<Record<string, { where?: { file: string; key?: { end: number } } } | undefined>>
        | undefined
    )?.[device]?.where;
    if (said || !where?.key || where.file !== file.uri) return [];
    const need = plan.needs.find((one) => one.device === device);
    return [
      {
        // Behind the colon of the key.
        position: positionAt(file.lines, where.key.end + 1),
        label: ` ${port}`,
        kind: InlayHintKind.Parameter,
        paddingLeft: true,
        tooltip: `Worked out: ${need?.words ?? device} fits ${port}. Say another one under \`wiring:\` if you like.`,
      },
    ];
  });
}
