/** The camera takes more than the transmitter gives it. */

import { exceeds } from '../beyond';
import { check } from '../check';
import { amperes, apart } from '../words';

export default check({
  id: 'camera-supply-overloaded',
  group: 'power',
  title: 'Camera supply of the transmitter overloaded',
  severity: 'warning',
  needs: { camera: 'camera.current', gives: 'video-transmitter.camera-supply.current' },
  when: (craft) => craft.said.wiring?.entries.get('camera')?.power?.value.of === 'video-transmitter',
  judge({ camera, gives }, craft) {
    const rail = craft.said.wiring?.entries.get('camera')?.power;
    if (rail?.value.of !== 'video-transmitter' || !exceeds(camera.value, gives.value)) return undefined;
    const [draws, gets] = apart(amperes, camera.value, gives.value);
    return {
      at: rail,
      with: [
        { fact: gives, says: `it gives ${gives.text}` },
        { fact: camera, says: `the camera draws ${camera.text}` },
      ],
      message: `The camera draws ${draws} from the transmitter, which gives ${gets}. Feed it from the flight controller.`,
    };
  },
});

export const explanation = {
  why: 'The small regulator in the transmitter gets hot and the picture fails.',
  remedy: 'Feed the camera from the flight controller.',
  source: 'common practice',
  bad: `
dryfit: build
name: Example
parts:
  camera:
    current: 350 mA
  video-transmitter:
    camera-supply:
      voltage: 5 V
      current: 300 mA
wiring:
  camera:
    power: «video-transmitter 5V»
`,
  good: `
dryfit: build
name: Example
parts:
  camera:
    current: 250 mA
  video-transmitter:
    camera-supply:
      voltage: 5 V
      current: 300 mA
wiring:
  camera:
    power: video-transmitter 5V
`,
};
