/** A two-contact plug of a signal series carries battery voltage. */
import type { Fact } from '../../build/fact';
import { check } from '../check';

export default check({
  id: 'battery-on-signal-plug',
  group: 'power',
  title: 'Battery voltage on a signal plug',
  severity: 'warning',
  needs: {},
  may: {
    video: 'video-transmitter.socket.pins',
    camera: 'camera.socket.pins',
    controller: 'flight-controller.video-socket.pins',
  },
  when: (craft) =>
    [
      craft.roles['video-transmitter']?.socket,
      craft.roles.camera?.socket,
      craft.roles['flight-controller']?.['video-socket'],
    ].some((socket) => socket?.pins && socket.series),
  judge(_, craft) {
    const sockets = [
      craft.roles['video-transmitter']?.socket,
      craft.roles.camera?.socket,
      craft.roles['flight-controller']?.['video-socket'],
    ];
    return sockets.flatMap((socket) => {
      const { series, pins } = socket ?? {};
      if (!pins || !series || pins.entries.size !== 2 || !/^(SH|GH|ZH|Pico)/.test(series.value)) return [];
      const supply = [...pins.entries.values()].find((pin) => pin.value === 'VBAT');
      if (!supply) return [];
      const at: Fact<string> = series;
      return [
        {
          at,
          with: [{ fact: supply, says: 'this contact carries the battery' }],
          apart: at.at.path,
          message: `A two-contact ${series.text} plug carries battery voltage; the same plug fits signal sockets and would destroy what is behind them. Use a PH 2.0 plug, or solder the wires.`,
        },
      ];
    });
  },
});

export const explanation = {
  why: 'The same plug fits signal sockets of other boards, which battery voltage destroys.',
  remedy: 'Use a PH plug for power alone, or solder it.',
  source: 'the open flight controller connector standard allows only PH for power-only plugs, as reported',
  bad: `
dryfit: build
name: Example
parts:
  video-transmitter:
    socket:
      series: «SH 1.0»
      pins: { 1: VBAT, 2: GND }
`,
  good: `
dryfit: build
name: Example
parts:
  video-transmitter:
    socket:
      series: PH 2.0
      pins: { 1: VBAT, 2: GND }
`,
};
