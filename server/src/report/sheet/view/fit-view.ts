/** What the drawing from above shows: motors, propellers, boards, hole patterns, pack and camera in millimetres, and what of it clashes. Draws nothing and judges nothing. */
import type { Analysis } from '../../../analysis';
import type { Craft, Pack } from '../../../build/craft';
import type { Fact, Pointable } from '../../../build/fact';
import type { Finding, Severity } from '../../../build/finding';
import { allChecks } from '../../../checks/generated/all';
import { motorLayout, neighbourGaps } from '../../../plan/motor-layout';
import { boardName } from '../../../plan/mounts';
import type { BoardMount } from '../../../text/notation/mount';
import type { Position } from '../../../text/notation/position';
import type { Size } from '../../../text/notation/size';
import type { Spot, Spots } from './spots';

/** All lengths in mm; `x` to the right, `y` forward, from the middle of the frame. */
export interface FitView {
  readonly motors: readonly { readonly x: number; readonly y: number; readonly where: string }[];
  /** The frame says no geometry; a true X was taken. */
  readonly assumed: boolean;
  readonly rests: Spot | undefined;
  readonly wheelbase: Round | undefined;
  readonly propeller: Round | undefined;
  readonly duct: Round | undefined;
  readonly stator: Round | undefined;
  readonly armWidth: number | undefined;
  readonly boxes: readonly Box[];
  readonly patterns: readonly HolePattern[];
  readonly gaps: readonly { readonly a: number; readonly b: number; readonly axes: number; readonly gap: number }[];
  readonly clashes: readonly Clash[];
  /** What would make the drawing fuller. */
  readonly wanting: readonly string[];
}

export interface Round {
  readonly diameter: number;
  readonly words: string;
  readonly spot: Spot | undefined;
}

/** The role of a part, `pack`, or what of the frame it is, as in `frame-arm`. */
export type Thing = string;

export interface Box {
  readonly thing: Thing;
  readonly words: string;
  /** Along the craft; nothing for a part of which only the place is said. */
  readonly length: number | undefined;
  readonly width: number | undefined;
  readonly x: number;
  readonly y: number;
  /** `said` in the file, sure by the nature of the part, or only where such a part usually lies. */
  readonly place: 'said' | 'sure' | 'usual';
  readonly spot: Spot | undefined;
}

export interface HolePattern {
  readonly thing: Thing;
  readonly words: string;
  readonly length: number;
  readonly width: number;
  readonly hole: number;
  readonly spot: Spot | undefined;
}

export interface Clash {
  readonly title: string;
  readonly message: string;
  readonly severity: Severity;
  readonly things: readonly Thing[];
  readonly spot: Spot | undefined;
}

export function fitView(craft: Craft, pack: Pack | undefined, analysis: Analysis, spots: Spots): FitView {
  const { frame, propellers, motors: motor } = craft.roles;
  const layout = motorLayout(craft);
  const diameter = propellers?.size?.value.diameter;
  const gaps = layout && diameter !== undefined ? neighbourGaps(layout.motors, diameter) : [];
  const round = (metres: number | undefined, words: string, fact: Pointable | undefined, part: string) =>
    metres === undefined ? undefined : { diameter: metres * 1000, words, spot: spots.spot(fact, part) };
  return {
    motors: (layout?.motors ?? []).map((at) => ({ x: at.right * 1000, y: at.forward * 1000, where: whereOf(at) })),
    assumed: layout?.assumed ?? false,
    rests: spots.spot(layout?.rests, 'parts.frame'),
    wheelbase: round(frame?.wheelbase?.value, `wheelbase ${frame?.wheelbase?.text}`, frame?.wheelbase, 'parts.frame'),
    propeller: round(diameter, `propeller ${propellers?.size?.text}`, propellers?.size, 'parts.propellers'),
    duct: round(
      frame?.['duct-diameter']?.value,
      `duct, inner diameter ${frame?.['duct-diameter']?.text}`,
      frame?.['duct-diameter'],
      'parts.frame',
    ),
    stator: round(motor?.stator?.value.diameter, `motor, stator ${motor?.stator?.text}`, motor?.stator, 'parts.motors'),
    armWidth: inMm(frame?.['arm-width']?.value),
    boxes: boxesOf(craft, pack, spots),
    patterns: patternsOf(craft, spots),
    gaps: gaps.map(({ a, b, axes, gap }) => ({ a, b, axes: axes * 1000, gap: gap * 1000 })),
    clashes: clashesOf(craft, analysis, spots),
    wanting: wantingOf(craft, layout !== undefined),
  };
}

const inMm = (metres: number | undefined): number | undefined => (metres === undefined ? undefined : metres * 1000);

function whereOf({ forward, right }: Position): string {
  const along = Math.abs(forward) < 1e-3 ? '' : forward > 0 ? 'front' : 'back';
  const across = Math.abs(right) < 1e-3 ? '' : right > 0 ? 'right' : 'left';
  return [along, across].filter(Boolean).join(' ') || 'middle';
}

type Placed = { readonly outside?: Fact<Size>; readonly at?: Fact<Position> };

function boxesOf(craft: Craft, pack: Pack | undefined, spots: Spots): readonly Box[] {
  const { frame, camera, esc, 'flight-controller': controller, 'all-in-one': board, stack } = craft.roles;
  const boxes: Box[] = [];
  const box = (
    thing: Thing,
    words: string,
    size: Fact<Size> | undefined,
    at: Fact<Position> | undefined,
    part: string,
  ) => {
    if (!size && !at) return;
    boxes.push({
      thing,
      words: size ? `${words}, ${size.text}` : words,
      length: inMm(size?.value.length),
      width: inMm(size?.value.width),
      x: (at?.value.right ?? 0) * 1000,
      y: (at?.value.forward ?? 0) * 1000,
      place: at ? 'said' : thing === 'pack' ? 'usual' : 'sure',
      spot: spots.spot(size ?? at, part),
    });
  };
  box('frame-body', 'body', frame?.body, undefined, 'parts.frame');
  if (!frame?.body) box('frame-bay', 'bay between the standoffs', frame?.bay, undefined, 'parts.frame');
  box('frame-battery-plate', 'battery plate', frame?.['battery-plate'], undefined, 'parts.frame');
  const stacked = stack ? 'parts.stack' : undefined;
  if (board) box('all-in-one', 'all-in-one board', board.outside, board.at, 'parts.all-in-one');
  else {
    box('esc', 'ESC', esc?.outside, esc?.at, stacked ?? 'parts.esc');
    box(
      'flight-controller',
      'flight controller',
      controller?.outside,
      controller?.at,
      stacked ?? 'parts.flight-controller',
    );
    if (!esc?.outside && !controller?.outside) box('stack', 'stack', stack?.outside, stack?.at, 'parts.stack');
  }
  const others = ['video-transmitter', 'receiver', 'gps', 'capacitor', 'action-camera', 'buzzer', 'remote-id'] as const;
  const said = (craft.said.parts ?? {}) as Readonly<Record<string, Placed | undefined>>;
  // Without a place nobody knows where these lie.
  for (const role of others)
    if (said[role]?.at) box(role, role.replaceAll('-', ' '), said[role]?.outside, said[role]?.at, `parts.${role}`);
  if (camera?.width) {
    const nose = ((frame?.body ?? frame?.bay)?.value.length ?? 0.06) * 500;
    const width = camera.width.value * 1000;
    boxes.push({
      thing: 'camera',
      words: `camera, ${camera.width.text} wide`,
      // A camera is about as long as wide without its lens. Common practice.
      length: inMm(camera.outside?.value.length) ?? width,
      width,
      x: (camera.at?.value.right ?? 0) * 1000,
      y: camera.at ? camera.at.value.forward * 1000 : nose - width / 2,
      place: camera.at ? 'said' : 'usual',
      spot: spots.spot(camera.width, 'parts.camera'),
    });
  }
  if (pack) box('pack', `pack ${pack.name}`, pack.facts.outside, pack.facts.at, `packs.${pack.name}`);
  return boxes;
}

function patternsOf(craft: Craft, spots: Spots): readonly HolePattern[] {
  const { frame, esc, 'flight-controller': controller, 'all-in-one': board, stack } = craft.roles;
  const found: HolePattern[] = [];
  const pattern = (
    thing: Thing,
    words: string,
    mount: Fact<BoardMount> | undefined,
    hole: number,
    part: string,
  ): void => {
    if (!mount) return;
    const { width, length } = mount.value;
    found.push({
      thing,
      words: `${words} ${boardName(mount.value)}`,
      length: length * 1000,
      width: width * 1000,
      hole,
      spot: spots.spot(mount, part),
    });
  };
  for (const mount of frame?.['stack-mounts']?.items ?? [])
    pattern('frame-stack-mounts', 'frame holes', mount, mount.value.screw ?? 3, 'parts.frame');
  const stacked = stack ? 'parts.stack' : undefined;
  if (board) pattern('all-in-one', 'board holes', board.mount ?? controller?.mount, 2, 'parts.all-in-one');
  else {
    pattern('flight-controller', 'flight controller holes', controller?.mount, 2, stacked ?? 'parts.flight-controller');
    pattern('esc', 'ESC holes', esc?.mount, 1.2, stacked ?? 'parts.esc');
  }
  return found;
}

/** What the checks of fit found, with the things it is between. */
function clashesOf(craft: Craft, analysis: Analysis, spots: Spots): readonly Clash[] {
  const roleOf = rolesByPath(craft);
  return analysis.findings.flatMap((finding) => {
    const check = mechanical.get(finding.check);
    if (!check || finding.severity === 'information' || finding.accepted !== undefined) return [];
    const things = new Set(
      [finding.at, ...finding.related.map(({ place }) => place)].flatMap(({ path }) => roleOf(path)),
    );
    const [own] = roleOf(finding.at.path);
    return [
      {
        title: check.title,
        message: finding.message,
        severity: finding.severity,
        things: [...things],
        spot: spots.place(finding.at, own === undefined ? undefined : partPath(finding)),
      },
    ];
  });
}

const partPath = (finding: Finding): string => finding.at.path.split('.').slice(0, 2).join('.');

const mechanical = new Map(allChecks.filter(({ group }) => group === 'mechanical').map((check) => [check.id, check]));

/** The role that a path of the build or of a library speaks of; both boards for a stack. */
function rolesByPath(craft: Craft): (path: string) => readonly Thing[] {
  const byId = new Map<string, string>();
  for (const [role, part] of Object.entries(craft.said.parts ?? {})) {
    const id = (part as { readonly use?: Fact<string> } | undefined)?.use?.value;
    if (id !== undefined) byId.set(id, role);
  }
  return (path) => {
    const [first, second, third] = path.split('.');
    if (first === 'packs') return ['pack'];
    if (first !== 'parts' || second === undefined) return [];
    const role = byId.get(second) ?? second;
    if (role === 'stack')
      return third === 'esc' || third === 'flight-controller' ? [third] : ['flight-controller', 'esc'];
    return role === 'frame' ? [frameThing(third)] : [role];
  };
}

/** Which drawn part of the frame a field of it is about. */
function frameThing(field: string | undefined): Thing {
  const armFields = [
    'arm-thickness',
    'arm-width',
    'motor-mounts',
    'motor-screws',
    'wheelbase',
    'motor-positions',
    'geometry',
    'largest-propeller',
  ];
  return field === undefined || field === 'use' ? 'frame' : armFields.includes(field) ? 'frame-arm' : `frame-${field}`;
}

function wantingOf(craft: Craft, drawn: boolean): readonly string[] {
  const { frame, propellers } = craft.roles;
  const words: string[] = [];
  if (!frame) words.push('Add a frame under `parts:` to have the craft drawn.');
  else if (!drawn)
    words.push(
      frame.wheelbase
        ? `Where the motors of a frame of geometry ${frame.geometry?.value ?? 'unknown'} are, the wheelbase alone does not tell: add \`motor-positions\` to the frame.`
        : 'Add `wheelbase` or `motor-positions` to the frame to have the motors drawn.',
    );
  if (frame && !propellers?.size) words.push('Add the `size` of the propellers to have their discs and gaps drawn.');
  return words;
}
