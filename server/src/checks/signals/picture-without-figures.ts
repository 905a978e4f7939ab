/** Nothing writes figures into the analog picture. */
import { check } from '../check';

export default check({
  id: 'picture-without-figures',
  group: 'signals',
  title: 'No figures in the picture',
  severity: 'warning',
  needs: { system: 'camera.system', osd: 'flight-controller.osd' },
  may: { video: 'video-transmitter.osd', camera: 'camera.overlay' },
  judge({ system, osd, video, camera }) {
    if (system.value !== 'analog' || osd.value !== 'none' || video?.value || camera?.value) return undefined;
    return {
      at: osd,
      with: [{ fact: system, says: 'the picture is analog' }],
      message:
        'Nothing on this craft writes figures into the analog picture: no battery voltage, no time. Take a flight controller with an overlay chip, or a transmitter that has one.',
    };
  },
});

export const explanation = {
  why: 'Without battery voltage in the picture packs are flown too empty.',
  remedy: 'Take a flight controller or a video transmitter that writes figures into the picture.',
  source: 'common practice',
  bad: `
dryfit: build
name: Example
parts:
  camera:
    system: analog
  flight-controller:
    osd: «none»
`,
  good: `
dryfit: build
name: Example
parts:
  camera:
    system: analog
  flight-controller:
    osd: none
  video-transmitter:
    osd: yes
`,
};
