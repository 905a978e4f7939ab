/** The card's answer to "does anything run hot?": motor, ESC, lead and plug. */
import type { Craft } from '../build/craft';
import type { CraftFigures } from '../physics';
import { BURST, heatOf } from '../plan/heat';
import { type CardFigure, type CardGroup, cardFigure, ranged } from './card-figure';

export function heatGroup(craft: Craft, figures: CraftFigures | undefined): CardGroup {
  const rows: CardFigure[] = [];
  const remarks: string[] = [];
  const heat = figures && heatOf(craft, figures);
  if (figures?.full.ok && heat) {
    const { escCurrent, packCurrent, cellVoltage, basis } = { ...figures.full.value, basis: figures.basis };
    const { esc, 'battery-lead': lead } = craft.roles;
    rows.push(cardFigure('full-current-each', 'one ESC channel at full throttle', escCurrent, true));
    rows.push(cardFigure('full-current', 'whole craft at full throttle', packCurrent, true));
    rows.push(cardFigure('full-cell-voltage', 'a cell under that load', cellVoltage));
    const add = (
      name: string,
      title: string,
      value: Parameters<typeof ranged>[2] | undefined,
      unit: CardFigure['unit'],
      own: CardFigure['basis'] = basis,
    ): void => {
      if (value) rows.push(ranged(name, title, value, unit, own));
    };
    add('esc-load', `one ESC channel, of its ${esc?.current?.text}`, heat.escLoad, '1');
    add('motor-load', `one motor, of its ${craft.roles.motors?.['peak-current']?.text}`, heat.motorLoad, '1');
    add('motor-heat-full', 'heat in one motor at full throttle', heat.motorAtFull, 'W');
    add('esc-heat-full', 'heat in one ESC channel at full throttle', heat.escAtFull, 'W', 'estimate');
    add('drive-heat-hovering', 'heat in one motor and ESC channel hovering', heat.bothHovering, 'W');
    add('lead-load', `lead, of what ${lead?.wire?.text} carries all day, as you fly it`, heat.lead?.load, '1');
    add('lead-heat', 'heat in the lead as you fly it', heat.lead?.power, 'W');
    add('lead-rise', `lead warms in ${BURST} s of full throttle by`, heat.lead?.rise, 'K');
    add('plug-load', `plug, of what an ${lead?.plug?.text} is flown at, as you fly it`, heat.plug?.load, '1');
    add('plug-burst', `plug, of what it takes for seconds, full throttle`, heat.plug?.burst, '1');
    add('plug-heat', 'heat in the plug as you fly it', heat.plug?.power, 'W', 'estimate');
    if (heat.plug)
      remarks.push(
        `${lead!.plug!.text}: its maker rates ${heat.plug.limits.rated} A, it is flown at ${heat.plug.limits.continuous} A and for seconds at ${heat.plug.limits.short} A.`,
      );
  }
  return { question: 'Does anything run hot?', word: 'draws', figures: rows, remarks };
}
