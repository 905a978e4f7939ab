/** The firmware is older than its support for this chip. */
import { check } from '../check';

export default check({
  id: 'firmware-older-than-chip',
  group: 'signals',
  title: 'Firmware too old for the chip',
  severity: 'warning',
  needs: { mcu: 'flight-controller.mcu', firmware: 'setup.firmware' },
  judge({ mcu, firmware }) {
    const version = /(\d+)\.(\d+)/.exec(firmware.value);
    if (mcu.value !== 'AT32F435' || !version || !/open flight firmware/i.test(firmware.value)) return undefined;
    const [major, minor] = [Number(version[1]), Number(version[2])];
    // Versions by year (2025.12) are newer than those by number.
    if (major > 4 || (major === 4 && minor >= 5)) return undefined;
    return {
      at: firmware,
      with: [{ fact: mcu, says: 'the chip is AT32F435' }],
      message: `${mcu.value} runs from version 4.5 on; ${version[0]} is set. Use 4.5 or newer.`,
    };
  },
});

export const explanation = {
  why: 'Firmware from before the chip does not run on it.',
  remedy: 'Use a newer version.',
  source: 'release notes of widely used open flight firmware: AT32F435 from 4.5',
  bad: `
dryfit: build
name: Example
parts:
  flight-controller:
    mcu: AT32F435
setup:
  firmware: «open flight firmware 4.4»
`,
  good: `
dryfit: build
name: Example
parts:
  flight-controller:
    mcu: AT32F435
setup:
  firmware: open flight firmware 4.5
`,
};
