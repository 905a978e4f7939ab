/** Limits of ports, signals and firmware. */
import { edge } from './boundary';

export const signals = [
  // A full port for each of three devices, and one that stays free.
  edge('serial-ports-too-few', 'parts.flight-controller.uarts.uart3.pads', ['rx+tx', 'silent'], [undefined, 'error']),
  edge('board-out-of-reach', 'parts.flight-controller.uarts.uart2.pads', ['rx+tx', 'silent'], [undefined, 'error']),
  edge('compass-near-current', 'parts.gps.from-battery-lead', ['60 mm', 'silent'], ['59.9 mm', 'warning']),
  edge('esc-channels-too-few', 'parts.motors.count', ['4', 'silent'], ['5', 'error'], {
    'parts.esc.channels': undefined,
  }),
  edge('esc-channels-too-few', 'parts.esc.channels', ['6', 'silent'], ['5', 'error']),
  edge(
    'firmware-older-than-chip',
    'setup.firmware',
    ['open flight firmware 4.5', 'silent'],
    ['open flight firmware 4.4', 'warning'],
  ),
  edge('gps-baud-lossy', 'parts.gps.baud', ['115199', 'silent'], ['115200', 'information']),
  edge('motor-outputs-too-few', 'parts.flight-controller.motor-outputs', ['6', 'silent'], ['5', 'error']),
  edge('motor-signal-slower-than-loop', 'setup.loop', ['5.9 kHz', 'silent'], ['5.91 kHz', 'information']),
  edge('motor-signal-slower-than-loop', 'setup.loop', ['8.7 kHz', 'silent'], ['8.71 kHz', 'information'], {
    'setup.motor-protocol': 'DShot600',
  }),
  edge('motor-signal-slower-than-loop', 'setup.loop', ['3 kHz', 'silent'], ['3.01 kHz', 'information'], {
    'setup.motor-protocol': 'DShot150',
  }),
];
