/** Limits of the profiles of regions. */
import { edge } from './boundary';

export const rules = [
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
  // A scale reads to a gram.
  edge('weight-near-limit', 'flight.weighed', ['249 g', 'silent'], ['249.1 g', 'information']),
  edge('weight-near-limit', 'flight.weighed', ['251 g', 'silent'], ['250.9 g', 'information']),
];
