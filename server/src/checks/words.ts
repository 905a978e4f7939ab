/** Writes values the way the trade reads them, for messages. Units at the edge; nothing is decided here. */
const plain = (value: number, digits: number): string => {
  const text = value.toFixed(digits);
  return digits > 0 ? text.replace(/\.?0+$/, '') : text;
};

export const millimetres = (metres: number, digits = 1): string => `${plain(metres * 1000, digits)} mm`;
export const inches = (metres: number): string => `${plain(metres / 0.0254, 2)} in`;
export const grams = (kilograms: number): string => `${plain(kilograms * 1000, kilograms < 0.01 ? 1 : 0)} g`;
export const volts = (value: number): string => `${plain(value, 2)} V`;
export const amperes = (value: number): string =>
  Math.abs(value) < 1 ? `${plain(value * 1000, 0)} mA` : `${plain(value, value < 10 ? 1 : 0)} A`;
export const watts = (value: number): string =>
  Math.abs(value) < 1 ? `${plain(value * 1000, 0)} mW` : `${plain(value, value < 10 ? 1 : 0)} W`;
export const wattHours = (value: number): string => `${plain(value, 1)} Wh`;
export const megahertz = (hertz: number): string => `${plain(hertz / 1e6, 0)} MHz`;
export const percent = (share: number): string => `${plain(share * 100, 0)} %`;
export const ratio = (value: number): string => plain(value, 1);
export const cellsOf = (count: number): string => `${count}S`;
