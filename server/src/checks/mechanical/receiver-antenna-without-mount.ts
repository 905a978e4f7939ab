/** The frame has no place for the receiver's antenna, and no printed holder is listed. */
import { adaptersOf } from '../../plan/adapters';
import { check } from '../check';

export default check({
  id: 'receiver-antenna-without-mount',
  group: 'mechanical',
  title: "Nothing holds the receiver's antenna",
  severity: 'information',
  needs: { place: 'frame.receiver-antenna-mount' },
  when: (craft) => craft.roles['receiver-antenna'] !== undefined,
  judge({ place }, craft) {
    if (place.value || adaptersOf(craft, 'printed mount').length > 0) return undefined;
    return {
      at: place,
      message:
        "The frame has no place for the receiver's antenna. Add a printed holder (an adapter of type `printed mount`), or tie it to an arm where no propeller reaches it.",
    };
  },
});

export const explanation = {
  why: 'An antenna that flaps ends in a propeller.',
  remedy: 'Add a printed holder, or tie it to an arm away from carbon.',
  source: 'common practice',
  bad: `
dryfit: build
name: Example
parts:
  frame:
    receiver-antenna-mount: «no»
  receiver-antenna:
    band: 2.4 GHz
`,
  good: `
dryfit: build
name: Example
parts:
  frame:
    receiver-antenna-mount: yes
  receiver-antenna:
    band: 2.4 GHz
`,
};
