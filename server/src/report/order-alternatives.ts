/** For a part that is nowhere to be had: another of its kind that is, that breaks no check which held, and costs least more. Changes no file. */
import { craftsOf } from '../analysis';
import type { Craft } from '../build/craft';
import { allChecks } from '../checks/generated/all';
import { runChecks } from '../checks/run';
import type { Workspace } from '../library/workspace';
import { orderOf } from '../plan/order-build';
import { packsFor } from '../plan/order-model';
import { orderNeeds } from '../plan/order-needs';
import type { OrderReport } from './order-report';

export interface FittingPart {
  readonly part: string;
  readonly shop: string;
  /** Cents for the pieces that are needed, shipping left out. */
  readonly cost: number;
}

/** Cheap ones first; this many are tried. */
const tried = 40;

export interface Alternative {
  readonly part: string;
  readonly found: FittingPart | undefined;
}

export function alternativeFor(
  workspace: Workspace,
  craft: Craft,
  part: string,
  bench?: string,
): FittingPart | undefined {
  const need = orderNeeds(craft).find((one) => one.part === part);
  const file = workspace.get(craft.file);
  if (!need?.facts.use || !file) return undefined;
  const { shops } = orderOf([craft]);
  const offered = shops.open.flatMap(({ shop, offers }) =>
    offers.flatMap((offer) => {
      const packs = packsFor(need.need, offer);
      const same = workspace.find(offer.part, craft.file)?.kind === need.kind && offer.part !== part;
      return same && (offer.stock ?? packs) >= packs
        ? [{ part: offer.part, shop: shop.id, cost: packs * offer.price }]
        : [];
    }),
  );
  const pointer = pointerOf(craft, need.role, need.kind);
  const before = graveOf(craft);
  const all = offered.sort((a, b) => a.cost - b.cost || (a.part < b.part ? -1 : 1)).slice(0, tried);
  return all.find((one) => {
    const swapped = craftsOf(workspace, file, bench, { pointer, id: one.part })[0];
    return swapped !== undefined && [...graveOf(swapped)].every((check) => before.has(check));
  });
}

/** For every part of an order that is sold out, of the first craft that something else fits. */
export const alternativesFor = (
  workspace: Workspace,
  crafts: readonly Craft[],
  report: OrderReport,
  bench?: string,
): readonly Alternative[] =>
  report.missing
    .filter((one) => one.why === 'sold out')
    .map(({ part }) => ({
      part,
      found: crafts.reduce<FittingPart | undefined>(
        (found, craft) => found ?? alternativeFor(workspace, craft, part, bench),
        undefined,
      ),
    }));

/** Checks that warn or worse, apart from those about where things are bought. */
const graveOf = (craft: Craft): ReadonlySet<string> =>
  new Set(
    runChecks(
      allChecks.filter((check) => check.group !== 'order'),
      craft,
    )
      .findings.filter((finding) => finding.severity !== 'information')
      .map((finding) => finding.check),
  );

const pointerOf = (craft: Craft, role: string, kind: string): string =>
  kind === 'battery' && craft.packs.some((pack) => pack.name === role) ? `/packs/${role}` : `/parts/${role}`;
