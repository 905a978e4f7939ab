/** What hovering, cruising, a punch and full throttle each take, side by side. */
import type { CraftFigures, PointFigures } from '../physics';
import { type CardFigure, cardFigure } from './card-figure';

export interface LevelTable {
  readonly question: string;
  readonly columns: readonly string[];
  readonly rows: readonly { readonly title: string; readonly cells: readonly (CardFigure | undefined)[] }[];
}

const levels = [
  ['hover', 'hovering'],
  ['cruise', 'cruising'],
  ['punch', 'punching'],
  ['full', 'full'],
] as const;

const quantities: readonly (readonly [key: keyof PointFigures, name: string, title: string])[] = [
  ['throttle', 'throttle', 'throttle'],
  ['motorCurrent', 'motor-current', 'in one motor'],
  ['escCurrent', 'current-each', 'into one ESC channel'],
  ['packCurrent', 'current', 'out of the pack'],
  ['power', 'power', 'power out of the pack'],
  ['busVoltage', 'voltage', 'pack under load'],
  ['cellVoltage', 'cell-voltage', 'a cell under load'],
  ['rpm', 'speed', 'propeller speed'],
  ['tipMach', 'tip-mach', 'tips, of the speed of sound'],
  ['pitchSpeed', 'pitch-speed', 'pitch speed'],
  ['gramsPerWatt', 'thrust-per-power', 'thrust for its power'],
  ['discLoading', 'disc-loading', 'disc loading'],
];

/** Hovering, cruising and punching at half of the usable charge, full throttle on a full pack. */
export function levelTable(figures: CraftFigures | undefined): LevelTable | undefined {
  if (!figures || !levels.some(([level]) => figures[level].ok)) return undefined;
  const rows = quantities.map(([key, name, title]) => ({
    title,
    cells: levels.map(([level, spoken]) => {
      const point = figures[level];
      return point.ok ? cardFigure(`${level}-${name}`, `${title}, ${spoken}`, point.value[key]) : undefined;
    }),
  }));
  return { question: 'What does each way of flying take?', columns: levels.map(([, spoken]) => spoken), rows };
}
