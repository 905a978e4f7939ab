/** The stack of boards in the middle: how tall it stands and which screws hold it. Judges nothing. */
import type { Craft } from '../build/craft';
import type { Fact, Pointable } from '../build/fact';
import type { Screw } from '../text/notation/screw';

/** m between two boards on common screws, for the plugs and the cable. Common practice. */
const between = 3e-3;

export function stackHeight(craft: Craft): (Pointable & { readonly value: number }) | undefined {
  const { stack, 'all-in-one': board, esc, 'flight-controller': controller } = craft.roles;
  if (stack?.height) return stack.height;
  if (board) {
    const height = board.outside?.value.height;
    return height === undefined || !board.outside ? undefined : { ...board.outside, value: height };
  }
  const top = controller?.outside?.value.height;
  if (top === undefined || !controller?.outside) return undefined;
  if (esc?.type?.value === 'single') return { ...controller.outside, value: top };
  const low = esc?.outside?.value.height;
  return low === undefined ? undefined : { ...controller.outside, value: low + between + top };
}

/** A fastener meant for the stack, else what comes with the frame. */
export function stackScrew(craft: Craft): Fact<Screw> | undefined {
  const bought = [...(craft.roles.fasteners?.entries.values() ?? [])].find(
    (one) => one.for?.value === 'stack' && one.screw,
  );
  return bought?.screw ?? craft.roles.frame?.['stack-screws'];
}
