/** The propeller is larger than the frame's maker allows. */
import { exceeds, fallsShort } from '../beyond';
import { check } from '../check';
import { apart, inches, millimetres } from '../words';

/** m: propellers sold as 5 and 5.1 in fly on the same frames. Common practice. */
const leeway = 0.1 * 0.0254;
/** m: what is lost between inches and millimetres. */
const rounding = 0.2e-3;

export default check({
  id: 'propeller-too-large-for-frame',
  group: 'mechanical',
  title: 'Propeller larger than the frame is meant for',
  severity: 'error',
  danger: 'blades',
  needs: { size: 'propellers.size', limit: 'frame.largest-propeller' },
  may: { gap: 'worked.propeller-gap' },
  judge({ size, limit, gap }) {
    const over = size.value.diameter - limit.value;
    if (!exceeds(over, rounding)) return undefined;
    const name = size.value.diameter < 0.051 ? millimetres : inches;
    const [flown, most] = apart(name, size.value.diameter, limit.value);
    const little = !exceeds(over, leeway);
    const room =
      gap && gap.value.gap >= 0
        ? ` By the position of the motors ${millimetres(gap.value.gap)} remain between the tips.`
        : '';
    const roomy = gap !== undefined && !fallsShort(gap.value.gap, 5e-3) && !gap.value.assumed;
    return {
      at: size,
      with: [{ fact: limit, says: `the frame takes up to ${name(limit.value)}` }],
      severity: little || roomy ? 'warning' : 'error',
      danger: little || roomy ? undefined : 'blades',
      message: `Propellers of ${flown} on a frame that takes up to ${most}.${room} Use ${most} propellers, or measure the gap to body, battery and one another before the first flight.`,
    };
  },
});

export const explanation = {
  why: 'Propellers beyond the size of the frame strike one another, the body or the battery when the arms flex.',
  remedy: 'Take propellers of the size the frame is made for, or a larger frame.',
  source: "the frame maker's figure; common practice for the leeway of 0.1 in",
  bad: `
dryfit: build
name: Six inch on a five inch frame
parts:
  frame:
    largest-propeller: 5.1 in
  propellers:
    size: «6x4x3»
`,
  good: `
dryfit: build
name: At the limit
parts:
  frame:
    largest-propeller: 5.1 in
  propellers:
    size: 5.1x3.6x3
`,
};
