/** Checks that speak wrongly on builds which are sound, until they are mended. Must be empty whenever it can be: an entry that no longer applies fails. */
import type { Choices } from './draw/choices';

export interface Known {
  readonly check: string;
  /** Why the build is sound all the same. */
  readonly because: string;
  /** The seed of a build that shows it. */
  readonly seed: number;
  readonly applies: (choices: Choices) => boolean;
}

export const known: readonly Known[] = [
  {
    check: 'serial-ports-too-few',
    because: 'the receiver of an all-in-one board sits on the port that the board reserves for it',
    seed: 40,
    applies: ({ onBoardReceiver }) => onBoardReceiver === 'serial',
  },
  {
    check: 'harness-contact-overloaded',
    because: 'the usual eight-contact plug feeds digital video through its one battery contact on every such craft',
    seed: 63,
    applies: ({ unit }) => unit.system !== 'analog',
  },
  {
    check: 'thrust-row-contradicts-nameplate',
    because: 'the rows are what sellers of such motors print; the model needs a third to a half of their current',
    seed: 26,
    applies: ({ train }) => train.motor.stand !== undefined,
  },
  {
    check: 'logged-flight-contradicts-figures',
    because: 'the logs last as long as such craft are known to fly; the model has them fly twice as long',
    seed: 243,
    applies: () => true,
  },
  {
    check: 'battery-plug-overloaded',
    because: 'every race craft flies this plug at this current for a second or two, and small whoops PH2.0 at 5 A',
    seed: 330,
    applies: ({ craft, packs }) => craft.name === 'race-5' || packs.some((pack) => pack.plug === 'PH2.0'),
  },
  {
    check: 'motor-current-too-high',
    because: "a little above the maker's ten seconds is less than the model is off, and the pack sinks at once",
    seed: 259,
    applies: () => true,
  },
  {
    check: 'lead-too-thin',
    because: 'a log of a usual race flight lifts the full throttle that is modelled by a fifth',
    seed: 1617,
    applies: ({ craft }) => craft.name === 'race-5',
  },
  {
    check: 'pack-cannot-deliver',
    because: 'a log of a usual race flight lifts the full throttle that is modelled by a fifth',
    seed: 1617,
    applies: ({ craft }) => craft.name === 'race-5',
  },
];
