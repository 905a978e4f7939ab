/** The holes of the frame's middle bay and of the boards over one another, to scale. Judges no fit. */
import type { Craft } from '../build/craft';
import type { BoardMount } from '../text/notation/mount';
import { number, type Picture } from './picture';

/** px for a mm */
const scale = 3;
const size = 180;

interface Pattern {
  readonly name: string;
  readonly mount: BoardMount;
  readonly colour: string;
  readonly hole: number;
}

export function stackPicture(craft: Craft): Picture | undefined {
  const { frame, esc, 'flight-controller': controller } = craft.roles;
  const patterns: Pattern[] = [];
  for (const mount of frame?.['stack-mounts']?.items ?? [])
    patterns.push({ name: `frame ${mount.text}`, mount: mount.value, colour: '#888888', hole: mount.value.screw ?? 3 });
  if (controller?.mount)
    patterns.push({
      name: `flight controller ${controller.mount.text}`,
      mount: controller.mount.value,
      colour: '#2f7ed8',
      hole: 2,
    });
  if (esc?.mount && craft.boards !== 'all-in-one')
    patterns.push({ name: `ESC ${esc.mount.text}`, mount: esc.mount.value, colour: '#d8742f', hole: 1.2 });
  if (patterns.length < 2) return undefined;
  const middle = size / 2;
  const marks = patterns.map(({ mount, colour, hole }, i) => {
    const [w, h] = [mount.width * 1000 * scale, mount.length * 1000 * scale];
    const corners = [
      [-1, -1],
      [1, -1],
      [1, 1],
      [-1, 1],
    ] as const;
    const holes = corners
      .map(
        ([x, y]) =>
          `<circle cx="${number(middle + (x * w) / 2)}" cy="${number(middle + (y * h) / 2)}" r="${number((hole * scale) / 2)}"/>`,
      )
      .join('');
    return `<g fill="none" stroke="${colour}" stroke-width="1.5"${i > 0 && colour === '#888888' ? ' stroke-dasharray="3 2"' : ''}><rect x="${number(middle - w / 2)}" y="${number(middle - h / 2)}" width="${number(w)}" height="${number(h)}"/>${holes}</g>`;
  });
  const legend = patterns.map(
    ({ name, colour }, i) =>
      `<text x="4" y="${size + 14 + i * 14}" fill="${colour}" font-family="sans-serif" font-size="11">${escapeXml(name)}</text>`,
  );
  const height = size + 8 + patterns.length * 14;
  return {
    svg: `<svg xmlns="http://www.w3.org/2000/svg" width="${size + 60}" height="${height}" viewBox="0 0 ${size + 60} ${height}">${marks.join('')}${legend.join('')}</svg>`,
    words: `Hole patterns to scale: ${patterns.map((pattern) => pattern.name).join(', ')}`,
  };
}

export const escapeXml = (text: string): string => text.replace(/[<>&"']/g, (char) => `&#${char.charCodeAt(0)};`);
