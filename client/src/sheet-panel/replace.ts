/** Brings an element to new markup by changing only what differs, so that focus, scroll, open tables and a slider under the finger stay. */

export function replaceDiffering(into: Element, markup: string): void {
  const template = document.createElement('template');
  template.innerHTML = markup;
  bring(into, template.content);
}

function bring(old: Element, wanted: Element | DocumentFragment): void {
  const [have, want] = [[...old.childNodes], [...wanted.childNodes]];
  for (let i = 0; i < Math.max(have.length, want.length); i++) {
    const [here, next] = [have[i], want[i]];
    if (!next) here!.remove();
    else if (!here) old.append(next);
    else if (here.isEqualNode(next)) continue;
    else if (!(here instanceof Element) || !(next instanceof Element) || !isSame(here, next)) {
      if (here.nodeType !== next.nodeType || here.nodeValue !== next.nodeValue || here instanceof Element)
        here.replaceWith(next);
    } else {
      take(here, next);
      bring(here, next);
    }
  }
}

/** Worth going into: the same kind of thing, which keeps its state. A table has none, and is put in place whole much faster. */
const isSame = (here: Element, next: Element): boolean =>
  here.tagName === next.tagName && here.id === next.id && here.tagName !== 'TABLE';

function take(here: Element, next: Element): void {
  for (const { name } of [...here.attributes])
    if (!next.hasAttribute(name) && !isState(here, name)) here.removeAttribute(name);
  for (const { name, value } of next.attributes) if (here.getAttribute(name) !== value) here.setAttribute(name, value);
  // Where the finger is, the slider is ahead of the answer.
  if (here instanceof HTMLInputElement && next instanceof HTMLInputElement && document.activeElement !== here)
    here.value = next.value;
}

/** What the reader did to it, not what it says. */
const isState = (element: Element, name: string): boolean => name === 'open' && element.tagName === 'DETAILS';
