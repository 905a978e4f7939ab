/** Wires are soldered to contacts that lie closer together than a hand keeps apart easily. */

import { check } from '../check';

/** mm from contact to contact, as the series' names say. */
const pitches: Readonly<Record<string, number>> = { 'SH 1.0': 1, 'GH 1.25': 1.25, 'Pico 1.25': 1.25 };

export default check({
  id: 'bridge-risk',
  group: 'assembly',
  title: 'Contacts close together, soldered by hand',
  severity: 'information',
  needs: { soldered: 'harness.soldered', series: 'esc.controller-socket.series' },
  judge({ soldered, series }) {
    const pitch = pitches[series.value];
    if (!soldered.value || pitch === undefined) return undefined;
    return {
      at: soldered,
      with: [{ fact: series, says: `the socket is ${series.text}` }],
      message: `The cable is soldered where a ${series.text} socket would be: its contacts are ${pitch} mm apart. Solder bridges there are easily made and hardly seen. Use a cable with plugs, or solder every second contact first and check each against its neighbours with the meter before power.`,
    };
  },
});

export const explanation = {
  why: 'A hair of solder between battery and its neighbour is not seen, and kills the board at first power.',
  remedy: 'Use a cable with plugs; otherwise every second contact first, and each neighbour checked with the meter.',
  source: 'common practice; distances as in the names of the connector series',
  bad: `
dryfit: build
name: Example
parts:
  harness:
    soldered: «yes»
  esc:
    controller-socket:
      series: SH 1.0
`,
  good: `
dryfit: build
name: Example
parts:
  harness:
    soldered: yes
  esc:
    controller-socket:
      series: PH 2.0
`,
};
