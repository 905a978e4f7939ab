/** Two wiring pictures: serial ports with their devices, and the cable between ESC and flight controller. Lays out; decides no wire. */
import type { HarnessView, PortRow, PortView } from '../view/wires-view';
import { cut, wrapWords } from './bars';
import { linkedTo, type Picture } from './picture';
import { el, type Markup } from './svg';

const width = 420;
const em = 11.5;

export function portsPicture({ ports, left }: PortView, linked: boolean): Picture | undefined {
  if (ports.length === 0) return undefined;
  const row = 42;
  const body: Markup[] = [
    el('rect', { class: 'board', x: 4, y: 22, width: 112, height: ports.length * row + 4 }),
    el('text', { class: 'strong', x: 4, y: 14 }, 'flight controller'),
  ];
  for (const [i, port] of ports.entries()) body.push(portMark(port, 26 + i * row, linked));
  const floor = 34 + ports.length * row;
  for (const [i, words] of left.entries())
    body.push(
      el('text', { class: 'bad-text strong', x: 4, y: floor + 10 + i * 16 }, cut(`No port is left for ${words}`, 62)),
    );
  const solid = ports.some(({ state, said }) => state === 'taken' && said);
  const dashed = ports.some(({ state, said }) => state === 'taken' && !said);
  const legend = [solid && 'solid: as the file says', dashed && 'dashed: worked out'].filter(Boolean).join('; ');
  const end = floor + left.length * 16 + (legend ? 16 : 0);
  if (legend) body.push(el('text', { class: 'q', x: 4, y: end - 4 }, legend));
  return {
    id: 'ports',
    kind: 'wires',
    title: 'Serial ports and their devices',
    description: `${ports.map(({ name, words }) => `${name}: ${words}`).join('; ')}.${left.map((words) => ` No port is left for ${words}.`).join('')}`,
    box: [0, 0, width, end + 4],
    em,
    unit: 'px',
    linked,
    body,
  };
}

function portMark(port: PortRow, top: number, linked: boolean): Markup {
  const pad = (x: number, y: number, words: string, kind: string): Markup =>
    el(
      'g',
      {},
      el('rect', { class: kind, x, y, width: 26, height: 14 }),
      el('text', { x: x + 13, y: y + 11, 'text-anchor': 'middle', 'font-size': 9.5 }, words),
    );
  const pads = [
    { is: 'TX', there: port.tx, used: port.usesTx, y: top + 2 },
    { is: 'RX', there: port.rx, used: port.usesRx, y: top + 20 },
  ];
  const far: Readonly<Record<string, string>> = { TX: 'RX', RX: 'TX' };
  return el(
    'g',
    {},
    el(
      'g',
      // Its name for a screen reader begins with the words that are seen.
      linkedTo(port.spot, `${port.name} ${port.words}`, linked),
      el('text', { x: 10, y: top + 22 }, port.name),
      ...portWords(port, top).flatMap((line) => [' ', line]),
    ),
    ...pads.flatMap(({ is, there, used, y }) => [
      there ? pad(86, y, is, used ? 'pad taken' : 'pad') : undefined,
      used
        ? el('line', { class: port.said ? 'wire' : 'wire worked', x1: 112, y1: y + 7, x2: 200, y2: y + 7 })
        : undefined,
      used ? pad(200, y, far[is]!, 'pad taken') : undefined,
    ]),
  );
}

function portWords({ state, words }: PortRow, top: number): readonly Markup[] {
  const taken = state === 'taken';
  const lines = wrapWords(words.split(' '), taken ? 30 : 48, '').slice(0, 2);
  return lines.map((line, i) =>
    el(
      'text',
      { class: taken ? undefined : 'q', x: taken ? 234 : 126, y: top + 22 + (i - (lines.length - 1) / 2) * 15 },
      line,
    ),
  );
}

export function harnessPicture(view: HarnessView, linked: boolean): Picture | undefined {
  const { esc, controller, wires, moved } = view;
  if (esc.length === 0 || controller.length === 0) return undefined;
  const row = 23;
  const most = Math.max(...esc.map(({ number }) => number), ...controller.map(({ number }) => number));
  const yOf = (number: number): number => 38 + (number - 1) * row;
  const [near, far] = [94, width - 126];
  const side = (contacts: HarnessView['esc'], x: number, isEsc: boolean): readonly Markup[] =>
    contacts.map(({ number, role, spot }) =>
      el(
        'g',
        linkedTo(spot, `${number} ${role}, contact of the ${isEsc ? 'ESC' : 'flight controller'}`, linked),
        el('rect', { class: 'pad taken', x, y: yOf(number) - 9, width: 24, height: 18 }),
        el('text', { x: x + 12, y: yOf(number) + 4, 'text-anchor': 'middle' }, String(number)),
        ' ',
        el('text', { x: isEsc ? x - 6 : x + 30, y: yOf(number) + 4, 'text-anchor': isEsc ? 'end' : 'start' }, role),
      ),
    );
  const path = (from: number, to: number): string =>
    `M${near} ${yOf(from)}C${near + 70} ${yOf(from)} ${far - 70} ${yOf(to)} ${far} ${yOf(to)}`;
  const repinned = new Set(moved.map(({ esc: contact }) => contact));
  const bottom = yOf(most) + 18;
  const wrong = wires.some(({ danger }) => danger > 0);
  const legend = [
    ['wire good', 'meets its like', wires.some(({ danger }) => danger === 0)],
    ['wire wrong', 'wrong as the cable is', wrong],
    ['wire moved', 're-pinned: move this wire in the plug', moved.length > 0],
  ] as const;
  const shownLegend = legend.filter(([, , there]) => there);
  const body: Markup[] = [
    el('text', { class: 'strong', x: near, y: 16, 'text-anchor': 'end' }, 'ESC'),
    el('text', { class: 'strong', x: far, y: 16 }, 'flight controller'),
    el('rect', { class: 'plug', x: near - 28, y: 24, width: 32, height: most * row + 4 }),
    el('rect', { class: 'plug', x: far - 4, y: 24, width: 32, height: most * row + 4 }),
    ...wires.map(({ esc: from, controller: to, danger }) =>
      el(
        'g',
        { ...linkedTo(view.spot, `wire from contact ${from} to contact ${to}`, linked), 'data-wire': `${from}-${to}` },
        el('path', { class: danger === 0 ? 'wire good' : 'wire wrong', d: path(from, to) }),
      ),
    ),
    ...moved.map(({ esc: from, controller: to, role }) =>
      el(
        'g',
        {
          ...linkedTo(view.spot, `re-pinned: ${role} from contact ${from} to hole ${to}`, linked),
          'data-moved': `${from}-${to}`,
        },
        el('path', { class: 'wire moved', d: path(from, to) }),
      ),
    ),
    ...side(esc, near - 24, true),
    ...side(controller, far, false),
    ...moved.map(({ controller: to }) =>
      el('text', { class: 'strong', x: width - 2, y: yOf(to) + 4, 'text-anchor': 'end' }, 're-pin'),
    ),
    ...shownLegend.map(([kind, words], i) =>
      el(
        'g',
        {},
        el('path', { class: kind, d: `M4 ${bottom + 8 + i * 17}h26` }),
        el('text', { x: 36, y: bottom + 12 + i * 17 }, words),
      ),
    ),
  ];
  const pairs = wires.map(
    ({ esc: from, controller: to, danger }) =>
      `${from} to ${to}${danger > 0 ? ' wrong' : ''}${repinned.has(from) ? ', re-pinned' : ''}`,
  );
  return {
    id: 'harness',
    kind: 'wires',
    title: 'The cable between ESC and flight controller',
    description: `Cable ${view.report.cable}. ${view.report.verdict} Wires: ${pairs.join('; ')}.`,
    box: [0, 0, width, bottom + 4 + shownLegend.length * 17],
    em,
    unit: 'px',
    linked,
    body,
  };
}
