/** The analog video channels near 5.8 GHz by band letter and number. Tables as in widely used open flight firmware. */
const bands: Readonly<Record<string, readonly number[]>> = {
  A: [5865, 5845, 5825, 5805, 5785, 5765, 5745, 5725],
  B: [5733, 5752, 5771, 5790, 5809, 5828, 5847, 5866],
  E: [5705, 5685, 5665, 5645, 5885, 5905, 5925, 5945],
  F: [5740, 5760, 5780, 5800, 5820, 5840, 5860, 5880],
  R: [5658, 5695, 5732, 5769, 5806, 5843, 5880, 5917],
};

export type Channel =
  | { readonly is: 'known'; readonly megahertz: number }
  | { readonly is: 'ambiguous' }
  | { readonly is: 'unknown' };

/** `R3`, `5740 MHz`, `5.74 GHz`. Band L has two tables that contradict one another. */
export function channelOf(text: string): Channel {
  const said = text.trim().toUpperCase();
  const frequency = /^(\d+(?:\.\d+)?)\s*(MHZ|GHZ)$/.exec(said);
  if (frequency) return { is: 'known', megahertz: Number(frequency[1]) * (frequency[2] === 'GHZ' ? 1000 : 1) };
  const named = /^([A-Z])\s?([1-8])$/.exec(said);
  if (named?.[1] === 'L') return { is: 'ambiguous' };
  const megahertz = named ? bands[named[1]!]?.[Number(named[2]) - 1] : undefined;
  return megahertz === undefined ? { is: 'unknown' } : { is: 'known', megahertz };
}

export const channelNames: readonly string[] = Object.entries(bands).flatMap(([band, list]) =>
  list.map((_, i) => `${band}${i + 1}`),
);

/** MHz either side of the middle that an analog picture takes: about 18 MHz in all, as reported. */
export const halfWidth = 9;

/** Channels wholly inside a span, nearest to a wanted frequency first. */
export const channelsInside = (least: number, most: number, near: number): readonly string[] =>
  channelNames
    .map((name) => ({ name, at: channelOf(name) }))
    .flatMap(({ name, at }) =>
      at.is === 'known' && at.megahertz - halfWidth >= least && at.megahertz + halfWidth <= most
        ? [{ name, off: Math.abs(at.megahertz - near) }]
        : [],
    )
    .sort((a, b) => a.off - b.off)
    .map(({ name }) => name);
