/** A craft and its card from a build text, with parts files beside it when needed. */
import { type Analysis, analyse, craftsOf } from '../../server/src/analysis';
import type { Craft } from '../../server/src/build/craft';
import { Workspace } from '../../server/src/library/workspace';
import { type Card, type CardFigure, cardOf, figuresByName } from '../../server/src/report/card';

const uri = 'file:///club/craft.dryfit.yaml';

export function craftOf(
  text: string,
  others: Readonly<Record<string, string>> = {},
): { craft: Craft; workspace: Workspace } {
  const workspace = new Workspace();
  for (const [name, other] of Object.entries(others)) workspace.set(`file:///club/${name}.dryfit.yaml`, other);
  workspace.set(uri, text);
  return { craft: craftsOf(workspace, workspace.get(uri)!)[0]!, workspace };
}

/** The card without running any check. */
export function cardOfText(text: string, others: Readonly<Record<string, string>> = {}): Card {
  const { craft, workspace } = craftOf(text, others);
  const analysis: Analysis = analyse(workspace, uri, { checks: [] })!;
  return cardOf(craft, analysis);
}

/** Figures of the first pack by name. */
export const figuresOfText = (
  text: string,
  others: Readonly<Record<string, string>> = {},
): ReadonlyMap<string, CardFigure> => figuresByName(cardOfText(text, others).packs[0]!);
