/** The card's answer to "how long does it fly?", with the voltage it lands at. */
import type { Craft, Pack } from '../build/craft';
import type { CraftFigures } from '../physics';
import { cellVoltage } from '../plan/cell-voltage';
import { type CardFigure, type CardGroup, cardFigure, exactly } from './card-figure';
import { whyNot } from './figure-words';

export function timeGroup(craft: Craft, pack: Pack | undefined, figures: CraftFigures | undefined): CardGroup {
  const rows: CardFigure[] = [];
  const remarks: string[] = [];
  if (figures && pack) {
    const { asFlown, hovering, hover } = figures;
    if (asFlown.ok) rows.push(cardFigure('time-as-flown', 'as you fly it', asFlown.value.minutes, true));
    if (hovering.ok) rows.push(cardFigure('time-hovering', 'hovering', hovering.value.minutes, true));
    if (hover.ok) rows.push(cardFigure('hover-current', 'current while hovering', hover.value.packCurrent, true));
    if (asFlown.ok) {
      const { meanCurrent, usedMah, usedWh, landingCellVoltage } = asFlown.value;
      rows.push(cardFigure('mean-current', 'mean current as you fly it', meanCurrent));
      rows.push(cardFigure('charge-used', 'used from the pack', usedMah));
      rows.push(cardFigure('energy-used', 'energy used', usedWh));
      rows.push(cardFigure('landing-cell-voltage', 'a cell under load at landing', landingCellVoltage));
      const chemistry = pack.facts.chemistry?.value ?? 'LiPo';
      const maker = pack.facts['landing-voltage'];
      const limit = maker?.value ?? cellVoltage(chemistry).landing;
      rows.push(exactly('landing-limit', 'not below, a cell under load', limit, 'V', maker ? 'said' : 'estimate'));
      remarks.push(
        `Lands at ${limit.toFixed(2)} V a cell under load (${maker ? 'as its maker says' : `usual for ${chemistry}`}) or with the reserve left, whichever comes first.`,
      );
    } else if (hovering.ok) remarks.push(whyNot(asFlown));
    const limited = craft.said.flight?.['throttle-limit'];
    if (limited && limited.value < 1)
      remarks.push(`The throttle limit of ${limited.text} is not in these figures; full throttle is meant without it.`);
  }
  return { question: 'How long does it fly?', word: 'flies', figures: rows, remarks };
}
