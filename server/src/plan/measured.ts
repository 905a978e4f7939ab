/** What somebody measured of this craft and whether the figures use it. Words the things, computes nothing. */
import type { Craft, Pack } from '../build/craft';
import type { Fact } from '../build/fact';
import { standRows } from './flight-input';

export interface Measured {
  /** Path of the fact, in the words of the file. */
  readonly fact: string;
  readonly what: string;
  readonly used: boolean;
  /** As written, when a date was given. */
  readonly date?: string;
}

export function measuredOf(craft: Craft, pack: Pack | undefined): readonly Measured[] {
  const { motors, propellers } = craft.roles;
  const flight = craft.said.flight;
  const found: Measured[] = [];
  const take = (fact: string, what: string, said: Fact<unknown> | undefined, unsaidToo = false): void => {
    if (said && (said.origin.trust === 'measured' || (unsaidToo && said.origin.trust === 'unsaid')))
      found.push({ fact, what, used: true, date: said.origin.date });
  };
  take('flight.weighed', 'the weight of the whole craft', flight?.weighed, true);
  const rows = motors?.['thrust-table']?.items ?? [];
  const usable = standRows(craft);
  const count = (n: number): string => `${n} ${n === 1 ? 'row' : 'rows'} of a thrust stand`;
  if (usable.length > 0) found.push({ fact: 'motors.thrust-table', what: count(usable.length), used: true });
  if (rows.length > usable.length)
    found.push({
      fact: 'motors.thrust-table',
      what: `${count(rows.length - usable.length)} with another propeller`,
      used: false,
    });
  const log = flight?.logged;
  if (log && ((log.minutes && log.used) || log.current || log['hover-throttle']))
    found.push({ fact: 'flight.logged', what: 'a logged flight', used: true, date: log.date?.value });
  take('propellers.ct', 'the thrust coefficient', propellers?.ct, true);
  take('propellers.cp', 'the power coefficient', propellers?.cp, true);
  take('motors.resistance', 'the motor winding', motors?.resistance);
  take('motors.no-load-current', 'the motor without a propeller', motors?.['no-load-current']);
  take('pack.cell-resistance', 'the resistance of the cells', pack?.facts['cell-resistance'], true);
  take('pack.capacity', 'what the pack holds', pack?.facts.capacity);
  return found;
}
