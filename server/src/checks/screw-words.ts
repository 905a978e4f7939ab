/** How a screw is named, and the edit that gives it another length. Decides nothing. */
import type { Pointable } from '../build/fact';
import type { Fix } from '../build/finding';
import type { Screw } from '../text/notation/screw';

export const screwName = (screw: Screw): string => `M${screw.thread}x${Number((screw.length * 1000).toFixed(1))}`;

/** Only where the motors themselves say the screw: what comes in a frame's box is not changed by an edit. */
export function screwFix(screw: Pointable & { readonly value: Screw }, length: number): readonly Fix[] {
  if (!/(^|\.)(motors\.screws|screws)$/.test(screw.at.path)) return [];
  const better = { ...screw.value, length };
  return [
    {
      title: `Use ${screwName(better)}`,
      edits: [
        {
          file: screw.at.file,
          span: screw.at.span,
          text: `${screwName(better)}${better.head ? ` ${better.head}` : ''}`,
        },
      ],
    },
  ];
}
