/** Limits of the cables and sockets. */
import { edge } from './boundary';

export const harness = [
  edge('harness-contacts-differ', 'parts.esc.controller-socket.contacts', ['8', 'silent'], ['9', 'error']),
  edge('harness-contacts-differ', 'parts.esc.controller-socket.contacts', ['8', 'silent'], ['7', 'error']),
  edge('socket-of-other-duty', 'parts.gps.socket.contacts', ['5', 'silent'], ['6', 'warning']),
  edge('harness-too-short', 'parts.harness.length', ['55 mm', 'silent'], ['54.9 mm', 'warning']),
  edge('pin-list-too-long', 'parts.esc.controller-socket.contacts', ['3', 'silent'], ['2', 'error'], {
    'parts.esc.controller-socket.pins': undefined,
    'parts.esc.controller-socket.pins.1': 'VBAT',
    'parts.esc.controller-socket.pins.2': 'GND',
    'parts.esc.controller-socket.pins.3': 'M1',
  }),
  // Five volts and a tenth, as rails are trimmed, and a little.
  edge(
    'socket-of-other-duty',
    'parts.flight-controller.video-socket.pin-1-voltage',
    ['5 V - 5.6 V', 'silent'],
    ['5 V - 5.61 V', 'warning'],
  ),
  edge(
    'video-socket-voltage-wrong',
    'parts.video-transmitter.supply',
    ['9 V - 26 V', 'silent'],
    ['9.01 V - 26 V', 'error'],
  ),
  edge(
    'video-socket-voltage-wrong',
    'parts.video-transmitter.supply',
    ['7 V - 9 V', 'silent'],
    ['7 V - 8.99 V', 'error'],
  ),
  // Wider than 10 V and a tenth either way it is a range, and its low end counts.
  edge(
    'video-socket-voltage-wrong',
    'parts.flight-controller.video-socket.pin-1-voltage',
    ['9 V - 11 V', 'silent'],
    ['9 V - 11.01 V', 'error'],
  ),
];
