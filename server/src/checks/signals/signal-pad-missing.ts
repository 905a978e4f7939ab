/** A device whose signal wire has no pad on the flight controller. */
import { check } from '../check';

export default check({
  id: 'signal-pad-missing',
  group: 'signals',
  title: 'No pad for the signal of a device',
  severity: 'warning',
  needs: { mcu: 'flight-controller.mcu' },
  may: {
    camera: 'flight-controller.camera-pads',
    led: 'flight-controller.led-pad',
    buzzer: 'flight-controller.buzzer-pads',
  },
  when: ({ roles }) => Boolean(roles.camera || roles.lights || roles.buzzer),
  judge({ camera, led, buzzer }, { roles, said }) {
    // An analog picture may go from camera to transmitter past the flight controller; then only the figures are lost.
    const picture =
      roles.camera?.system?.value === 'analog' &&
      roles['flight-controller']?.osd?.value !== 'none' &&
      said.parts?.camera;
    const wanted = [
      { there: picture, pad: camera, device: 'camera', words: 'pads for an analog camera' },
      { there: roles.lights, pad: led, device: 'lights', words: 'a pad for an LED strip' },
      {
        there: roles.buzzer && roles.buzzer['self-powered']?.value !== true,
        pad: buzzer,
        device: 'buzzer',
        words: 'pads for a buzzer',
      },
    ];
    return wanted.flatMap(({ there, pad, device, words }) =>
      there && pad?.value === false
        ? [
            {
              at: pad,
              apart: device,
              message: `The flight controller has no ${words.replace(/^an? /, '')}, and the build has ${device === 'lights' ? 'lights' : `a ${device}`}. Take a board with ${words}, or leave the ${device} out.`,
            },
          ]
        : [],
    );
  },
});

export const explanation = {
  why: 'A device without a pad for its signal wire cannot be used, and this shows when the iron is already hot.',
  remedy: 'Take a flight controller with the pad, or a device that does without it.',
  source: 'common practice',
  bad: `
dryfit: build
name: Example
parts:
  flight-controller:
    mcu: F722
    led-pad: «no»
  lights:
    leds: 4
`,
  good: `
dryfit: build
name: Example
parts:
  flight-controller:
    mcu: F722
    led-pad: yes
  lights:
    leds: 4
`,
};
