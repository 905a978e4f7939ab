/** Two devices on the I2C bus have one address. */
import { check } from '../check';

export default check({
  id: 'bus-address-doubled',
  group: 'signals',
  title: 'Two devices with one bus address',
  severity: 'warning',
  needs: { controller: 'flight-controller.i2c', gps: 'gps.protocol' },
  judge(_, craft) {
    const board = craft.roles['flight-controller'];
    const puck = craft.roles.gps;
    const pairs = [
      [puck?.['barometer-address'], board?.['barometer-address'], 'barometer'],
      [puck?.['compass-address'], board?.['compass-address'], 'compass'],
    ] as const;
    return pairs.flatMap(([outside, own, what]) =>
      outside && own && outside.value.toLowerCase() === own.value.toLowerCase()
        ? [
            {
              at: outside,
              with: [{ fact: own, says: `the board's own ${what}` }],
              message: `The ${what} of the satellite receiver and that of the flight controller both answer at ${outside.value}. One must be switched off or given another address.`,
            },
          ]
        : [],
    );
  },
});

export const explanation = {
  why: 'Two devices that answer at one address block the bus; compass or barometer fail.',
  remedy: 'Switch one off, move it to another bus, or change its address if it has a jumper.',
  source: 'I2C addresses of common barometers and compasses as in open flight firmware',
  bad: `
dryfit: build
name: Example
parts:
  flight-controller:
    i2c: yes
    barometer-address: 0x76
  gps:
    protocol: UBX
    barometer-address: «0x76»
`,
  good: `
dryfit: build
name: Example
parts:
  flight-controller:
    i2c: yes
    barometer-address: 0x76
  gps:
    protocol: UBX
    barometer-address: 0x77
`,
};
