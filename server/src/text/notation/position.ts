/** `40 mm forward, 20 mm up`: where a thing sits, seen from the middle of the frame at the height of the arms. */
import { splitOrigin } from '../origin';
import { own } from '../own';
import { misread, type Read, readBare } from '../quantity';

/** m */
export interface Position {
  readonly forward: number;
  readonly right: number;
  readonly up: number;
}

const directions: Readonly<Record<string, readonly [keyof Position, 1 | -1]>> = {
  forward: ['forward', 1],
  back: ['forward', -1],
  right: ['right', 1],
  left: ['right', -1],
  up: ['up', 1],
  down: ['up', -1],
};

export function readPosition(text: string): Read<Position> {
  const { said, origin } = splitOrigin(text);
  const value = { forward: 0, right: 0, up: 0 };
  const seen = new Set<string>();
  for (const piece of said.split(/\s*,\s*/)) {
    const match = /^(.*\S)\s+([a-z]+)$/i.exec(piece);
    const direction = match ? own(directions, match[2]!.toLowerCase()) : undefined;
    if (!match || !direction)
      return misread(
        `\`${piece}\` is not a position; write distances with a direction, as in \`40 mm forward, 20 mm up\` (forward, back, left, right, up, down)`,
      );
    const distance = readBare(match[1]!, 'length', '40 mm');
    if (!distance.ok)
      return misread(distance.why, ...(distance.better ?? []).map((better) => said.replace(match[1]!, better)));
    if (seen.has(direction[0])) return misread(`\`${said}\` gives the same direction twice; say each once`);
    seen.add(direction[0]);
    value[direction[0]] = distance.value * direction[1];
  }
  return { ok: true, value, origin };
}
