/** Limits of the profiles of regions. */
import { worked } from '../../../server/src/plan/worked';
import { type Boundary, edge, turn } from './boundary';

export const rules: readonly Boundary[] = [
  // The picture takes 9 MHz either side; 5725 to 5875 MHz.
  edge(
    'channel-outside-profile',
    'parts.video-transmitter.channel',
    ['5866 MHz', 'silent'],
    ['5867 MHz', 'information'],
  ),
  edge(
    'channel-outside-profile',
    'parts.video-transmitter.channel',
    ['5734 MHz', 'silent'],
    ['5733 MHz', 'information'],
  ),
  edge(
    'channel-outside-profile',
    'parts.video-transmitter.channel',
    ['5875 MHz', 'information'],
    ['5876 MHz', 'warning'],
  ),
  edge(
    'channel-outside-profile',
    'parts.video-transmitter.channel',
    ['5725 MHz', 'information'],
    ['5724 MHz', 'warning'],
  ),
  // Less than 19 m/s counts as light, less than 250 g too.
  edge('light-but-fast', 'goals.top-speed', ['18.9 m/s', 'silent'], ['19 m/s', 'warning']),
  edge('light-but-fast', 'flight.weighed', ['250 g', 'silent'], ['249.9 g', 'warning']),
  // Without a written speed: a craft reaches four fifths of the speed of its air; asked for 30 % above 19 m/s.
  turn('light-but-fast', 'flight.throttle-limit', {
    with: {
      'goals.top-speed': undefined,
      'parts.frame.weight': '60 g',
      'parts.motors.stator': '1404',
      'parts.motors.kv': '3800',
      'parts.motors.weight': '9 g',
      'parts.propellers.size': '3x2x3',
      'packs.main.capacity': '650 mAh',
    },
    say: (value) => `${value.toFixed(1)} %`,
    silent: 30,
    found: 100,
    step: 0.1,
    broken: (craft, pack) => {
      const { full } = worked(craft, pack, 'worked.pack-values')!.value;
      // Two inches of pitch a turn.
      const air = full.ok ? (craft.said.flight!['throttle-limit']!.value * 2 * 0.0254 * full.value.rpm) / 60 : 0;
      return 0.8 * air > 1.3 * 19;
    },
  }),
  // 0.55 lb are 249.476 g, and that is still within; the UK counts from 100 g on.
  edge('remote-id-expected', 'flight.weighed', ['249.4 g', 'silent'], ['249.5 g', 'information']),
  edge('remote-id-expected', 'flight.weighed', ['99.9 g', 'silent'], ['100 g', 'information'], { region: 'UK' }),
  // 25 mW radiated into 2 dBi are a setting of 15.77 mW, with 1 % for rounding 15.93 mW.
  edge(
    'transmitter-power-over-limit',
    'parts.video-transmitter.level',
    ['15.9 mW', 'silent'],
    ['16 mW', 'information'],
  ),
  // Nobody said the antenna: 1.5 dBi are usual.
  edge(
    'transmitter-power-over-limit',
    'parts.video-transmitter.level',
    ['17.8 mW', 'silent'],
    ['17.9 mW', 'information'],
    {
      'parts.video-antenna': undefined,
    },
  ),
  // Parts of F and 115 g, good to 4 %, with 2 % (1.5 % either way) of F for solder: 250 g is their high end at 125.41 g, their low end at 139.74 g.
  edge('weight-near-limit', 'parts.frame.weight', ['125.4 g', 'silent'], ['125.5 g', 'information']),
  edge('weight-near-limit', 'parts.frame.weight', ['139.8 g', 'silent'], ['139.7 g', 'information']),
  // A scale reads to a gram.
  edge('weight-near-limit', 'flight.weighed', ['249 g', 'silent'], ['249.1 g', 'information']),
  edge('weight-near-limit', 'flight.weighed', ['251 g', 'silent'], ['250.9 g', 'information']),
];
