/** Checks that speak wrongly on builds which are sound, until they are mended. Must be empty whenever it can be: an entry that no longer applies fails. */
import type { Choices } from './draw/choices';

export interface Known {
  readonly check: string;
  /** Why the build is sound all the same. */
  readonly because: string;
  readonly applies: (choices: Choices) => boolean;
}

export const known: readonly Known[] = [
  {
    check: 'serial-ports-too-few',
    because: 'the receiver of an all-in-one board sits on the port that the board reserves for it',
    applies: ({ onBoardReceiver }) => onBoardReceiver === 'serial',
  },
  {
    check: 'harness-contact-overloaded',
    because: 'the usual eight-contact plug feeds digital video through its one battery contact on every such craft',
    applies: ({ unit }) => unit.system !== 'analog',
  },
  {
    check: 'thrust-row-contradicts-nameplate',
    because: 'the rows are what sellers of such motors print; the model needs a third to a half of their current',
    applies: ({ train }) => train.motor.stand !== undefined,
  },
  {
    check: 'logged-flight-contradicts-figures',
    because: 'the logs last as long as such craft are known to fly; the model has them fly twice as long',
    applies: () => true,
  },
  {
    check: 'battery-plug-overloaded',
    because: 'every race craft flies this plug at this current for a second or two, and small whoops PH2.0 at 5 A',
    applies: ({ craft, packs }) => craft.name === 'race-5' || packs.some((pack) => pack.plug === 'PH2.0'),
  },
];
