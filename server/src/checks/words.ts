/** Writes values the way the trade reads them, for messages. Units at the edge; nothing is decided here. */
const plain = (value: number, digits: number): string => {
  const text = value.toFixed(digits);
  return digits > 0 ? text.replace(/\.?0+$/, '') : text;
};

/** `more` digits than the trade usually says. */
export type Say = (value: number, more?: number) => string;

export const millimetres: Say = (metres, more = 0) => `${plain(metres * 1000, 1 + more)} mm`;
export const inches: Say = (metres, more = 0) => `${plain(metres / 0.0254, 2 + more)} in`;
export const grams: Say = (kilograms, more = 0) => `${plain(kilograms * 1000, (kilograms < 0.01 ? 1 : 0) + more)} g`;
export const volts: Say = (value, more = 0) => `${plain(value, 2 + more)} V`;
export const amperes: Say = (value, more = 0) => small(value, 'A', more);
export const watts: Say = (value, more = 0) => small(value, 'W', more);
export const wattHours: Say = (value, more = 0) => `${plain(value, 1 + more)} Wh`;
export const megahertz: Say = (hertz, more = 0) => `${plain(hertz / 1e6, more)} MHz`;
export const minutes: Say = (value, more = 0) => `${value.toFixed(1 + more)} min`;
export const percent: Say = (share, more = 0) => `${plain(share * 100, more)} %`;
export const ratio: Say = (value, more = 0) => plain(value, 1 + more);
export const cellsOf = (count: number): string => `${count}S`;

/** In thousandths below one, as long as they don't round up to it. */
const small = (value: number, unit: string, more: number): string =>
  Math.abs(value) < 0.9995
    ? `${plain(value * 1000, more)} m${unit}`
    : `${plain(value, (value < 10 ? 1 : 0) + more)} ${unit}`;

/** Two values that are held against one another, with as many digits as tell them apart. */
export function apart(say: Say, one: number, other: number): readonly [string, string] {
  for (let more = 0; more <= 4; more++) {
    const said = [say(one, more), say(other, more)] as const;
    if (said[0] !== said[1]) return said;
  }
  return [say(one), say(other)];
}
