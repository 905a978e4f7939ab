/** The choices a builder makes first, before any part is described: class, power train, packs, boards, link, video. Writes no fields. */
import { type BoardForm, type Chip, chips, escRatings, forms, smallChips } from '../trade/boards';
import { type CraftClass, classes, type PowerTrain, type Propeller } from '../trade/classes';
import type { Cells } from '../trade/packs';
import { type Link, links, protocolNeeds } from '../trade/radio';
import { analogUnits, digitalUnits, type Unit } from '../trade/video';
import type { Luck } from './luck';

export interface Choices {
  readonly craft: CraftClass;
  readonly train: PowerTrain;
  readonly propeller: Propeller;
  readonly packs: readonly Cells[];
  readonly cells: number;
  /** V of the fullest and of the emptiest pack. */
  readonly full: number;
  readonly empty: number;
  readonly highVoltage: boolean;
  /** One of the packs is of cylindrical cells, which are not flown hard. */
  readonly gentle: boolean;
  readonly board: CraftClass['boards'][number];
  readonly form: BoardForm;
  readonly chip: Chip;
  readonly esc: readonly [number, number];
  readonly link: Link;
  readonly protocol: string;
  /** The receiver sits on the all-in-one board, and how it is joined there. */
  readonly onBoardReceiver: 'no' | 'SPI' | 'serial';
  readonly unit: Unit;
  readonly level: readonly [number, number];
  readonly onBoardVideo: boolean;
  readonly cameraWidth: number;
  readonly region: 'EU' | 'UK' | 'US' | 'other' | undefined;
  /** g; the payload of an action camera, when there is one */
  readonly payload: number | undefined;
}

export const fullOf = (pack: Cells): number => pack.cells * (pack.chemistry === 'LiHV' ? 4.35 : 4.2);
export const emptyOf = (pack: Cells): number => pack.cells * (pack.chemistry === 'Li-ion' ? 2.8 : 3.3);

export function choose(luck: Luck, craftName?: string): Choices {
  const craft = craftName ? classes.find((one) => one.name === craftName)! : luck.pick(classes);
  const train = luck.pick(craft.trains);
  const first = luck.pick<Cells>(train.packs);
  const others = train.packs.filter((pack) => pack !== first && pack.plug === first.plug && pack.cells === first.cells);
  const packs = [first, ...luck.few(others, luck.below(3))];
  const cells = first.cells;
  const board = luck.pick(craft.boards);
  const form = formOf(luck, board);
  const region = luck.pick(['EU', 'EU', 'UK', 'US', 'other', undefined] as const);
  const protocolled = luck.pick(
    links.filter((link) => (board !== 'whoop' || link.rail === '5V') && isSentIn(link.band, region)),
  );
  const onBoard = board === 'whoop' ? luck.pick(['no', 'SPI', 'serial'] as const) : 'no';
  const link =
    onBoard === 'no'
      ? protocolled
      : luck.pick(links.filter((one) => one.protocols[0] === 'CRSF' && one.band === '2.4 GHz'));
  const protocol = onBoard === 'SPI' ? 'SPI' : onBoard === 'serial' ? 'CRSF' : luck.pick(link.protocols);
  const analog = board === 'whoop' || luck.often(60);
  const unit = unitOf(luck, analog, board, cells);
  const bound = region === 'EU' || region === 'UK';
  return {
    craft,
    train,
    propeller: luck.pick(train.propellers),
    packs,
    cells,
    full: Math.max(...packs.map(fullOf)),
    empty: Math.min(...packs.map(emptyOf)),
    highVoltage: packs.some((pack) => pack.chemistry === 'LiHV'),
    gentle: packs.some((pack) => pack.chemistry === 'Li-ion'),
    board,
    form,
    chip: chipOf(luck, board, protocol),
    esc: escRatings.find(([current]) => current >= train.motor.peak * 1.1)!,
    link,
    protocol,
    onBoardReceiver: onBoard,
    unit,
    level: bound ? unit.levels[0]! : luck.pick(unit.levels),
    onBoardVideo: board === 'whoop' && luck.often(40),
    cameraWidth: analog
      ? luck.pick(craft.camera)
      : luck.pick(craft.camera.filter((width) => width > 14 || craft.camera.length === 1)),
    region,
    payload: /freestyle|ducted-3|long|lifter/.test(craft.name) && luck.often(40) ? luck.pick([38, 62, 98]) : undefined,
  };
}

/** 868 MHz is Europe's and 915 MHz America's. */
const isSentIn = (band: Link['band'], region: Choices['region']): boolean =>
  region === 'US' ? band !== '868 MHz' : region === 'EU' || region === 'UK' ? band !== '915 MHz' : true;

function formOf(luck: Luck, board: Choices['board']): BoardForm {
  if (board === 'whoop') return luck.pick([forms.whoop, forms.whoop26]);
  if (board === 'all-in-one') return forms.board25;
  if (board === 'small stack') return luck.pick([forms.board20, forms.board20thin]);
  if (board === 'large stack') return forms.board30;
  return luck.pick([forms.board30, forms.board20]);
}

/** A chip that can read this receiver: one without inverters only beside protocols that need none, or with a pad for it. */
function chipOf(luck: Luck, board: Choices['board'], protocol: string): Chip {
  const able = (board === 'whoop' ? smallChips : chips).filter(
    (chip) => chip.inverts || chip.uarts.length > 3 || !protocolNeeds[protocol]?.inverted,
  );
  return luck.pick(able);
}

function unitOf(luck: Luck, analog: boolean, board: Choices['board'], cells: number): Unit {
  if (!analog) return luck.pick(digitalUnits);
  if (board === 'whoop') return analogUnits.small;
  return cells > 6 ? analogUnits.large : luck.pick([analogUnits.middle, analogUnits.large]);
}
