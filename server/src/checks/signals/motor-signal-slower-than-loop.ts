/** The motor signal with rpm data is slower than the control loop. */
import { exceeds } from '../beyond';
import { check } from '../check';

/** Hz, one frame and its answer. */
const fastest: Readonly<Record<string, number>> = { DShot150: 3000, DShot300: 5900, DShot600: 8700 };

export default check({
  id: 'motor-signal-slower-than-loop',
  group: 'signals',
  title: 'Motor signal slower than the loop',
  severity: 'information',
  needs: { signal: 'setup.motor-protocol', loop: 'setup.loop', rpm: 'setup.bidirectional' },
  judge({ signal, loop, rpm }) {
    const most = rpm.value ? fastest[signal.value] : undefined;
    if (most === undefined || !exceeds(loop.value, most)) return undefined;
    return {
      at: signal,
      with: [{ fact: loop, says: `the loop runs at ${loop.text}` }],
      message: `${signal.value} with rpm data reaches about ${(most / 1000).toFixed(1)} kHz; the loop is set to ${loop.text}. Use DShot600, or a loop of ${most >= 4000 ? 4 : 2} kHz.`,
    };
  },
});

export const explanation = {
  why: 'A frame with its answer takes longer than a turn of the loop, so commands are lost.',
  remedy: 'Use a faster signal or a slower loop.',
  source:
    'DShot description of widely used open flight firmware: about 5.9 kHz for DShot300 and 8.7 kHz for DShot600 with the answer; DShot150 in proportion',
  bad: `
dryfit: build
name: Example
parts:
  esc:
    type: 4-in-1
setup:
  motor-protocol: «DShot300»
  bidirectional: yes
  loop: 8 kHz
`,
  good: `
dryfit: build
name: Example
parts:
  esc:
    type: 4-in-1
setup:
  motor-protocol: DShot600
  bidirectional: yes
  loop: 8 kHz
`,
};
