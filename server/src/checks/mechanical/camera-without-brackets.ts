/** The camera is narrower than every width of the cage, and no brackets are listed. */
import { adaptersOf } from '../../plan/adapters';
import { camerasFit } from '../camera-cage';
import { check } from '../check';
import { millimetres } from '../words';

export default check({
  id: 'camera-without-brackets',
  group: 'mechanical',
  title: 'Camera is narrower than the cage',
  severity: 'information',
  needs: { width: 'camera.width', cage: 'frame.camera-widths' },
  judge({ width, cage }, craft) {
    const widths = cage.items.map((item) => item.value);
    if (widths.some((one) => camerasFit(width.value, one))) return undefined;
    const wider = widths.filter((one) => one > width.value);
    if (wider.length === 0 || adaptersOf(craft, 'camera bracket').length > 0) return undefined;
    return {
      at: width,
      with: [{ fact: cage, says: `the cage takes ${cage.text}` }],
      message: `The camera is ${millimetres(width.value)} wide, the cage ${millimetres(Math.min(...wider))}. Add brackets between the two (an adapter of type \`camera bracket\`), or take a camera as wide as the cage.`,
    };
  },
});

export const explanation = {
  why: 'A camera that is loose in its cage turns in every crash.',
  remedy: 'Add brackets for the step, or take a camera as wide as the cage.',
  source: 'common practice: one bracket a step from 14 to 19 to 28 mm',
  bad: `
dryfit: build
name: Example
parts:
  frame:
    camera-widths: 28 mm
  camera:
    width: «19 mm»
`,
  good: `
dryfit: build
name: Example
parts:
  frame:
    camera-widths: 28 mm
  camera:
    width: 19 mm
  adapters:
    sides:
      type: camera bracket
`,
};
