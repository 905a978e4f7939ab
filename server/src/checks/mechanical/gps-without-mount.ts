/** The frame has no place for the satellite receiver, and no printed holder is listed. */
import { adaptersOf } from '../../plan/adapters';
import { check } from '../check';

export default check({
  id: 'gps-without-mount',
  group: 'mechanical',
  title: 'Nothing holds the satellite receiver',
  severity: 'information',
  needs: { place: 'frame.gps-mount' },
  when: (craft) => craft.roles.gps !== undefined,
  judge({ place }, craft) {
    if (place.value || adaptersOf(craft, 'printed mount').length > 0) return undefined;
    return {
      at: place,
      message:
        'The frame has no place for the satellite receiver. Add a printed holder (an adapter of type `printed mount`) with a view of the sky, at least 50 mm from the video antenna and the battery lead.',
    };
  },
});

export const explanation = {
  why: 'A satellite receiver wants a firm place with a view of the sky, away from the video antenna and the battery lead.',
  remedy: 'Add a printed holder on the tail or on a mast.',
  source: 'documentation of widely used open flight firmware on where to put a receiver; distances: common practice',
  bad: `
dryfit: build
name: Example
parts:
  frame:
    gps-mount: «no»
  gps:
    protocol: UBX
`,
  good: `
dryfit: build
name: Example
parts:
  frame:
    gps-mount: no
  gps:
    protocol: UBX
  adapters:
    tail:
      type: printed mount
`,
};
