/** The camera is wider than any width the frame's cage takes. */
import { exceeds } from '../beyond';
import { camerasFit } from '../camera-cage';
import { check } from '../check';
import { millimetres } from '../words';

export default check({
  id: 'camera-too-wide-for-cage',
  group: 'mechanical',
  title: 'Camera does not go into the cage',
  severity: 'error',
  needs: { width: 'camera.width', cage: 'frame.camera-widths' },
  judge({ width, cage }) {
    const widths = cage.items.map((item) => item.value);
    if (widths.some((one) => !exceeds(width.value, one + 0.5e-3) || camerasFit(width.value, one))) return undefined;
    return {
      at: width,
      with: [{ fact: cage, says: `the cage takes ${cage.text}` }],
      message: `The camera is ${millimetres(width.value)} wide, the cage takes ${cage.text}. It does not go in. Use a camera of ${millimetres(Math.max(...widths))} or narrower, or a frame with a wider cage.`,
    };
  },
});

export const explanation = {
  why: 'A camera that is wider than its cage cannot be mounted; plates spread by force crack.',
  remedy: 'Take the narrower version of the camera, or a frame with a wider cage.',
  source: 'common practice: widths of 14, 19, 20 to 22 and 28 mm',
  bad: `
dryfit: build
name: Wide camera
parts:
  frame:
    camera-widths: 19 mm
  camera:
    width: «21 mm»
`,
  good: `
dryfit: build
name: One class from 20 to 22
parts:
  frame:
    camera-widths: 20 mm
  camera:
    width: 22 mm
`,
};
