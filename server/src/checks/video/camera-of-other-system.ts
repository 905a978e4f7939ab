/** Camera and video transmitter belong to different video systems. */
import { check } from '../check';
import { sameFamily } from '../families';

export default check({
  id: 'camera-of-other-system',
  group: 'video',
  title: 'Camera and video transmitter do not speak the same',
  severity: 'error',
  needs: { camera: 'camera.system', transmitter: 'video-transmitter.system' },
  judge({ camera, transmitter }) {
    if (sameFamily(camera.value, transmitter.value)) return undefined;
    return {
      with: [{ fact: transmitter, says: `the transmitter is ${transmitter.text}` }],
      message: `The camera is ${camera.text}, the video transmitter ${transmitter.text}. There would be no picture. Use a camera for ${transmitter.text}, or a transmitter for ${camera.text}.`,
    };
  },
});

export const explanation = {
  why: 'An analog camera has no plug on a digital unit and the other way round; digital cameras bind to their own family.',
  remedy: 'Take a camera of the family of the transmitter, or the other way round.',
  source: 'common practice: the family is a word of your own files, the same on both ends',
  bad: `
dryfit: build
name: Analog camera on a digital unit
parts:
  camera:
    system: «analog»
  video-transmitter:
    system: veloview
`,
  good: `
dryfit: build
name: One system
parts:
  camera:
    system: Analog
  video-transmitter:
    system: analog
`,
};
