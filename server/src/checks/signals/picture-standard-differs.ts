/** The overlay is fixed to another picture standard than the camera. */
import { check } from '../check';

export default check({
  id: 'picture-standard-differs',
  group: 'signals',
  title: 'Overlay and camera differ in standard',
  severity: 'warning',
  needs: { overlay: 'setup.osd-standard', camera: 'camera.standard' },
  when: (craft) => (craft.roles.camera?.system?.value ?? 'analog') === 'analog',
  judge({ overlay, camera }) {
    if (overlay.value === 'AUTO' || camera.value === 'switchable' || overlay.value === camera.value) return undefined;
    return {
      at: overlay,
      with: [{ fact: camera, says: `the camera is ${camera.value}` }],
      message: `The overlay is set to ${overlay.value}, the camera is ${camera.value}: figures roll or the last rows are lost. Set AUTO or ${camera.value}.`,
      fixes: [{ title: 'Set AUTO', edits: [{ file: overlay.at.file, span: overlay.at.span, text: 'AUTO' }] }],
    };
  },
});

export const explanation = {
  why: 'An overlay of the other standard rolls, or loses its last rows (16 rows in PAL, 13 in NTSC).',
  remedy: 'Set the overlay to AUTO, or to the standard of the camera.',
  source: 'overlay documentation of widely used open flight firmware',
  bad: `
dryfit: build
name: Example
parts:
  camera:
    standard: PAL
setup:
  osd-standard: «NTSC»
`,
  good: `
dryfit: build
name: Example
parts:
  camera:
    standard: PAL
setup:
  osd-standard: PAL
`,
};
