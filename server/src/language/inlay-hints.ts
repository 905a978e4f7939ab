/** Short words behind a line: the serial port that was chosen, what a part weighs and costs. Works nothing out itself. */
import { type InlayHint, InlayHintKind } from 'vscode-languageserver-types';
import type { Craft } from '../build/craft';
import type { Fact, Facts } from '../build/fact';
import type { SourceFile } from '../build/source-file';
import type { Workspace } from '../library/workspace';
import { lowestPrice } from '../plan/lowest-price';
import { openShops } from '../plan/order-shops';
import { worked } from '../plan/worked';
import { positionAt } from '../text/lines';
import { money } from '../text/notation/money';
import { everything, type Showing } from './showing';

export function inlayHints(
  workspace: Workspace,
  file: SourceFile,
  crafts: readonly Craft[],
  showing: Showing = everything,
): readonly InlayHint[] {
  return crafts.flatMap((craft) => [
    ...(showing.ports ? portHints(file, craft) : []),
    ...useHints(workspace, file, craft, showing),
  ]);
}

type Parts = Readonly<
  Record<string, (Facts & { readonly weight?: Fact<number>; readonly use?: Fact<string> }) | undefined>
>;

function portHints(file: SourceFile, craft: Craft): readonly InlayHint[] {
  const plan = worked(craft, undefined, 'worked.ports')?.value;
  if (!plan) return [];
  return [...plan.taken].flatMap(([device, { port, said }]) => {
    const where = (craft.said.parts as unknown as Parts | undefined)?.[device]?.where;
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

/** Behind `use:`, what one of the part weighs and the lowest price of it. */
function useHints(workspace: Workspace, file: SourceFile, craft: Craft, showing: Showing): readonly InlayHint[] {
  if (!showing.weights && !showing.prices) return [];
  const shops = showing.prices ? openShops(workspace.shops()) : undefined;
  const parts = [
    ...Object.values((craft.said.parts ?? {}) as unknown as Parts),
    ...craft.packs.map((pack) => pack.facts),
  ];
  return parts.flatMap((part) => {
    const use = part?.use;
    if (!use || use.at.file !== file.uri) return [];
    const grams = part.weight && part.weight.value * 1000;
    const price = shops && lowestPrice(shops, use.value);
    const words = [
      showing.weights && grams !== undefined ? `${grams.toFixed(grams < 10 ? 1 : 0)} g` : '',
      shops && price ? money(price.each, shops.currency) : '',
    ].filter(Boolean);
    return words.length === 0
      ? []
      : [
          {
            position: positionAt(file.lines, use.at.span.end),
            label: ` ${words.join(', ')}`,
            paddingLeft: true,
            tooltip: price ? `Weight of one, and its lowest price, at ${price.shop}` : 'Weight of one',
          },
        ];
  });
}
