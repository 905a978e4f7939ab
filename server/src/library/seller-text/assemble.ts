/** Puts together what pages name piece by piece: a size from its lengths, a hole pattern and its screw. Reads no page. */
import { readers } from '../../text/notation';
import { readQuantity } from '../../text/quantity';
import type { Field } from '../../vocabulary/field';
import type { Proposal } from './propose';

type Piece = 'length' | 'count' | 'thread';

export const pieceFields: Readonly<Record<Piece, Field>> = {
  length: { is: 'quantity', about: { description: '' }, dimension: 'length' },
  count: { is: 'notation', about: { description: '' }, notation: 'count' },
  thread: { is: 'notation', about: { description: '' }, notation: 'thread' },
};

/** The screw of a hole pattern, when it is named by itself. */
const screw = '~screw';

export const piecesOf = (kind: string): readonly (readonly [key: string, is: Piece])[] => [
  ...(pieces[kind] ?? []),
  ...(holed.has(kind) ? [[screw, 'thread'] as const] : []),
];

const holed: ReadonlySet<string> = new Set(['motor', 'esc', 'flight-controller', 'video-transmitter']);

/** Halves of one field that pages name apart, by kind; put together by `assemble`. */
const pieces: Readonly<Record<string, readonly (readonly [key: string, dimension: 'length' | 'count'])[]>> = {
  propeller: [
    ['~diameter', 'length'],
    ['~pitch', 'length'],
    ['~blades', 'count'],
  ],
  capacitor: [
    ['~diameter', 'length'],
    ['~height', 'length'],
  ],
  motor: [
    ['~stator-diameter', 'length'],
    ['~stator-height', 'length'],
  ],
};

/** What was named piece by piece makes one field when all of it is there. */
export function assemble(kind: string, prefix: string, found: Map<string, Proposal>): void {
  if (kind === 'capacitor') roundOff(`${prefix}outside`, found);
  if (kind === 'camera') widthOf(prefix, found);
  if (holed.has(kind)) withScrew(prefix, found);
  const all = (pieces[kind] ?? []).map(([key]) => found.get(prefix + key));
  for (const [key] of pieces[kind] ?? []) found.delete(prefix + key);
  const known = all.filter((one) => one !== undefined);
  if (all.length === 0 || known.length < all.length) return;
  const metres = (at: number): number => {
    const read = readQuantity(String(known[at]?.value), 'length');
    return read.ok ? read.value : Number.NaN;
  };
  const words = [...new Set(known.map((one) => one.words))].join(' / ');
  const put = (
    field: 'size' | 'stator' | 'outside',
    notation: 'propeller-size' | 'stator' | 'size',
    value: string,
  ): void => {
    const path = prefix + field;
    if (!found.has(path) && readers[notation](value).ok) found.set(path, { path, value, words });
  };
  if (kind === 'propeller') {
    const [diameter, pitch] = [0, 1].map((at) => Number((metres(at) / 0.0254).toFixed(2)));
    put('size', 'propeller-size', `${diameter}x${pitch}x${known[2]?.value}`);
  }
  if (kind === 'capacitor') {
    const [across, high] = [0, 1].map((at) => Number((metres(at) * 1000).toFixed(2)));
    if (across! < high!) put('outside', 'size', `${across}x${across}x${high} mm`);
  }
  if (kind === 'motor') {
    const [across, high] = [0, 1].map((at) => Number((metres(at) * 1000).toFixed(2)));
    const two = (digits: number | undefined): string => String(digits).replace(/^\d(?=\.|$)/, '0$&');
    put('stator', 'stator', `${two(across)}${two(high)}`);
  }
}

/** `16 x 16 mm` here and `Thread: M3` there are one pattern; two threads are two things. */
function withScrew(prefix: string, found: Map<string, Proposal>): void {
  const [mount, thread] = [found.get(`${prefix}mount`), found.get(prefix + screw)];
  found.delete(prefix + screw);
  if (!mount || !thread || thread.differs) return;
  const pattern = typeof mount.value === 'string' ? mount.value : Array.isArray(mount.value) ? mount.value[0] : '';
  const several = Array.isArray(mount.value) && mount.value.length > 1;
  if (several || !/^[\d.]+x[\d.]+$/.test(pattern ?? '')) return;
  const value = `${pattern} ${thread.value}`;
  found.set(`${prefix}mount`, {
    ...mount,
    value: Array.isArray(mount.value) ? [value] : value,
    words: `${mount.words} / ${thread.words}`,
  });
}

/** A camera that is as wide as it is high has that width, whichever side is named first. */
function widthOf(prefix: string, found: Map<string, Proposal>): void {
  const outside = found.get(`${prefix}outside`);
  const sides = typeof outside?.value === 'string' ? /^([\d.]+)x([\d.]+)(?:x[\d.]+)? mm$/.exec(outside.value) : null;
  if (!outside || !sides || sides[1] !== sides[2] || found.has(`${prefix}width`)) return;
  found.set(`${prefix}width`, { path: `${prefix}width`, value: `${sides[1]} mm`, words: outside.words });
}

/** A round can is told by how wide and how long it is. */
function roundOff(path: string, found: Map<string, Proposal>): void {
  const known = found.get(path);
  const two = typeof known?.value === 'string' ? /^([\d.]+)x([\d.]+) mm$/.exec(known.value) : null;
  if (!known || !two) return;
  const [across, long] = [two[1]!, two[2]!].sort((a, b) => Number(a) - Number(b));
  found.set(path, { ...known, value: `${across}x${across}x${long} mm` });
}
