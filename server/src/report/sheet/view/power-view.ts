/** The rails of the flight controller as a ledger: what each feeds and what is left. Lays out the plan of the rails. */
import type { Craft } from '../../../build/craft';
import type { Rails } from '../../../plan/rails';
import { amperes } from '../../ports-table';
import type { Spot, Spots } from './spots';

export interface RailBar {
  readonly rail: string;
  /** `1.2 A of 2.0 A, 800 mA left` */
  readonly text: string;
  /** A */
  readonly limit: number | undefined;
  readonly sum: number;
  readonly draws: readonly { readonly words: string; readonly current: number; readonly spot: Spot | undefined }[];
  readonly spot: Spot | undefined;
}

export function railBars(craft: Craft, rails: Rails, spots: Spots): readonly RailBar[] {
  const { stack, 'all-in-one': board } = craft.roles;
  const part = board ? 'parts.all-in-one' : stack ? 'parts.stack' : 'parts.flight-controller';
  return rails.ledgers.map((ledger) => {
    const left = ledger.limit && ledger.limit.value - ledger.sum;
    const room = left === undefined ? '' : left < 0 ? `, ${amperes(-left)} too much` : `, ${amperes(left)} left`;
    return {
      rail: ledger.rail,
      text: `${amperes(ledger.sum)} of ${ledger.limit ? amperes(ledger.limit.value) : 'an unknown limit'}${room}`,
      limit: ledger.limit?.value,
      sum: ledger.sum,
      draws: ledger.draws.map((draw) => ({
        words: `${draw.device.replaceAll('-', ' ')} ${amperes(draw.current)}${draw.known ? '' : ' (usual)'}`,
        current: draw.current,
        spot: spots.spot(craft.said.wiring?.entries.get(draw.device)?.power ?? draw.rests, `parts.${draw.device}`),
      })),
      spot: spots.spot(ledger.limit ?? craft.roles['flight-controller']?.regulators, part),
    };
  });
}
