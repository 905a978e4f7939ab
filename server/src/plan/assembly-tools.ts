/** The tools and consumables that this build asks for, with sizes and amounts, and which of them the bench has. Buys nothing. */
import type { Craft } from '../build/craft';
import { ironFor, type Joint, wireOf } from './assembly-joints';
import { keysOf, nutsOf, screwsOf } from './assembly-screws';
import { chosenPack } from './weight';

export interface Tool {
  readonly name: string;
  readonly why: string;
  /** Whether the bench has it; nothing when the bench doesn't say. */
  readonly owned: boolean | undefined;
}

const near = (
  list: { readonly items: readonly { readonly value: number }[] } | undefined,
  metres: number,
): boolean | undefined => list?.items.some((item) => Math.abs(item.value - metres) < 5e-5);

export function toolsOf(craft: Craft, joints: readonly Joint[]): readonly Tool[] {
  const own = craft.bench?.tools;
  const screws = screwsOf(craft);
  const tools: Tool[] = keysOf(screws).map((size) => ({
    name: `hex key ${size.toFixed(1)} mm`,
    why: [...new Set(screws.filter((one) => one.key === size).map((one) => `${one.text} (${one.for})`))].join(', '),
    owned: near(own?.hex, size / 1000),
  }));
  const drivers = new Map<number, string[]>();
  for (const nut of nutsOf(craft))
    if (nut.driver) drivers.set(nut.driver, [...(drivers.get(nut.driver) ?? []), `M${nut.thread} nuts (${nut.for})`]);
  for (const [size, why] of drivers)
    tools.push({
      name: `nut driver ${size} mm`,
      why: why.join(', '),
      owned: size === 8 && own?.['propeller-tool']?.value ? true : near(own?.nuts, size / 1000),
    });
  const hot = joints.some((joint) => joint.is === 'power' && (joint.gauge === undefined || joint.gauge <= 14));
  if (joints.length > 0) {
    const watts = hot ? 60 : 40;
    tools.push(
      {
        name: `iron of ${watts} W or more, adjustable`,
        why: hot ? 'battery pads and ground plane' : 'small pads',
        owned: own?.iron && own.iron.value >= watts,
      },
      {
        name: 'chisel or bevel tip',
        why: 'flat tips carry heat, needles do not',
        owned: own?.tips?.items.some((tip) => /chisel|bevel|knife/.test(tip.value)),
      },
    );
  }
  const flag = (name: string, why: string, fact: { readonly value: boolean } | undefined): void => {
    tools.push({ name, why, owned: fact?.value });
  };
  flag('multimeter with beeper', 'continuity and polarity before power', own?.meter);
  tools.push({
    name: 'current limiter or bench supply',
    why: 'first power',
    owned: own?.['current-limiter'] && own['current-limiter'].value <= 3,
  });
  flag('wire strippers', 'wire ends', own?.strippers);
  flag('flush cutters', 'legs and ties', own?.cutters);
  flag('tweezers', 'small wires', own?.tweezers);
  flag('fan or fume extraction', 'flux fume', own?.['fume-extraction']);
  flag('eye protection', 'cut legs fly', own?.['eye-protection']);
  if (craft.packs.length > 0) flag('fire-safe place for packs', 'charging', own?.['fire-safe-place']);
  flag('scale that shows grams', 'weighing', own?.scale);
  if (craft.bench?.experience?.value === 'first build')
    flag('practice board', 'the first joints go on a board that may be spoilt', own?.['practice-board']);
  return tools;
}

export interface Consumable {
  readonly name: string;
  readonly amount: string;
  readonly owned: boolean | undefined;
}

export function consumablesOf(craft: Craft, joints: readonly Joint[]): readonly Consumable[] {
  const own = craft.bench?.tools;
  const list: Consumable[] = wireOf(joints).map(({ gauge, length }) => ({
    name: `${gauge} AWG silicone wire`,
    amount: `${length.toFixed(2)} m`,
    owned: own?.wires?.items.some((item) => item.value === gauge),
  }));
  const solder = joints.reduce((sum, joint) => sum + joint.count * ironFor(joint).solder, 0);
  if (solder > 0) {
    list.push({
      name: 'rosin-core solder, 0.6 to 0.8 mm',
      amount: `${(Math.ceil(solder / 100) / 10).toFixed(1)} m`,
      owned: own?.solder && true,
    });
    list.push({ name: 'flux', amount: 'a little at each joint', owned: own?.flux?.value });
    list.push({ name: 'desoldering braid', amount: '0.2 m', owned: own?.wick?.value });
  }
  const shrink = (size: number, length: number): Consumable => ({
    name: `heat-shrink ${size} mm`,
    amount: `${length} mm`,
    owned: near(own?.['heat-shrink'], size / 1000),
  });
  const has = (part: string): boolean => joints.some((joint) => joint.part === part);
  if (has('capacitor')) list.push(shrink(2, 60));
  if (has('battery-lead')) list.push(shrink(chosenPack(craft)?.facts.cells?.value.series === 1 ? 5 : 10, 40));
  const counted = new Map<string, number>();
  for (const one of screwsOf(craft)) if (one.count) counted.set(one.text, (counted.get(one.text) ?? 0) + one.count);
  for (const [screw, count] of counted)
    list.push({ name: `screws ${screw}`, amount: `${count}, and a few spare`, owned: undefined });
  if (craft.roles.motors && craft.roles.frame?.material?.value !== 'plastic')
    list.push({
      name: 'medium thread locker',
      amount: 'a drop on each motor screw, none on plastic',
      owned: own?.['thread-lock']?.value,
    });
  list.push({
    name: 'cable ties and straps',
    amount: craft.roles.strap ? '10 ties, 1 strap' : '10 ties',
    owned: undefined,
  });
  return list;
}
