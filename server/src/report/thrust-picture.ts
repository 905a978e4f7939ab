/** Thrust of one motor over throttle at half charge, with the throttle that hovers. Computes through the physics of one point. */
import type { Craft, Pack } from '../build/craft';
import { openVoltage, pointValues } from '../physics';
import { G } from '../physics/constants';
import { inputFor, valuesFor } from '../plan/worked';
import { number, type Picture } from './picture';

const [width, height, left, bottom] = [240, 130, 40, 24] as const;

export function thrustPicture(craft: Craft, pack: Pack | undefined): Picture | undefined {
  const made = pack && inputFor(craft, pack);
  const hover = valuesFor(craft, pack)?.hover;
  if (!made?.ok) return undefined;
  const { motors, propeller, pack: battery, air } = made.input;
  const voltage = battery.cells * openVoltage(battery.chemistry, 0.5);
  const points = Array.from({ length: 19 }, (_, i) => 0.1 + i * 0.05).flatMap((throttle) => {
    const point = pointValues({ motor: motors, propeller, voltage, at: { throttle }, air });
    return point.ok ? [{ throttle, grams: (point.value.thrust / G) * 1000 }] : [];
  });
  const most = Math.max(...points.map((point) => point.grams));
  if (points.length < 5 || !(most > 0)) return undefined;
  const x = (throttle: number): number => left + throttle * (width - left - 8);
  const y = (grams: number): number => height - bottom - (grams / most) * (height - bottom - 12);
  const line = points.map((point) => `${number(x(point.throttle))},${number(y(point.grams))}`).join(' ');
  const text = (at: readonly [number, number], words: string, anchor = 'middle'): string =>
    `<text x="${number(at[0])}" y="${number(at[1])}" text-anchor="${anchor}" font-family="sans-serif" font-size="10" fill="#888888">${words}</text>`;
  const hovers = hover?.ok
    ? `<line x1="${number(x(hover.value.throttle))}" y1="12" x2="${number(x(hover.value.throttle))}" y2="${height - bottom}" stroke="#d8742f" stroke-dasharray="3 2"/>${text([x(hover.value.throttle), 10], 'hovers')}`
    : '';
  const axes = `<path d="M${left} 12V${height - bottom}H${width - 8}" fill="none" stroke="#888888"/>${text([left - 4, 20], `${Math.round(most)} g`, 'end')}${text([left - 4, height - bottom], '0', 'end')}${text([x(0.5), height - 8], '50 % throttle')}${text([x(1), height - 8], '100 %', 'end')}`;
  return {
    svg: `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}">${axes}<polyline points="${line}" fill="none" stroke="#2f7ed8" stroke-width="2"/>${hovers}</svg>`,
    words: `Thrust of one motor over throttle at half charge, up to ${Math.round(most)} g${hover?.ok ? `; hovers at ${Math.round(hover.value.throttle * 100)} %` : ''}`,
  };
}
