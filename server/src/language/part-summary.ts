/** A part's plain values at a glance, in the order of its fields. Plain text: a face that shows Markdown escapes it. */
import { fieldsAt, kidOf, type Slot } from '../build/slot';
import { splitOrigin } from '../text/origin';

/** What says nothing about the part itself. */
const passed = new Set(['use', 'kind', 'name', 'note', 'source', 'seen', 'supplied', 'from', 'spares', 'owned']);

/** @param slots of one part, the one that outweighs the others first */
export function partSummary(slots: readonly Slot[], most = 9): readonly string[] {
  const fields = slots.flatMap((slot) => Object.keys(fieldsAt(slot.field, slot.node)?.fields ?? {}));
  return [...new Set(fields)]
    .flatMap((key) => {
      const node = slots.map((slot) => kidOf(slot, key)?.node).find((one) => one?.is === 'scalar');
      return node?.is === 'scalar' && !passed.has(key)
        ? [`${key.replaceAll('-', ' ')} ${splitOrigin(node.text).said}`]
        : [];
    })
    .slice(0, most);
}
