/** The video transmitter gets more or fewer volts than it takes, as it is wired. */
import { feedOf, isFedByBattery, wiringOf } from '../../plan/feeds';
import { check } from '../check';
import { packOnInput } from '../pack-on-input';
import { railOnDevice } from '../rail-on-device';

export default check({
  id: 'video-transmitter-voltage-wrong',
  group: 'power',
  title: 'Video transmitter gets the wrong voltage',
  severity: 'error',
  danger: 'fire',
  needs: { cells: 'pack.cells', input: 'video-transmitter.supply', full: 'worked.pack-full-voltage' },
  may: { chemistry: 'pack.chemistry', landing: 'pack.landing-voltage' },
  when: (craft) => wiringOf(craft, 'video-transmitter')?.power !== undefined,
  judge(facts, craft, pack) {
    if (isFedByBattery(craft, 'video-transmitter')) return packOnInput('video transmitter', facts);
    return railOnDevice('video transmitter', feedOf(craft, 'video-transmitter', pack), facts.input);
  },
});

export const explanation = {
  why: 'Too many volts destroy the unit at plug-in; too few and it never starts, or drops the picture in a punch-out.',
  remedy: 'Feed it from a rail inside its range.',
  source: "the maker's supply range; full voltage 4.20 V a cell, 4.35 V for high-voltage LiPo: common practice",
  bad: `
dryfit: build
name: Transmitter on the battery
parts:
  video-transmitter:
    supply: 7 V - 17 V
packs:
  main:
    cells: «6S»
wiring:
  video-transmitter:
    power: battery
`,
  good: `
dryfit: build
name: Transmitter on a rail
parts:
  video-transmitter:
    supply: 7 V - 17 V
packs:
  main:
    cells: 6S
wiring:
  video-transmitter:
    power: 9V
`,
};
