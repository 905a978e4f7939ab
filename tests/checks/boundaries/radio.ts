/** Limits of video and radio control. */
import { edge } from './boundary';

export const radio = [
  edge('antenna-off-band', 'parts.video-transmitter.channel', ['5900 MHz', 'silent'], ['5901 MHz', 'warning'], {
    'parts.video-antenna.band': '5.6 GHz - 5.9 GHz',
  }),
  edge('antenna-off-band', 'parts.video-transmitter.channel', ['5600 MHz', 'silent'], ['5599 MHz', 'warning'], {
    'parts.video-antenna.band': '5.6 GHz - 5.9 GHz',
  }),
  // 3 % of 5.9 GHz are 177 MHz.
  edge('antenna-off-band', 'parts.video-transmitter.channel', ['6077 MHz', 'warning'], ['6078 MHz', 'error'], {
    'parts.video-antenna.band': '5.6 GHz - 5.9 GHz',
  }),
  // 50 MHz beside 2400 to 2483.5 MHz.
  edge(
    'control-and-video-share-band',
    'parts.video-transmitter.channel',
    ['2350 MHz', 'silent'],
    ['2351 MHz', 'warning'],
  ),
  edge(
    'control-and-video-share-band',
    'parts.video-transmitter.channel',
    ['2534 MHz', 'silent'],
    ['2533 MHz', 'warning'],
  ),
  // 2 % of the level that is set: 25 mW are 24.51 to 25.51 mW.
  edge('power-level-not-offered', 'parts.video-transmitter.level', ['25.5 mW', 'silent'], ['25.6 mW', 'warning']),
  edge('power-level-not-offered', 'parts.video-transmitter.level', ['24.6 mW', 'silent'], ['24.5 mW', 'warning']),
  edge('link-firmware-differs', 'parts.receiver.firmware-major', ['3', 'silent'], ['4', 'warning']),
  edge('video-antennas-too-few', 'parts.video-antenna.count', ['2', 'silent'], ['1', 'error']),
  edge('video-draw-below-radio-power', 'parts.video-transmitter.draw', ['1.2 W', 'silent'], ['1.19 W', 'warning']),
  // A quarter wave of 866.5 MHz is 86.50 mm, of 2441.75 MHz 30.69 mm; 15 % either way.
  edge(
    'receiver-antenna-length-off',
    'parts.receiver-antenna.arm-length',
    ['99.4 mm', 'silent'],
    ['99.5 mm', 'information'],
  ),
  edge(
    'receiver-antenna-length-off',
    'parts.receiver-antenna.arm-length',
    ['73.6 mm', 'silent'],
    ['73.5 mm', 'information'],
  ),
  edge(
    'receiver-antenna-length-off',
    'parts.receiver-antenna.arm-length',
    ['35.2 mm', 'silent'],
    ['35.3 mm', 'information'],
    {
      'parts.receiver-antenna.band': '2.4 GHz',
    },
  ),
];
