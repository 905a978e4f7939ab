/** The signal chosen in the set-up is one that the ESC or the flight controller does not know. */
import { check } from '../check';

export default check({
  id: 'motor-signal-not-offered',
  group: 'signals',
  title: 'Motor signal that one side does not know',
  severity: 'error',
  needs: { chosen: 'setup.motor-protocol', esc: 'esc.protocols' },
  may: { controller: 'flight-controller.protocols' },
  judge({ chosen, esc, controller }) {
    const knows = (list: typeof esc | undefined): boolean =>
      list === undefined || list.items.some((one) => one.value === chosen.value);
    if (knows(esc) && knows(controller)) return undefined;
    const [side, list] = knows(esc) ? (['flight controller', controller!] as const) : (['ESC', esc] as const);
    const shared = esc.items
      .filter((one) => controller === undefined || controller.items.some((other) => other.value === one.value))
      .at(-1);
    return {
      at: chosen,
      with: [{ fact: list, says: `the ${side} knows ${list.text}` }],
      message: `${chosen.value} is set, and the ${side} knows only ${list.text}. ${shared ? `Set ${shared.value}.` : 'They have nothing in common.'}`,
      fixes: shared
        ? [
            {
              title: `Set ${shared.value}`,
              edits: [{ file: chosen.at.file, span: chosen.at.span, text: shared.value }],
            },
          ]
        : [],
    };
  },
});

export const explanation = {
  why: 'A signal that one side does not know turns no motor.',
  remedy: 'Choose a signal that both know.',
  source: 'common practice',
  bad: `
dryfit: build
name: Example
parts:
  flight-controller:
    protocols: DShot300, DShot600
  esc:
    protocols: DShot150, DShot300
setup:
  motor-protocol: «DShot600»
`,
  good: `
dryfit: build
name: Example
parts:
  flight-controller:
    protocols: DShot300, DShot600
  esc:
    protocols: DShot150, DShot300
setup:
  motor-protocol: DShot300
`,
};
