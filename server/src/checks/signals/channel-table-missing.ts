/** Channel and power are set by wire without the table of the unit. */
import { check } from '../check';

export default check({
  id: 'channel-table-missing',
  group: 'signals',
  title: 'No channel table for the transmitter',
  severity: 'information',
  needs: { control: 'video-transmitter.control', table: 'video-transmitter.channel-table' },
  judge({ control, table }) {
    if (table.value || !control.value.startsWith('one-wire')) return undefined;
    return {
      at: table,
      with: [{ fact: control, says: `set by ${control.value}` }],
      message:
        "Channel and power are set over one wire, and the unit's table is not at hand: the same number may mean another power. Get the table from its maker.",
    };
  },
});

export const explanation = {
  why: 'Without the table level 1 may be 25 mW on one unit and 400 mW on another.',
  remedy: "Get the table from the unit's maker and enter it before the first flight.",
  source: 'documentation of widely used open flight firmware',
  bad: `
dryfit: build
name: Example
parts:
  video-transmitter:
    control: one-wire 4800
    channel-table: «no»
`,
  good: `
dryfit: build
name: Example
parts:
  video-transmitter:
    control: one-wire 4800
    channel-table: yes
`,
};
