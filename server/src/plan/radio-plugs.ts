/** Which radio plugs go together. Threads and centre contacts count apart: that is the trap of the SMA family. */
export type Mating = 'mates' | 'soldered' | 'open' | 'crushed' | 'same half' | 'unlike';

const half = (plug: string): 'plug' | 'jack' | undefined =>
  /\bjack\b/i.test(plug) ? 'jack' : /\bplug\b/i.test(plug) ? 'plug' : undefined;

/** The kind of plug without its half; nothing for words that name none. */
export function plugFamily(text: string): string | undefined {
  const known = /RP-?SMA|SMA|MMCX|U\.?FL|IPEX\s*1|MHF1|MHF4|IPEX\s*4/i.exec(text)?.[0].toUpperCase().replace(/\s/g, '');
  if (!known) return undefined;
  if (known === 'RPSMA' || known === 'RP-SMA') return 'RP-SMA';
  if (known === 'IPEX1' || known === 'MHF1' || known === 'UFL') return 'U.FL';
  return known === 'IPEX4' ? 'MHF4' : known;
}

export function mating(antenna: string, transmitter: string): Mating {
  if (antenna === 'soldered' || transmitter === 'soldered') return 'soldered';
  const a = plugFamily(antenna);
  const b = plugFamily(transmitter);
  const threaded = (family: string | undefined): boolean => family === 'SMA' || family === 'RP-SMA';
  if (threaded(a) && threaded(b)) {
    if (half(antenna) === half(transmitter)) return 'same half';
    if (a === b) return 'mates';
    // SMA plug and RP-SMA jack carry a pin each; RP-SMA plug and SMA jack a socket each.
    const plug = half(antenna) === 'plug' ? a : b;
    return plug === 'SMA' ? 'crushed' : 'open';
  }
  return a === b ? 'mates' : 'unlike';
}
