/** The outline of a board is larger than the free room between the standoffs. */
import type { Fact } from '../../build/fact';
import type { Size } from '../../text/notation/size';
import { exceeds } from '../beyond';
import { check } from '../check';

export default check({
  id: 'board-too-wide-for-bay',
  group: 'mechanical',
  title: 'Board is wider than the bay',
  severity: 'warning',
  needs: { bay: 'frame.bay' },
  may: { controller: 'flight-controller.outside', esc: 'esc.outside' },
  when: (craft) =>
    craft.roles['flight-controller']?.outside !== undefined ||
    (craft.roles.esc?.outside !== undefined && craft.roles.esc.type?.value !== 'single'),
  judge({ bay, controller, esc }, craft) {
    const long = Math.max(bay.value.length, bay.value.width);
    const short = Math.min(bay.value.length, bay.value.width);
    const one = (name: string, outside: Fact<Size> | undefined) => {
      if (!outside) return [];
      const { length, width } = outside.value;
      if (!exceeds(Math.max(length, width), long) && !exceeds(Math.min(length, width), short)) return [];
      return [
        {
          at: outside,
          apart: name,
          with: [{ fact: bay, says: `the bay is ${bay.text}` }],
          message: `The ${name} is ${outside.text}, the bay between the standoffs ${bay.text}. It touches them either way round. Use a smaller board, or measure the bay.`,
        },
      ];
    };
    return [
      ...one('flight controller', controller),
      ...(craft.roles.esc?.type?.value === 'single' ? [] : one('ESC', esc)),
    ];
  },
});

export const explanation = {
  why: 'A board that touches the standoffs transmits vibration to the gyro or does not go in at all.',
  remedy: 'Turn the board by a quarter, or take a smaller one.',
  source: 'geometry; outlines in listings often leave out pads and the USB socket: common practice',
  bad: `
dryfit: build
name: Example
parts:
  frame:
    bay: 50x40 mm
  esc:
    outside: «45x42x7 mm»
`,
  good: `
dryfit: build
name: Example
parts:
  frame:
    bay: 50x40 mm
  esc:
    outside: 40x45x7 mm
`,
};
