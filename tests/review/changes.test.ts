/** A real repository changed in each way that builders change theirs, and the review a careful friend would write of it. Needs `npm run build`. */
import { afterAll, afterEach, describe, expect, it, vi } from 'vitest';
import { club } from './club';
import { Repository } from './repository';

// Each starts processes, on a machine that may be busy.
vi.setConfig({ testTimeout: 60_000 });

const repository = new Repository(club);
const wren = 'builds/wren.dryfit.yaml';
const tern = 'builds/tern.dryfit.yaml';
const parts = 'parts/club.dryfit.yaml';
const bench = 'bench.dryfit.yaml';
const start = repository.git('rev-parse', 'HEAD').trim();

afterEach(() => {
  repository.git('reset', '-q', '--hard', start);
  repository.reset();
});
afterAll(() => repository.done());

interface Case {
  readonly what: string;
  readonly change: () => void;
  /** Exit code. */
  readonly status: number;
  readonly review: string;
}

const cases: readonly Case[] = [
  {
    what: 'a part swapped for another',
    change() {
      repository.change(wren, 'gale-2207', 'brisk-2306');
    },
    status: 0,
    review: `
main → working tree
1 build differs: no finding is new, none is gone.

builds/wren.dryfit.yaml · Wren: changed
  motors: gale-2207 → brisk-2306
    stator: 2207 → 2306
    kv: 1800 → 1950
    weight: 32 g (weighed 2026-10-02) → 30 g (weighed 2026-10-02)
  without a pack: 276 g (271 to 280) → 267 g (263 to 272): −8 g, more than the ranges
  price: −13.60 EUR for what differs (87.60 → 74.00), cheapest offers, without shipping
`,
  },
  {
    what: 'a part swapped for one that brings a mistake',
    change() {
      repository.change(wren, 'gale-2207', 'squall-2306');
    },
    status: 0,
    review: `
main → working tree
1 build differs: 1 finding is new (1 risky), none is gone.

builds/wren.dryfit.yaml · Wren: changed
  motors: gale-2207 → squall-2306
    stator: 2207 → 2306
    kv: 1800 → 2400
    cells: 4S-6S → 3S-4S
    mount: 16x16 M3 → 16x19 M3
    shaft: M5 → M4
    weight: 32 g (weighed 2026-10-02) → 31 g (weighed 2026-10-02)
  without a pack: 276 g (271 to 280) → 272 g (267 to 276): −4 g, within the ranges
  price: the difference is not known, no shop offers squall-2306
  new: risky, propeller-hub-differs, line 12
      Blade risk: the hub has a hole of 5 mm, the shaft 4 mm. Without a reducing ring the propeller sits
      off centre and shakes. Add the ring that came with it, or use one for 4 mm.
`,
  },
  {
    what: "a value of the build's own laid over the part's",
    change() {
      repository.change(wren, '    use: gale-2207\n', '    use: gale-2207\n    weight: 33 g (weighed 2026-11-01)\n');
    },
    status: 0,
    review: `
main → working tree
1 build differs: no finding is new, none is gone.

builds/wren.dryfit.yaml · Wren: changed
  motors
    weight: 32 g (weighed 2026-10-02) → 33 g (weighed 2026-11-01)
  without a pack: 276 g (271 to 280) → 280 g (275 to 284): +4 g, within the ranges
`,
  },
  {
    what: 'a part taken out and another added',
    change() {
      repository.change(wren, '  video-antenna:\n    use: stalk\n', '  gps:\n    weight: 8 g\n');
    },
    status: 0,
    review: `
main → working tree
1 build differs: no finding is new, none is gone.

builds/wren.dryfit.yaml · Wren: changed
  video antenna: taken out, stalk
  gps: added
    weight: 8 g (not said before)
  without a pack: 276 g (271 to 280) → 279 g (274 to 283): +3 g, within the ranges
  price: the difference is not known, no shop offers stalk
`,
  },
  {
    what: 'a part changed in the parts file only',
    change() {
      repository.change(parts, 'weight: 32 g (weighed 2026-10-02)', 'weight: 36 g (weighed 2026-11-01)');
    },
    status: 0,
    review: `
main → working tree
1 build differs: no finding is new, none is gone.

builds/wren.dryfit.yaml · Wren: unchanged itself, but what it uses changed
  motors: gale-2207 changed in its parts file
    weight: 32 g (weighed 2026-10-02) → 36 g (weighed 2026-11-01)
  without a pack: 276 g (271 to 280) → 292 g (287 to 297): +16 g, more than the ranges

parts/club.dryfit.yaml: changed
  gale-2207: changed, 1 build changes by it
    weight: 32 g (weighed 2026-10-02) → 36 g (weighed 2026-11-01)
`,
  },
  {
    what: 'a build renamed',
    change() {
      repository.move(wren, 'builds/wren-mk2.dryfit.yaml');
    },
    status: 0,
    review: `
main → working tree
1 build differs: no finding is new, none is gone.

builds/wren-mk2.dryfit.yaml · Wren: renamed from builds/wren.dryfit.yaml, every value the same
`,
  },
  {
    what: 'a build moved to another folder, and changed',
    change() {
      repository.move(wren, 'old/wren.dryfit.yaml');
      repository.change('old/wren.dryfit.yaml', '700 g', '650 g');
    },
    status: 0,
    review: `
main → working tree
1 build differs: no finding is new, none is gone.

old/wren.dryfit.yaml · Wren: moved from builds/wren.dryfit.yaml
  the build itself
    goals.weight: 700 g → 650 g
`,
  },
  {
    what: 'a new build with a mistake',
    change() {
      repository.write(
        'builds/plover.dryfit.yaml',
        repository.read(tern).replace('Tern', 'Plover').replace('brisk', 'brist'),
      );
    },
    status: 1,
    review: `
main → working tree
1 build differs: 1 finding is new (1 won't do), none is gone.

builds/plover.dryfit.yaml · Plover: new
  without a pack: 245 g (165 to 325)
  new: won't do, part-unknown, line 9
      No parts file of this workspace has \`brist-2306\`. Did you mean \`brisk-2306\`?
`,
  },
  {
    what: 'a build deleted',
    change() {
      repository.remove(tern);
    },
    status: 0,
    review: `
main → working tree
1 build differs: no finding is new, none is gone.

builds/tern.dryfit.yaml · Tern: deleted
`,
  },
  {
    what: 'comments and line ends only',
    change() {
      repository.write(wren, repository.read(wren).replaceAll('\n', '\r\n').replace('count: 4', 'count: 4   # four'));
    },
    status: 0,
    review: `
main → working tree
1 build differs: no finding is new, none is gone.

builds/wren.dryfit.yaml · Wren: only comments, order or layout changed; every value is the same
`,
  },
  {
    what: 'the id of a part renamed, everywhere',
    change() {
      for (const file of [parts, wren, 'shops.dryfit.yaml']) repository.change(file, 'gale-2207', 'gale-1800');
    },
    status: 0,
    review: `
main → working tree
1 build differs: no finding is new, none is gone.

builds/wren.dryfit.yaml · Wren: changed
  motors: the same part, gale-2207 is called gale-1800 now
  price: the same

parts/club.dryfit.yaml: changed
  gale-2207: is called gale-1800 now, the same in all else

shops.dryfit.yaml: changed
  shops.pellam.offers.gale-2207: no longer said (was pack 1, price 21.90, seen 2026-10-02)
  shops.pellam.offers.gale-1800: pack 1, price 21.90, seen 2026-10-02 (not said before)
`,
  },
  {
    what: 'the id of a part renamed, but not in the build',
    change() {
      repository.change(parts, 'gale-2207', 'gale-1800');
    },
    status: 1,
    review: `
main → working tree
1 build differs: 1 finding is new (1 won't do), none is gone.

builds/wren.dryfit.yaml · Wren: changed
  motors: gale-2207 is in no parts file any more; it is called gale-1800 there now
  without a pack: 276 g (271 to 280) → 267 g (187 to 348): −8 g, within the ranges
  new: won't do, part-unknown, line 9
      No parts file of this workspace has \`gale-2207\`. Add it to a parts file, or write its values here.

parts/club.dryfit.yaml: changed
  gale-2207: is called gale-1800 now, the same in all else
`,
  },
  {
    what: 'another bench, which brings a mistake',
    change() {
      repository.change(bench, 'polarisation: LHCP', 'polarisation: RHCP');
    },
    status: 0,
    review: `
main → working tree
2 builds differ: 1 finding is new (1 risky), none is gone.

builds/wren.dryfit.yaml · Wren: unchanged itself, but what it uses changed
  the bench
    goggles.polarisation: LHCP → RHCP
  new: risky, polarisation-differs, line 16
      The craft's antenna is LHCP, those of the goggles RHCP: opposite hands lose about 15 dB or more,
      which leaves less than 18 % of the range. Use RHCP on the craft, or LHCP on the goggles.

builds/tern.dryfit.yaml · Tern: unchanged itself, but what it uses changed
  the bench
    goggles.polarisation: LHCP → RHCP

bench.dryfit.yaml: changed
  goggles.polarisation: LHCP → RHCP
`,
  },
  {
    what: 'a finding accepted with its reason',
    change() {
      repository.change(bench, 'polarisation: LHCP', 'polarisation: RHCP');
      repository.change(
        wren,
        'goals:',
        'accept:\n  - check: polarisation-differs\n    because: kept apart on purpose\n\ngoals:',
      );
    },
    status: 0,
    review: `
main → working tree
2 builds differ: no finding is new, none is gone, 1 newly accepted.

builds/wren.dryfit.yaml · Wren: changed
  the build itself
    accept: check polarisation-differs, because kept apart on purpose (not said before)
  the bench
    goggles.polarisation: LHCP → RHCP
  new and accepted: risky, polarisation-differs, line 16
      The craft's antenna is LHCP, those of the goggles RHCP: opposite hands lose about 15 dB or more,
      which leaves less than 18 % of the range. Use RHCP on the craft, or LHCP on the goggles.
      Because: kept apart on purpose

builds/tern.dryfit.yaml · Tern: unchanged itself, but what it uses changed
  the bench
    goggles.polarisation: LHCP → RHCP

bench.dryfit.yaml: changed
  goggles.polarisation: LHCP → RHCP
`,
  },
  {
    what: 'settings that show a check graver',
    change() {
      repository.change(bench, 'polarisation: LHCP', 'polarisation: RHCP');
      repository.commit('Another hand');
      repository.change(
        'settings.dryfit.yaml',
        'note:',
        '  polarisation-differs:\n    as: error\n    because: we fly far\nnote:',
      );
    },
    status: 1,
    review: `
main → working tree
2 builds differ: 1 finding is new (1 won't do), none is gone.

builds/wren.dryfit.yaml · Wren: unchanged itself, but what it uses changed
  the settings
    severity.polarisation-differs.as: error (not said before)
    severity.polarisation-differs.because: we fly far (not said before)
  graver now: won't do, polarisation-differs, line 16
      The craft's antenna is LHCP, those of the goggles RHCP: opposite hands lose about 15 dB or more,
      which leaves less than 18 % of the range. Use RHCP on the craft, or LHCP on the goggles.

builds/tern.dryfit.yaml · Tern: unchanged itself, but what it uses changed
  the settings
    severity.polarisation-differs.as: error (not said before)
    severity.polarisation-differs.because: we fly far (not said before)

settings.dryfit.yaml: changed
  severity.polarisation-differs.as: error (not said before)
  severity.polarisation-differs.because: we fly far (not said before)
`,
  },
  {
    what: 'a price',
    change() {
      repository.change('shops.dryfit.yaml', '21.90', '23.90');
    },
    status: 0,
    review: `
main → working tree
1 build differs: no finding is new, none is gone.

builds/wren.dryfit.yaml · Wren: unchanged itself, but what it uses changed
  offers in the shops
    pellam.offers.gale-2207: pack 1, price 21.90 → pack 1, price 23.90
  price: +8.00 EUR for what differs (87.60 → 95.60), cheapest offers, without shipping

shops.dryfit.yaml: changed
  shops.pellam.offers.gale-2207: pack 1, price 21.90, seen 2026-10-02 → pack 1, price 23.90, seen 2026-10-02
`,
  },
  {
    what: 'a word about a part that changes nothing',
    change() {
      repository.change(parts, 'kind: frame', 'kind: frame\n    source: a friend');
    },
    status: 0,
    review: `
main → working tree
No build differs: no finding is new, none is gone.

parts/club.dryfit.yaml: changed
  lath-220: changed, no build changes by it
    source: a friend (not said before)
`,
  },
  {
    what: 'a misspelt key in the parts file',
    change() {
      repository.change(parts, 'weight: 5 g', 'wieght: 5 g');
    },
    status: 1,
    review: `
main → working tree
1 build differs: 1 finding is new (1 won't do), none is gone.

builds/wren.dryfit.yaml · Wren: unchanged itself, but what it uses changed
  video antenna: stalk changed in its parts file
    weight: no longer said (was 5 g)
    wieght: 5 g (not said before)
  without a pack: 276 g (271 to 280) → 277 g (271 to 283): +1 g, within the ranges

parts/club.dryfit.yaml: changed
  stalk: changed, 1 build changes by it
    weight: no longer said (was 5 g)
    wieght: 5 g (not said before)
  new: won't do, key-unknown, line 41
      \`stalk\` has no \`wieght\`. Did you mean \`weight\`?
`,
  },
  {
    what: 'a part moved into another parts file',
    change() {
      const text = '  stalk:\n    kind: video-antenna\n    polarisation: LHCP\n    weight: 5 g\n';
      repository.change(parts, text, '');
      repository.write('parts/antennas.dryfit.yaml', `dryfit: parts\nparts:\n${text}`);
    },
    status: 0,
    review: `
main → working tree
No build differs: no finding is new, none is gone.

parts/antennas.dryfit.yaml: new
  stalk: moved here, the same in all

parts/club.dryfit.yaml: changed
  stalk: moved to parts/antennas.dryfit.yaml
`,
  },
  {
    what: 'a text that is no YAML any more',
    change() {
      repository.change(wren, '    use: stalk', '    use: "stalk');
    },
    status: 1,
    review: `
main → working tree
1 build differs: 2 findings are new (2 won't do), none is gone.

builds/wren.dryfit.yaml · Wren: changed
  video antenna: stalk → stalk goals: weight: 700 g
    polarisation: no longer said (was LHCP)
    weight: no longer said (was 5 g)
  the build itself
    goals.weight: no longer said (was 700 g)
  without a pack: 276 g (271 to 280) → 277 g (271 to 283): +1 g, within the ranges
  price: the difference is not known, no shop offers stalk, stalk goals: weight: 700 g
  new: won't do, part-unknown, line 16
      No parts file of this workspace has \`stalk goals: weight: 700 g\`. Add it to a parts file, or write
      its values here.
  new: won't do, yaml-syntax, line 19
      A closing quote, bracket or a colon is missing here.
`,
  },
];

describe('a change of', () => {
  it.each(cases)('$what', ({ change, status, review }) => {
    change();
    const ran = repository.dryfit('review', 'main');
    expect(ran.err).toBe('');
    expect(`\n${ran.out}`).toBe(review);
    expect(ran.status).toBe(status);
  });
});
