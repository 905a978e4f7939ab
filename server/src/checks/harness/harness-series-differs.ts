/** The sockets of the two boards, or the plugs of the cable, are of different connector series. */

import { joinsBoards } from '../../plan/craft-harness';
import { check } from '../check';

export default check({
  id: 'harness-series-differs',
  group: 'harness',
  title: 'Plugs of the cable do not fit the sockets',
  severity: 'error',
  needs: { esc: 'esc.controller-socket.series', controller: 'flight-controller.esc-socket.series' },
  may: { first: 'harness.series', second: 'harness.second-series' },
  when: (craft) => joinsBoards(craft) && craft.roles.harness?.soldered?.value !== true,
  judge({ esc, controller, first, second }, craft) {
    if (esc.value === 'pads' || controller.value === 'pads') return undefined;
    const backwards = craft.roles.harness?.between?.items[0]?.value === 'flight-controller';
    const says = { fact: controller, says: `the flight controller has ${controller.text}` };
    if (!first) {
      if (esc.value === controller.value) return undefined;
      return {
        at: esc,
        with: [says],
        severity: 'warning',
        message: `The ESC has ${esc.text}, the flight controller ${controller.text}; no ordinary cable fits both. Get one with ${esc.text} at one end and ${controller.text} at the other, or solder the wires.`,
      };
    }
    const [atEsc, atController] = backwards ? [second ?? first, first] : [first, second ?? first];
    if (atEsc.value !== esc.value && atEsc.value !== 'pads')
      return {
        at: atEsc,
        with: [{ fact: esc, says: `the ESC has ${esc.text}` }],
        message: `The cable has ${atEsc.text} at the ESC, the ESC has ${esc.text}; they do not mate. Use a cable with ${esc.text} there, or solder the wires.`,
      };
    if (atController.value !== controller.value && atController.value !== 'pads')
      return {
        at: atController,
        with: [says],
        message: `The cable has ${atController.text} at the flight controller, which has ${controller.text}; they do not mate. Use a cable with ${controller.text} there, or solder the wires.`,
      };
    return undefined;
  },
});

export const explanation = {
  why: 'Plugs of 1.0 and 1.25 mm pitch look alike in pictures and do not mate; two 1.25 mm types do not mate either.',
  remedy: 'Use a cable made for this pair of sockets, or solder the wires.',
  source: 'JST catalogue; which types mate: common practice',
  bad: `
dryfit: build
name: Two pitches
parts:
  esc:
    controller-socket:
      series: GH 1.25
  flight-controller:
    esc-socket:
      series: SH 1.0
  harness:
    series: «SH 1.0»
`,
  good: `
dryfit: build
name: Cable with two ends
parts:
  esc:
    controller-socket:
      series: GH 1.25
  flight-controller:
    esc-socket:
      series: SH 1.0
  harness:
    series: GH 1.25
    second-series: SH 1.0
`,
};
