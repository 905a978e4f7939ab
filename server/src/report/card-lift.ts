/** The card's answer to "does it lift?". */
import type { Craft } from '../build/craft';
import type { CraftFigures } from '../physics';
import { thrustTargetOf } from '../plan/class-habits';
import { type CardFigure, type CardGroup, cardFigure } from './card-figure';
import { whyNot } from './figure-words';

export function liftGroup(craft: Craft, figures: CraftFigures | undefined, wanting: readonly string[]): CardGroup {
  const rows: CardFigure[] = [];
  const remarks: string[] = [...wanting];
  if (figures) {
    const { full, fullSagged, hover } = figures;
    if (full.ok) {
      rows.push(cardFigure('thrust-to-weight', 'thrust to weight, full pack', full.value.thrustToWeight, true));
      const target = thrustTargetOf(craft.said.craft?.value);
      if (target)
        remarks.push(
          `Usual for ${craft.said.craft!.value}: ${target.usual[0]} to ${target.usual[1]} times its weight.`,
        );
    } else remarks.push(whyNot(full));
    if (fullSagged.ok)
      rows.push(
        cardFigure('thrust-to-weight-at-landing', 'thrust to weight, end of the pack', fullSagged.value.thrustToWeight),
      );
    if (full.ok) rows.push(cardFigure('full-thrust', 'thrust of all motors', full.value.thrust));
    if (hover.ok) rows.push(cardFigure('hover-throttle', 'throttle while hovering', hover.value.throttle, true));
    else if (full.ok || hover.why !== full.why) remarks.push(whyNot(hover));
  }
  return { question: 'Does it lift?', word: 'lifts', figures: rows, remarks };
}
