/** The charger has neither the plug of the pack nor an adapter for it. */
import { samePlug } from '../../plan/battery-plugs';
import { check } from '../check';

export default check({
  id: 'charger-plug-missing',
  group: 'battery',
  title: 'Charger has no lead for this plug',
  severity: 'warning',
  needs: { plug: 'pack.plug', leads: 'bench.charger.plugs' },
  when: (_, pack) => pack?.facts.plug?.value !== 'none',
  judge({ plug, leads }) {
    if (leads.items.some((item) => samePlug(item.value, plug.value))) return undefined;
    return {
      with: [{ fact: leads, says: `the charger has ${leads.text}` }],
      message: `The pack has ${plug.text}; your charger has leads for ${leads.text}. Add a charging lead for ${plug.text}.`,
    };
  },
});

export const explanation = {
  why: 'Without a lead the pack stays empty, and home-made leads are how plugs get reversed.',
  remedy: 'Add a charging lead for the plug.',
  source: 'common practice',
  bad: `
dryfit: build
name: Example
packs:
  main:
    plug: «XT30»
---
dryfit: bench
charger:
  plugs: XT60
`,
  good: `
dryfit: build
name: Example
packs:
  main:
    plug: XT60H
---
dryfit: bench
charger:
  plugs: XT60
`,
};
