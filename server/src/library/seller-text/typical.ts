/** Values that parts of a size usually have, given only on request and marked `(estimate)`. Common practice; no page of a seller is behind them. */
import { fieldsOfKind, type Proposal, type Proposed } from './propose';
import { mayStandIn } from './unread';

type Usual = readonly [path: string, value: string];

const reason = 'usual for parts of this size';

/** @returns the proposal with what is usual for its size where the page said nothing, nor may have said it in a line that was not read */
export function withTypical(proposed: Proposed, order: readonly string[]): Proposed {
  const said = new Map(proposed.fields.map((one) => [one.path, one.value]));
  const more = usualOf(proposed.kind, (path) => String(said.get(path) ?? ''))
    .filter(([path]) => {
      const field = fieldsOfKind(proposed.kind)?.fields[path];
      return !said.has(path) && !(field && mayStandIn(proposed.kind, path, field, proposed.unread));
    })
    .map(([path, value]): Proposal => ({ path, value: `${value} (estimate)`, words: reason }));
  const at = (path: string): number => order.indexOf(path.split('.')[0]!);
  return { ...proposed, fields: [...proposed.fields, ...more].sort((a, b) => at(a.path) - at(b.path)) };
}

function usualOf(kind: string, said: (path: string) => string): readonly Usual[] {
  if (kind === 'motor') {
    const wide = Number(/^\d{2}/.exec(said('stator'))?.[0] ?? Number.NaN);
    if (wide >= 22 && wide <= 25)
      return [
        ['mount', '16x16 M3'],
        ['thread-depth', '4 mm'],
        ['shaft', 'M5'],
        ['shaft-length', '14 mm'],
        ['weight', '33 g'],
      ];
    if (wide >= 26 && wide <= 28)
      return [
        ['mount', '19x19 M3'],
        ['thread-depth', '4 mm'],
        ['shaft', 'M5'],
        ['shaft-length', '14 mm'],
        ['weight', '48 g'],
      ];
    if (wide >= 12 && wide <= 15)
      return [
        ['mount', '9x9 M2'],
        ['thread-depth', '2.5 mm'],
        ['shaft', 'T-mount 1.5 mm'],
        ['weight', '8 g'],
      ];
    return [];
  }
  if (kind === 'propeller') {
    const inches = Number(/^(\d+(?:\.\d+)?)x/.exec(said('size'))?.[1] ?? Number.NaN);
    if (inches >= 4.5 && inches <= 5.5)
      return [
        ['bore', '5 mm'],
        ['hub-thickness', '6.5 mm'],
        ['weight', '4.3 g'],
      ];
    if (inches > 5.5 && inches <= 7.5)
      return [
        ['bore', '5 mm'],
        ['hub-thickness', '7 mm'],
        ['weight', '7.5 g'],
      ];
    return [];
  }
  if (kind === 'frame') {
    const inches = Number(/^(\d+(?:\.\d+)?) in/.exec(said('largest-propeller'))?.[1] ?? Number.NaN);
    return inches >= 5 && inches <= 5.5
      ? [
          ['wheelbase', '225 mm'],
          ['arm-thickness', '5 mm'],
          ['stack-height', '25 mm'],
          ['weight', '120 g'],
        ]
      : [];
  }
  if (kind === 'battery') {
    const cells = Number(/^\d+/.exec(said('cells'))?.[0] ?? Number.NaN);
    const milliampHours = Number(/^(\d+) mAh/.exec(said('capacity'))?.[1] ?? Number.NaN);
    // About 165 Wh/kg with plug and wires, the middle of packs of this trade.
    return cells * milliampHours > 3000 ? [['weight', `${Math.round((cells * 3.7 * milliampHours) / 165)} g`]] : [];
  }
  if (kind === 'esc')
    return said('type') === '4-in-1'
      ? [
          ['channels', '4'],
          ['weight', '16 g'],
        ]
      : [];
  if (kind === 'video-antenna')
    return [
      ['gain', '1.5 dBi'],
      ['weight', '5 g'],
    ];
  if (kind === 'receiver')
    return [
      ['current', '100 mA'],
      ['weight', '1 g'],
    ];
  if (kind === 'camera')
    return said('width').startsWith('19 mm')
      ? [
          ['current', '120 mA'],
          ['weight', '9 g'],
        ]
      : [];
  return [];
}
