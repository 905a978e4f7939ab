/** The craft from above, to scale: one unit of the drawing is one millimetre. Places labels; decides no geometry. */
import type { Box, FitView, HolePattern, Round } from '../view/fit-view';
import { linkedTo, type Picture } from './picture';
import { el, type Markup, short } from './svg';

interface Label {
  readonly words: string;
  readonly x: number;
  readonly y: number;
  readonly spot: string | undefined;
  readonly clashes: boolean;
}

const mm = (value: number): string => `${value.toFixed(1)} mm`;

export const planDrawing = (view: FitView, linked: boolean): Picture | undefined =>
  drawing(view, linked, 'plan', 'The craft from above, to scale');

/** The boards and their hole patterns alone, larger. */
export function stackDrawing(view: FitView, linked: boolean): Picture | undefined {
  const boards = new Set(['flight-controller', 'esc', 'all-in-one', 'stack', 'frame-bay']);
  const patterns = new Set(['flight-controller', 'esc', 'all-in-one', 'frame-stack-mounts']);
  const inside = {
    ...view,
    motors: [],
    gaps: [],
    wheelbase: undefined,
    boxes: view.boxes.filter(({ thing }) => boards.has(thing)),
    patterns: view.patterns.filter(({ thing }) => patterns.has(thing)),
    clashes: view.clashes.filter(({ things }) => things.some((thing) => boards.has(thing) || patterns.has(thing))),
  };
  return inside.patterns.length + inside.boxes.length < 2
    ? undefined
    : drawing(inside, linked, 'stack', 'The boards over one another, to scale');
}

function drawing(view: FitView, linked: boolean, id: string, title: string): Picture | undefined {
  const { motors, boxes } = view;
  if (motors.length + boxes.length + view.patterns.length === 0) return undefined;
  const radius = Math.max(view.propeller?.diameter ?? 0, view.duct?.diameter ?? 0, view.stator?.diameter ?? 0) / 2;
  const across = [
    ...motors.map(({ x }) => Math.abs(x) + radius),
    ...boxes.map(({ x, width }) => Math.abs(x) + (width ?? 0) / 2),
    ...view.patterns.map(({ width }) => width / 2 + 2),
  ];
  const along = [
    ...motors.map(({ y }) => Math.abs(y) + radius),
    ...boxes.map(({ y, length }) => Math.abs(y) + (length ?? 0) / 2),
    ...view.patterns.map(({ length }) => length / 2 + 2),
  ];
  const [halfWidth, halfLength] = [Math.max(...across), Math.max(...along)];
  // Letters are a thirty-sixth of the whole width, whatever the craft: it is drawn as wide as there is room.
  const em = (2 * halfWidth) / 30;
  const aside = distinctGaps(view).some((gap) => isAside(view, gap)) ? 5 * em : 1.5 * em;
  const [left, right] = [-halfWidth - aside, halfWidth + 4.5 * em];
  const top = -halfLength - 3.2 * em;
  const clashing = new Set(view.clashes.flatMap(({ things }) => things));
  const labels = labelsOf(view, clashing);
  const floor = halfLength + 4.8 * em;
  const rows = keyRows(labels, view);
  const bottom = floor + (rows.length + 0.6) * 1.55 * em;
  const width = right - left;
  const body = [
    view.gaps.some(({ gap }) => gap < 0) ? el('defs', {}, hatch(em)) : undefined,
    centreLines(halfWidth, halfLength),
    ...armsOf(view, clashing),
    ...motors.map(({ x, y, where }) => motorMarks(view, x, y, where, clashing, linked)),
    ...boxes.map((box) => boxMark(box, clashing, linked)),
    ...view.patterns.map((pattern) => patternMarks(pattern, clashing, linked)),
    ...overlaps(view),
    ...gapMarks(view, radius, em),
    axesMarks(view, radius, em),
    ...balloons(labels, halfWidth, halfLength, em, linked),
    ...clashLetters(view, halfLength, left, em),
    furniture(left, top, halfLength, em),
    ...rows.map(({ sign, words, bad }, i) =>
      el(
        'g',
        { class: bad ? 'bad-text' : undefined },
        balloon(sign, left + em, floor + (i + 1) * 1.55 * em - 0.35 * em, em * 0.88, bad),
        el('text', { x: left + 2.3 * em, y: floor + (i + 1) * 1.55 * em }, words),
      ),
    ),
  ];
  return {
    id,
    kind: 'plan',
    title,
    description: describe(view),
    box: [left, top, width, bottom - top],
    em,
    unit: 'mm',
    linked,
    body,
  };
}

function describe(view: FitView): string {
  const parts = [
    view.wheelbase?.words,
    view.propeller && `${view.motors.length} propellers of ${mm(view.propeller.diameter)}`,
    ...distinctGaps(view).map(({ gap }) => (gap < 0 ? `neighbours overlap by ${mm(-gap)}` : `${mm(gap)} between tips`)),
    ...view.boxes.map(({ words }) => words),
    ...view.clashes.map(({ title }) => `clash: ${title}`),
  ];
  return `${parts.filter(Boolean).join('; ')}.`;
}

const hatch = (em: number): Markup =>
  el(
    'pattern',
    {
      id: 'clash-hatch',
      width: em / 2,
      height: em / 2,
      patternUnits: 'userSpaceOnUse',
      patternTransform: 'rotate(45)',
    },
    el('line', { class: 'hatch', x1: 0, y1: 0, x2: 0, y2: em / 2 }),
  );

const centreLines = (halfWidth: number, halfLength: number): Markup =>
  el('path', {
    class: 'centre',
    d: `M${short(-halfWidth)} 0H${short(halfWidth)}M0 ${short(-halfLength)}V${short(halfLength)}`,
  });

/** Outlines first, then what is inside them, so that arms that meet are one piece. */
function armsOf({ motors, armWidth, wheelbase }: FitView, clashing: ReadonlySet<string>): readonly Markup[] {
  const kind = `arm${armWidth === undefined ? ' unsaid' : ''}${clashing.has('frame-arm') ? ' clash' : ''}`;
  const shapes = motors.map(({ x, y }) => {
    const length = Math.hypot(x, y) || 1;
    const half = (armWidth ?? length / 12) / 2;
    const [nx, ny] = [(-y / length) * half, (x / length) * half];
    const corners = [
      [nx, ny],
      [x + nx, y + ny],
      [x - nx, y - ny],
      [-nx, -ny],
    ] as const;
    return corners.map(([px, py]) => `${short(px)},${short(-py)}`).join(' ');
  });
  const arms = [
    ...shapes.map((points) => el('polygon', { class: kind, points })),
    ...shapes.map((points) => el('polygon', { class: 'arm-inside', points })),
  ];
  const first = motors[0];
  const opposite = first && motors.find(({ x, y }) => Math.hypot(x + first.x, y + first.y) < 1);
  if (!wheelbase || !first || !opposite) return arms;
  return [
    ...arms,
    el('line', {
      class: 'diagonal',
      'data-wheelbase-mm': wheelbase.diameter,
      x1: first.x,
      y1: -first.y,
      x2: opposite.x,
      y2: -opposite.y,
    }),
  ];
}

function motorMarks(
  view: FitView,
  x: number,
  y: number,
  where: string,
  clashing: ReadonlySet<string>,
  linked: boolean,
): Markup {
  const ring = (round: Round | undefined, kind: string, thing: string): Markup | undefined =>
    round &&
    el(
      'g',
      linkedTo(round.spot, `${round.words}, ${where}`, linked),
      el('circle', { class: `${kind}${clashing.has(thing) ? ' clash' : ''}`, cx: x, cy: -y, r: round.diameter / 2 }),
    );
  return el(
    'g',
    { class: 'rotor', 'data-where': where },
    ring(view.duct, 'duct', ''),
    ring(view.propeller, 'propeller', 'propellers'),
    ring(view.stator, 'motor', 'motors'),
    el('circle', { class: 'axis', cx: x, cy: -y, r: 0.6 }),
  );
}

function boxMark(
  { thing, words, length, width, x, y, place, spot }: Box,
  clashing: ReadonlySet<string>,
  linked: boolean,
): Markup {
  const kind = `box ${thing}${place === 'usual' ? ' unsaid' : ''}${clashing.has(thing) ? ' clash' : ''}`;
  const shape =
    length === undefined || width === undefined
      ? el('path', { class: kind, d: `M${short(x - 4)} ${short(-y)}h8M${short(x)} ${short(-y - 4)}v8` })
      : el('rect', { class: kind, x: x - width / 2, y: -y - length / 2, width, height: length });
  return el('g', linkedTo(spot, words, linked), shape);
}

function patternMarks(
  { thing, words, length, width, hole, spot }: HolePattern,
  clashing: ReadonlySet<string>,
  linked: boolean,
): Markup {
  const corners = [-1, 1].flatMap((i) => [-1, 1].map((k) => [(i * width) / 2, (k * length) / 2] as const));
  return el(
    'g',
    { class: `holes ${thing}${clashing.has(thing) ? ' clash' : ''}`, ...linkedTo(spot, words, linked) },
    el('rect', { class: 'pattern', x: -width / 2, y: -length / 2, width, height: length }),
    ...corners.map(([cx, cy]) => el('circle', { cx, cy, r: hole / 2 })),
  );
}

/** Where two discs lie over one another: the lens between them. */
function overlaps(view: FitView): readonly Markup[] {
  const r = (view.propeller?.diameter ?? 0) / 2;
  return view.gaps.flatMap(({ a, b, axes, gap }) => {
    if (gap >= 0 || axes <= 0) return [];
    const [p, q] = [view.motors[a]!, view.motors[b]!];
    const half = Math.sqrt(Math.max(0, r * r - (axes / 2) ** 2));
    const [mx, my] = [(p.x + q.x) / 2, (p.y + q.y) / 2];
    const [nx, ny] = [(-(q.y - p.y) / axes) * half, ((q.x - p.x) / axes) * half];
    const arc = (x: number, y: number): string => `A${short(r)} ${short(r)} 0 0 1 ${short(x)} ${short(-y)}`;
    return [
      el('path', {
        class: 'overlap',
        'data-overlap-mm': -gap,
        d: `M${short(mx + nx)} ${short(-(my + ny))}${arc(mx - nx, my - ny)}${arc(mx + nx, my + ny)}Z`,
      }),
    ];
  });
}

type Gap = FitView['gaps'][number];

/** One of each size: a square has four gaps and one number. */
function distinctGaps({ gaps, motors }: FitView): readonly Gap[] {
  const outward = ({ a, b }: Gap): number => motors[a]!.y + motors[b]!.y;
  const sorted = [...gaps].sort((one, other) => outward(other) - outward(one));
  return sorted.filter((gap, i) => sorted.findIndex((other) => Math.abs(other.gap - gap.gap) < 0.05) === i);
}

/** Its label stands left or right of the craft, not before or behind it. */
function isAside({ motors }: FitView, { a, b }: Gap): boolean {
  const [p, q] = [motors[a]!, motors[b]!];
  return Math.abs(p.x + q.x) > Math.abs(p.y + q.y);
}

function gapMarks(view: FitView, radius: number, em: number): readonly Markup[] {
  const r = (view.propeller?.diameter ?? 0) / 2;
  const named = new Set(distinctGaps(view));
  return view.gaps.map((gap) => {
    const [p, q] = [view.motors[gap.a]!, view.motors[gap.b]!];
    const [ux, uy] = [(q.x - p.x) / gap.axes, (q.y - p.y) / gap.axes];
    const line = el('line', {
      class: gap.gap < 0 ? 'gap clash' : 'gap',
      'data-gap-mm': gap.gap,
      x1: p.x + ux * r,
      y1: -(p.y + uy * r),
      x2: q.x - ux * r,
      y2: -(q.y - uy * r),
    });
    if (!named.has(gap)) return el('g', {}, line);
    const [mx, my] = [(p.x + q.x) / 2, (p.y + q.y) / 2];
    const out = Math.hypot(mx, my) || 1;
    const away = radius + 0.5 * em;
    const [lx, ly] = [mx + (mx / out) * away, my + (my / out) * away];
    const words = gap.gap < 0 ? `overlap ${mm(-gap.gap)}` : `gap ${mm(gap.gap)}`;
    return el(
      'g',
      {},
      line,
      el('line', {
        class: 'leader',
        x1: mx,
        y1: -my,
        x2: lx - (mx / out) * em * 0.9,
        y2: -(ly - (my / out) * em * 0.9),
      }),
      el(
        'text',
        { class: gap.gap < 0 ? 'bad-text strong' : 'strong', x: lx, y: -ly + em * 0.35, 'text-anchor': 'middle' },
        words,
      ),
    );
  });
}

/** Distance between the axes of the rearmost pair, dimensioned below. */
function axesMarks(view: FitView, radius: number, em: number): Markup | undefined {
  const rear = view.gaps
    .filter(({ a, b }) => Math.abs(view.motors[a]!.y - view.motors[b]!.y) < 0.1)
    .sort((one, other) => view.motors[one.a]!.y - view.motors[other.a]!.y)[0];
  if (!rear) return undefined;
  const [p, q] = [view.motors[rear.a]!, view.motors[rear.b]!];
  const [x1, x2] = [Math.min(p.x, q.x), Math.max(p.x, q.x)];
  const y = -p.y + radius + 1.4 * em;
  const tip = em * 0.5;
  return el(
    'g',
    { class: 'dimension', 'data-axes-mm': rear.axes },
    el('path', {
      d: `M${short(x1)} ${short(-p.y)}V${short(y + tip)}M${short(x2)} ${short(-p.y)}V${short(y + tip)}M${short(x1)} ${short(y)}H${short(x2)}`,
    }),
    el('path', {
      d: `M${short(x1 + tip)} ${short(y - tip / 2)}L${short(x1)} ${short(y)}L${short(x1 + tip)} ${short(y + tip / 2)}M${short(x2 - tip)} ${short(y - tip / 2)}L${short(x2)} ${short(y)}L${short(x2 - tip)} ${short(y + tip / 2)}`,
    }),
    el('text', { x: (x1 + x2) / 2, y: y - em * 0.4, 'text-anchor': 'middle' }, `${mm(rear.axes)} between axes`),
  );
}

function labelsOf(view: FitView, clashing: ReadonlySet<string>): readonly Label[] {
  const labels: Label[] = [];
  const add = (words: string, x: number, y: number, spot: string | undefined, thing: string): void => {
    labels.push({ words, x, y: -y, spot, clashes: clashing.has(thing) });
  };
  const fore = [...view.motors].sort((a, b) => b.y + b.x - (a.y + a.x))[0];
  const aft = [...view.motors].sort((a, b) => a.y - a.x - (b.y - b.x))[0];
  if (fore) {
    const { x, y } = fore;
    const on = (round: Round | undefined, angle: number, thing: string, more = ''): void => {
      if (round)
        add(
          `${round.words}${more}`,
          x + Math.cos(angle) * (round.diameter / 2),
          y + Math.sin(angle) * (round.diameter / 2),
          round.spot,
          thing,
        );
    };
    on(view.propeller, 0.9, 'propellers', `, disc ${view.propeller ? mm(view.propeller.diameter) : ''}`);
    on(view.duct, 0.3, '');
    on(view.stator, 0, 'motors');
  }
  if (aft && view.wheelbase)
    add(
      `${view.wheelbase.words}${view.assumed ? ', a true X taken' : ''}`,
      aft.x * 0.72,
      aft.y * 0.72,
      view.wheelbase.spot,
      'frame',
    );
  for (const [i, box] of view.boxes.entries()) {
    const { words, x, y, width, length, spot, thing, place } = box;
    const high = (length ?? 0) / 2;
    // Boxes lie over one another in the middle: each is pointed at on another height of its edge.
    const at = thing === 'camera' ? 0 : high * (0.82 - (1.64 * (i + 1)) / (view.boxes.length + 1));
    add(`${words}${place === 'usual' ? ' (place not said)' : ''}`, x + (width ?? 0) / 2, y + at, spot, thing);
  }
  for (const [i, pattern] of view.patterns.entries())
    add(
      `${pattern.words}`,
      pattern.width / 2,
      (i % 2 === 0 ? -1 : 1) * (pattern.length / 2),
      pattern.spot,
      pattern.thing,
    );
  return labels.sort((a, b) => a.y - b.y);
}

/** Numbers in a column beside the drawing, from top to bottom, none over another. */
function balloons(
  labels: readonly Label[],
  halfWidth: number,
  halfLength: number,
  em: number,
  linked: boolean,
): readonly Markup[] {
  const step = Math.min(2.1 * em, (2 * halfLength + 3 * em) / Math.max(1, labels.length));
  const x = halfWidth + 3 * em;
  const low = halfLength + 2 * em;
  const ys: number[] = [];
  for (const label of labels) ys.push(Math.max(label.y, (ys.at(-1) ?? -halfLength - 2 * em) + step));
  // What was pushed over the end goes back up.
  for (let i = ys.length - 1; i >= 0; i--) ys[i] = Math.min(ys[i]!, i === ys.length - 1 ? low : ys[i + 1]! - step);
  return labels.map((label, i) =>
    el(
      'g',
      linkedTo(label.spot, `${i + 1} ${label.words}`, linked),
      el('line', { class: 'leader', x1: label.x, y1: label.y, x2: x - 0.8 * em, y2: ys[i]! }),
      el('circle', { class: 'point', cx: label.x, cy: label.y, r: em * 0.14 }),
      balloon(String(i + 1), x, ys[i]!, em, label.clashes),
    ),
  );
}

const balloon = (sign: string, x: number, y: number, em: number, bad: boolean): Markup =>
  el(
    'g',
    { class: bad ? 'balloon bad' : 'balloon' },
    el('circle', { cx: x, cy: y, r: em * 0.8 }),
    el('text', { x, y: y + em * 0.3, 'text-anchor': 'middle', 'font-size': em * 0.85 }, sign),
  );

const letterOf = (i: number): string => String.fromCharCode(65 + (i % 26));

/** Clashes are lettered down the left side, each with a line to what it is about. */
function clashLetters(view: FitView, halfLength: number, left: number, em: number): readonly Markup[] {
  return view.clashes.slice(0, mostClashes).map(({ things }, i) => {
    const [x, y] = [left + em, -halfLength + 1.5 * em + i * 2.1 * em];
    const at = things.map((thing) => leftOf(view, thing)).find((point) => point !== undefined);
    return el(
      'g',
      { 'data-clash': letterOf(i) },
      at && el('line', { class: 'leader bad', x1: at[0], y1: -at[1], x2: x + 0.8 * em, y2: y }),
      balloon(letterOf(i), x, y, em, true),
    );
  });
}

/** A point of a thing that can be seen from the left. */
function leftOf(view: FitView, thing: string): readonly [number, number] | undefined {
  const motor = [...view.motors].sort((a, b) => b.y - b.x - (a.y - a.x))[0];
  if (motor) {
    if (thing === 'frame-arm') return [motor.x * 0.6, motor.y * 0.6];
    if (thing === 'motors') return [motor.x - (view.stator?.diameter ?? 0) / 2, motor.y];
    if (thing === 'propellers')
      return [motor.x - (view.propeller?.diameter ?? 0) * 0.4, motor.y - (view.propeller?.diameter ?? 0) * 0.3];
  }
  const box = view.boxes.find((one) => one.thing === thing);
  if (box) return [box.x - (box.width ?? 0) / 2, box.y];
  const pattern = view.patterns.find((one) => one.thing === thing);
  return pattern && [-pattern.width / 2, pattern.length / 2];
}

const mostClashes = 12;

interface KeyRow {
  readonly sign: string;
  readonly words: string;
  readonly bad: boolean;
}

const keyRows = (labels: readonly Label[], view: FitView): readonly KeyRow[] => [
  ...labels.map(({ words, clashes }, i) => ({ sign: String(i + 1), words: cut(words), bad: clashes })),
  ...view.clashes
    .slice(0, mostClashes)
    .map(({ title }, i) => ({ sign: letterOf(i), words: cut(`Clash: ${title}`), bad: true })),
];

const cut = (words: string): string => (words.length > 62 ? `${words.slice(0, 60)}…` : words);

/** The way ahead, and a bar to measure by. */
function furniture(left: number, top: number, halfLength: number, em: number): Markup {
  const bar = [200, 100, 50, 20, 10].find((length) => length <= halfLength) ?? 10;
  const [x, y] = [left + em * 0.4, halfLength + 3.4 * em];
  const half = em * 0.28;
  return el(
    'g',
    { class: 'furniture' },
    el('path', {
      class: 'ahead',
      d: `M${short(left + em)} ${short(top + 2.6 * em)}v${short(-1.9 * em)}m${short(-0.5 * em)} ${short(0.7 * em)}l${short(0.5 * em)} ${short(-0.7 * em)}l${short(0.5 * em)} ${short(0.7 * em)}`,
    }),
    el('text', { x: left + 1.9 * em, y: top + 1.6 * em }, 'forward'),
    ...[0, 1, 2, 3].map((i) =>
      el('rect', {
        class: i % 2 === 0 ? 'bar full' : 'bar',
        x: x + (bar / 4) * i,
        y: y - half,
        width: bar / 4,
        height: 2 * half,
      }),
    ),
    el('text', { x: x + bar + em * 0.5, y: y + em * 0.35, 'data-scale-bar-mm': bar }, `${bar} mm`),
  );
}
