/** Runs inside the sheet's panel: puts sections in place, changing only what differs, and tells what was clicked. Draws nothing and knows no build. */
import type { FromPanel, Kept, Section, ToPanel } from '../sheet-messages.ts';
import { replaceDiffering } from './replace.ts';

declare function acquireVsCodeApi(): { postMessage(message: FromPanel): void; setState(kept: Kept): void };

const editor = acquireVsCodeApi();
const main = document.getElementById('sheet')!;
/** Ids of the sections in place. */
const known = new Set<string>();
let shown = '';
let lit: readonly string[] = [];

window.addEventListener('message', ({ data }: MessageEvent<ToPanel>) => {
  if (data.is === 'sheet') {
    if (data.uri !== shown) editor.setState({ uri: data.uri });
    shown = data.uri;
    show(data.ids, data.changed);
  } else if (data.is === 'lit') {
    lit = data.spots;
    light();
  } else {
    known.clear();
    const words = document.createElement('p');
    words.textContent = data.words;
    main.replaceChildren(words);
    editor.postMessage({ is: 'drawn', sections: [] });
  }
});

function show(ids: readonly string[], changed: readonly Section[]): void {
  const seen = seenFirst();
  const top = seen?.getBoundingClientRect().top ?? 0;
  if (known.size === 0) main.replaceChildren();
  for (const id of known)
    if (!ids.includes(id)) {
      document.getElementById(id)?.remove();
      known.delete(id);
    }
  const markup = new Map(changed.map((section) => [section.id, section.markup]));
  let before: Element | undefined;
  for (const id of ids) {
    const section = document.getElementById(id) ?? placed(id, before);
    before = section;
    known.add(id);
    const wanted = markup.get(id);
    if (wanted !== undefined) replaceDiffering(section, wanted);
  }
  // What is looked at stays where it is, whatever grew above it.
  if (seen?.isConnected) document.documentElement.scrollTop += seen.getBoundingClientRect().top - top;
  light();
  editor.postMessage({ is: 'drawn', sections: ids });
}

const seenFirst = (): Element | undefined =>
  [...main.children].find((section) => section.getBoundingClientRect().bottom > 0);

function placed(id: string, before: Element | undefined): Element {
  const section = document.createElement(id === 'head' ? 'header' : id === 'foot' ? 'footer' : 'section');
  section.id = id;
  if (before) before.after(section);
  else main.prepend(section);
  return section;
}

function light(): void {
  const wanted = new Set(lit);
  for (const element of document.querySelectorAll<HTMLElement | SVGElement>('[data-spot]'))
    element.classList.toggle('lit', wanted.has(element.dataset.spot ?? ''));
}

const hit = (event: Event, what: string): HTMLElement | SVGElement | null =>
  event.target instanceof Element ? event.target.closest<HTMLElement | SVGElement>(what) : null;

function go(event: Event): void {
  const spot = hit(event, '[data-spot]')?.dataset.spot;
  if (spot === undefined) return;
  event.preventDefault();
  editor.postMessage({ is: 'go', spot });
}

document.addEventListener('click', (event) => {
  const { write, forget } = hit(event, 'button')?.dataset ?? {};
  if (write !== undefined) editor.postMessage({ is: 'write', field: write });
  else if (forget !== undefined) editor.postMessage({ is: 'forget', field: forget });
  else go(event);
});

document.addEventListener('keydown', (event) => {
  if (event.key === 'Enter' || (event.key === ' ' && hit(event, '[data-spot]'))) go(event);
});

document.addEventListener('input', (event) => {
  const slider = event.target;
  if (!(slider instanceof HTMLInputElement) || slider.dataset.try === undefined) return;
  const text = `${slider.value}${slider.dataset.unit ? ` ${slider.dataset.unit}` : ''}`;
  slider.setAttribute('aria-valuetext', text);
  const output = document.getElementById(`${slider.id}-value`);
  if (output) output.textContent = text;
  editor.postMessage({ is: 'try', field: slider.dataset.try, value: Number(slider.value) });
});

editor.postMessage({ is: 'ready' });
