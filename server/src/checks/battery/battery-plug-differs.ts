/** The pack's plug and the craft's plug are of different kinds or the same half. */
import type { Craft } from '../../build/craft';
import { adaptersOf, joins } from '../../plan/adapters';
import { samePlug } from '../../plan/battery-plugs';
import { check } from '../check';

/** A cable between the two plugs, as a rule good for little current. */
const adapted = (craft: Craft, pack: string, lead: string): boolean =>
  adaptersOf(craft, 'battery cable').some((cable) =>
    joins(
      cable,
      (text) => text.includes(pack),
      (text) => text.includes(lead),
    ),
  );

export default check({
  id: 'battery-plug-differs',
  group: 'battery',
  title: "Pack and craft don't plug together",
  severity: 'error',
  needs: { pack: 'pack.plug', craft: 'battery-lead.plug' },
  may: { packHalf: 'pack.plug-half', craftHalf: 'battery-lead.plug-half' },
  judge({ pack, craft, packHalf, craftHalf }, build) {
    if (pack.value === 'none' || craft.value === 'none') return undefined;
    if (adapted(build, pack.value, craft.value)) return undefined;
    if (!samePlug(pack.value, craft.value))
      return {
        at: craft,
        with: [{ fact: pack, says: `the pack has ${pack.value}` }],
        message: `The craft has ${craft.value}, the pack ${pack.value}; they do not mate. Solder the plug of the pack (${pack.value}) to the craft, or use packs with ${craft.value}.`,
      };
    if (packHalf && craftHalf && packHalf.value === craftHalf.value)
      return {
        at: craftHalf,
        with: [{ fact: packHalf, says: `the pack has ${packHalf.value} too` }],
        message: `Craft and pack both carry the half with ${craftHalf.value} of the ${craft.value}; they do not mate. The battery usually carries the sockets, the craft the pins.`,
      };
    return undefined;
  },
});

export const explanation = {
  why: 'A plug that does not mate, or has the same half on both sides, leaves the craft on the bench.',
  remedy: 'Solder the plug of the packs to the craft, or choose packs with the plug of the craft.',
  source: 'common practice: by habit the battery carries the half with sockets',
  bad: `
dryfit: build
name: Small plug
parts:
  battery-lead:
    plug: «XT30»
packs:
  main:
    plug: XT60
`,
  good: `
dryfit: build
name: Same plug
parts:
  battery-lead:
    plug: XT60
packs:
  main:
    plug: XT60
`,
};
