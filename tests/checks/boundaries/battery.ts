/** Limits of packs, of what they are put on and of what charges them. */
import type { Craft, Pack } from '../../../server/src/build/craft';
import { worked } from '../../../server/src/plan/worked';
import { type Boundary, edge, turn } from './boundary';

/** A out of the pack at full throttle, with the square of a throttle limit, and as it is flown. */
const limited = (craft: Craft, pack: Pack | undefined): number =>
  worked(craft, pack, 'worked.pack-current')!.value.peak * (craft.said.flight?.['throttle-limit']?.value ?? 1) ** 2;
const mean = (craft: Craft, pack: Pack | undefined): number => worked(craft, pack, 'worked.pack-current')!.value.mean!;
const percent = (value: number): string => `${value.toFixed(1)} %`;

export const battery: readonly Boundary[] = [
  edge('balance-plug-differs', 'packs.main.balance-pins', ['7', 'silent'], ['8', 'error']),
  edge('balance-plug-differs', 'packs.main.balance-pins', ['7', 'silent'], ['6', 'error']),
  // One cell has no balance plug, or one of two contacts.
  edge('balance-plug-differs', 'packs.main.balance-pins', ['0', 'silent'], ['1', 'error'], {
    'packs.main.cells': '1S',
  }),
  edge('balance-plug-differs', 'packs.main.balance-pins', ['2', 'silent'], ['1', 'error'], {
    'packs.main.cells': '1S',
  }),
  // Six cells full are 26.1 V: by 4.36 V five whole ones, by 4.35 V six.
  edge('cell-count-misread', 'setup.cell-full', ['4.36 V', 'silent'], ['4.35 V', 'warning'], {
    'packs.main.cells': '6S',
  }),
  edge('cell-count-misread', 'setup.cell-count', ['4', 'silent'], ['5', 'warning']),
  edge('charger-cells-too-few', 'packs.main.cells', ['4S', 'silent'], ['5S', 'error']),
  edge('charger-cells-too-few', 'packs.main.cells', ['2S', 'silent'], ['1S', 'warning'], {
    'bench.charger.cells': '2S-6S',
  }),
  edge('charger-cells-too-few', 'packs.main.cells', ['4S', 'silent'], ['5S', 'error'], {
    'bench.charger.cells': '1S-6S',
    'bench.charger.balance': '4',
  }),
  // 5 A at 25.2 V.
  edge('charger-power-low', 'bench.charger.power', ['126 W', 'silent'], ['125.99 W', 'information']),
  edge('charger-power-low', 'bench.charger.current', ['5 A', 'silent'], ['4.99 A', 'information'], {
    'bench.charger.power': undefined,
  }),
  edge('esc-cells-exceeded', 'packs.main.cells', ['4S', 'silent'], ['5S', 'error']),
  edge('esc-cells-exceeded', 'packs.main.cells', ['3S', 'silent'], ['2S', 'warning']),
  // Each number of cells to the volt that its label promises.
  ...(
    [
      ['3S', '12.6 V', '12.59 V'],
      ['4S', '16.8 V', '16.79 V'],
      ['6S', '25.2 V', '25.19 V'],
      ['8S', '33.6 V', '33.59 V'],
    ] as const
  ).map(([cells, stands, short]) =>
    edge('esc-cells-exceeded', 'parts.esc.voltage-limit', [stands, 'silent'], [short, 'error'], {
      'parts.esc.cells': '3S-8S',
      'packs.main.cells': cells,
    }),
  ),
  edge('esc-cells-exceeded', 'parts.esc.voltage-limit', ['26.1 V', 'silent'], ['26.09 V', 'error'], {
    'parts.esc.cells': '3S-6S',
    'packs.main.chemistry': 'LiHV',
  }),
  // High voltage on as many cells as the rating names promises nothing; a single cell is taken for what it is.
  edge('esc-cells-exceeded', 'packs.main.cells', ['1S', 'silent'], ['2S', 'warning'], {
    'parts.esc.cells': '1S-2S',
    'packs.main.chemistry': 'LiHV',
  }),
  // freestyle-5 turns 34 to 42 thousand a minute at 3.7 V a cell; a tenth and a fifth beyond, at 22.2 V.
  edge('kv-off-for-cells', 'parts.motors.kv', ['2081', 'silent'], ['2082', 'information']),
  edge('kv-off-for-cells', 'parts.motors.kv', ['2270', 'information'], ['2271', 'warning']),
  edge('kv-off-for-cells', 'parts.motors.kv', ['1393', 'silent'], ['1392', 'information']),
  edge('kv-off-for-cells', 'parts.motors.kv', ['1277', 'information'], ['1276', 'warning']),
  // A limit of the throttle below 95 % helps.
  edge('kv-off-for-cells', 'flight.throttle-limit', ['94.9 %', 'information'], ['95 %', 'warning']),
  edge('landing-voltage-too-low', 'setup.cell-landing', ['3 V', 'silent'], ['2.99 V', 'warning']),
  edge('landing-voltage-too-low', 'setup.cell-landing', ['2.5 V', 'silent'], ['2.49 V', 'warning'], {
    'packs.main.chemistry': 'Li-ion',
  }),
  edge('landing-voltage-too-low', 'setup.cell-landing', ['3.4 V', 'silent'], ['3.39 V', 'information'], {
    'packs.main.landing-voltage': '3.4 V',
  }),
  edge('landing-voltage-too-low', 'setup.cell-warning', ['3.31 V', 'silent'], ['3.3 V', 'warning'], {
    'setup.cell-landing': '3.3 V',
  }),
  edge('motor-cells-exceeded', 'packs.main.cells', ['4S', 'silent'], ['5S', 'warning']),
  edge('motor-cells-exceeded', 'packs.main.cells', ['3S', 'silent'], ['2S', 'information']),
  // Four cells of six, and a twentieth: 71.67 %.
  edge('motor-cells-exceeded', 'flight.throttle-limit', ['71.6 %', 'information'], ['71.7 %', 'warning']),
  // 28.86 Wh, a tenth less and more.
  edge('pack-energy-differs', 'packs.main.energy', ['25.98 Wh', 'silent'], ['25.97 Wh', 'warning']),
  edge('pack-energy-differs', 'packs.main.energy', ['31.74 Wh', 'silent'], ['31.75 Wh', 'warning']),
  // 22.2 V times 4.504 Ah are 99.99 Wh.
  edge('pack-over-air-limit', 'packs.main.capacity', ['4504 mAh', 'silent'], ['4505 mAh', 'information']),
  edge('pack-over-air-limit', 'packs.main.energy', ['100 Wh', 'silent'], ['100.01 Wh', 'information']),
  edge('pack-rating-implausible', 'packs.main.discharge', ['120 C', 'silent'], ['121 C', 'information']),
  edge('pack-rating-implausible', 'packs.main.discharge', ['120 C', 'silent'], ['121 C', 'information'], {
    'packs.main.capacity': '3000 mAh',
  }),
  // 97.92 g without the pack: frame, motors and 2 % for solder and tape.
  edge('pack-share-of-weight', 'packs.main.weight', ['97.9 g', 'silent'], ['98 g', 'information']),
  edge('pack-share-of-weight', 'packs.main.weight', ['17.3 g', 'silent'], ['17.2 g', 'information']),
  edge('pack-share-of-weight', 'packs.main.weight', ['119.6 g', 'silent'], ['119.7 g', 'information'], {
    craft: 'long-range-7',
  }),
  edge('parallel-packs-differ', 'packs.light.cells', ['6S', 'silent'], ['5S', 'warning']),
  // Limits below 3 V (2.5 V for Li-ion) are what the chemistry stands, others how it ages.
  edge('landing-voltage-too-low', 'setup.cell-landing', ['3 V', 'information'], ['2.99 V', 'warning'], {
    'packs.main.landing-voltage': '3.4 V',
  }),
  edge('landing-voltage-too-low', 'setup.cell-landing', ['2.5 V', 'information'], ['2.49 V', 'warning'], {
    'packs.main.landing-voltage': '3.4 V',
    'packs.main.chemistry': 'Li-ion',
  }),
  // Whoever never gives full throttle never sinks there.
  edge('pack-sags-deep', 'flight.throttle-limit', ['95 %', 'not asked'], ['95.1 %', 'warning']),
  turn('li-ion-overdrawn', 'flight.throttle-limit', {
    say: percent,
    silent: 20,
    found: 100,
    step: 0.1,
    broken: (craft, pack) => limited(craft, pack) > 30 || mean(craft, pack) > 30,
  }),
  turn('li-ion-overdrawn', 'flight.throttle-limit', {
    say: percent,
    silent: 20,
    found: 100,
    step: 0.1,
    grave: 'warning',
    with: {
      'packs.main.cell-resistance': '5 mOhm',
      'flight.cruise': '5 %',
      'flight.hover': '90 %',
      'flight.punch': '5 %',
    },
    broken: (craft, pack) => limited(craft, pack) > 3 * 30 || mean(craft, pack) > 30,
  }),
  turn('pack-cannot-deliver', 'flight.throttle-limit', {
    say: percent,
    silent: 20,
    found: 100,
    step: 0.1,
    broken: (craft, pack) => 1.1 * 35 < 0.6 * limited(craft, pack),
  }),
  // Where the label has a rating for short, it is that which may not be too low.
  turn('pack-cannot-deliver', 'packs.main.burst-discharge', {
    say: (value) => `${value.toFixed(1)} C`,
    silent: 100,
    found: 35,
    step: 0.1,
    grave: 'error',
    broken: (craft, pack) => 1.1 * pack!.facts['burst-discharge']!.value < 0.6 * limited(craft, pack),
  }),
  turn('li-ion-overdrawn', 'packs.main.discharge', {
    say: (value) => `${value.toFixed(1)} C`,
    silent: 90,
    found: 10,
    step: 0.1,
    broken: (craft, pack) => {
      const { peak, mean } = worked(craft, pack, 'worked.pack-current')!.value;
      // 4 Ah; the label counts where it promises more than 30 A.
      return Math.max(peak, mean ?? 0) > Math.max(30, 4 * pack!.facts.discharge!.value);
    },
  }),
  turn('pack-cannot-deliver', 'packs.main.discharge', {
    say: (value) => `${value.toFixed(1)} C`,
    silent: 100,
    found: 35,
    step: 0.1,
    broken: (craft, pack) =>
      1.1 * pack!.facts.discharge!.value < 0.6 * worked(craft, pack, 'worked.pack-current')!.value.peak,
  }),
  turn('pack-cannot-deliver', 'packs.main.discharge', {
    say: (value) => `${value.toFixed(1)} C`,
    silent: 100,
    found: 10,
    step: 0.1,
    grave: 'error',
    // Else the model takes a low rating for a high resistance, and the current sinks with it.
    with: { 'packs.main.cell-resistance': '3 mOhm' },
    broken: (craft, pack) =>
      1.1 * pack!.facts.discharge!.value < 0.3 * worked(craft, pack, 'worked.pack-current')!.value.peak,
  }),
  turn('pack-sags-deep', 'packs.main.cell-resistance', {
    say: (value) => `${value.toFixed(1)} mOhm`,
    silent: 3,
    found: 12,
    step: 0.1,
    broken: (craft, pack) => {
      const { full } = worked(craft, pack, 'worked.pack-values')!.value;
      // Ohm's law: 4.2 V full less what the current takes in the cell and in its share of 4 mOhm of leads.
      return full.ok && 4.2 - full.value.packCurrent * (pack!.facts['cell-resistance']!.value + 0.004 / 6) < 3.2;
    },
  }),
  turn('pack-sags-deep', 'packs.main.cell-resistance', {
    say: (value) => `${value.toFixed(1)} mOhm`,
    silent: 3,
    found: 40,
    step: 0.1,
    with: { 'packs.main.chemistry': 'Li-ion' },
    broken: (craft, pack) => {
      const { full } = worked(craft, pack, 'worked.pack-values')!.value;
      // A cell of Li-ion stands at 4.18 V when it is full.
      const resistance = pack!.facts['cell-resistance']!.value + 0.004 / 6;
      return full.ok && 4.18 - full.value.packCurrent * resistance < 2.7;
    },
  }),
];
