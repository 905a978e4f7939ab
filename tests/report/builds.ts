/** Builds of common practice as their builders would write them, with lines to add. */

/** The five inch freestyle craft: 2207 motors, six cells of 1.3 Ah, three blades. */
export const freestyle = (
  more: { flight?: string; motors?: string; pack?: string; parts?: string; kv?: number } = {},
): string => `
dryfit: build
name: Plain 5
craft: freestyle-5
parts:
  frame:
    wheelbase: 225 mm
    weight: 118 g
  motors:
    stator: 2207
    kv: ${more.kv ?? 1800}
    weight: 33 g
${lines(more.motors, 4)}  propellers:
    size: 5.1x4.3x3
    weight: 4.5 g
  stack:
    weight: 25 g
  camera:
    weight: 9 g
  video-transmitter:
    system: analog
    level: 600 mW
    channel: R3
    weight: 9 g
  battery-lead:
    plug: XT60
    wire: 12 AWG
    length: 100 mm
    weight: 16 g
${lines(more.parts, 2)}packs:
  main:
    cells: 6S
    chemistry: LiPo
    capacity: 1300 mAh
    discharge: 100 C
    weight: 205 g
${lines(more.pack, 4)}flight:
  pack: main
${lines(more.flight, 2)}`;

/** The seven inch long-range craft on cylindrical cells. */
export const longRange = (pack = ''): string => `
dryfit: build
name: Plain 7
craft: long-range-7
parts:
  motors:
    stator: 2806.5
    kv: 1300
  propellers:
    size: 7x3.5x3
  frame:
    weight: 170 g
packs:
  main:
    cells: 6S2P
    chemistry: Li-ion
    capacity: 6000 mAh
    discharge: 10 C
${lines(pack, 4)}flight:
  reserve: 0 %
`;

function lines(text: string | undefined, indent: number): string {
  return (text ?? '')
    .split('\n')
    .filter((line) => line.trim())
    .map((line) => `${' '.repeat(indent)}${line}\n`)
    .join('');
}
