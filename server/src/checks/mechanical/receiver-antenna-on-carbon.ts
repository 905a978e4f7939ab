/** The receiver's antenna runs along a plate that conducts. */

import { check } from '../check';

export default check({
  id: 'receiver-antenna-on-carbon',
  group: 'mechanical',
  title: 'Receiver antenna lies along carbon',
  severity: 'warning',
  needs: { along: 'receiver-antenna.along-carbon', material: 'frame.material' },
  judge({ along, material }) {
    if (!along.value || (material.value !== 'carbon' && material.value !== 'aluminium')) return undefined;
    return {
      at: along,
      with: [{ fact: material, says: `the frame is of ${material.text}` }],
      message: `The receiver's antenna lies along a ${material.text} plate, which screens it. The link fades on one side. Lead it away from the plate in a tube or on a tie.`,
    };
  },
});

export const explanation = {
  why: 'Carbon and metal screen radio: on one side of the craft the link fades.',
  remedy: 'Lead the active part of the antenna away from the plates, in a tube or on a tie.',
  source: 'common practice',
  bad: `
dryfit: build
name: Example
parts:
  frame:
    material: carbon
  receiver-antenna:
    along-carbon: «yes»
`,
  good: `
dryfit: build
name: Example
parts:
  frame:
    material: plastic
  receiver-antenna:
    along-carbon: yes
`,
};
