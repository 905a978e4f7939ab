/** The propeller's hub is made for another shaft: other size, or another way of holding it. */
import type { Shaft } from '../../text/notation/shaft';
import { exceeds } from '../beyond';
import { check } from '../check';
import { millimetres } from '../words';

const held = (shaft: Shaft): string =>
  shaft.is === 'threaded'
    ? `a ${millimetres(shaft.diameter)} shaft with a nut`
    : shaft.is === 'press'
      ? `a press fit on ${millimetres(shaft.diameter)}`
      : `two M2 screws${shaft.diameter === undefined ? '' : ` round a ${millimetres(shaft.diameter)} shaft`}`;

const differ = (a: number | undefined, b: number | undefined): boolean =>
  a !== undefined && b !== undefined && exceeds(Math.abs(a - b), 0.06e-3);

export default check({
  id: 'propeller-hub-differs',
  group: 'mechanical',
  title: 'Propeller does not sit on the motor',
  severity: 'error',
  danger: 'blades',
  needs: { bore: 'propellers.bore', shaft: 'motors.shaft' },
  judge({ bore, shaft }) {
    const hub = bore.value;
    const motor = shaft.value;
    const says = [{ fact: shaft, says: `the motor has ${held(motor)}` }];
    const wrong = hub.is !== motor.is || differ(hub.diameter, motor.diameter);
    if (!wrong) return undefined;
    // A motor with screw holes has a shaft too, on which a pressed hub sits by friction.
    if (hub.is === 'press' && motor.is === 't-mount' && !differ(hub.diameter, motor.diameter))
      return {
        at: bore,
        with: says,
        severity: 'warning',
        message: `The propeller is made for ${held(hub)}, the motor for ${held(motor)}. It would be held by friction alone. Use the version with screw holes.`,
      };
    if (hub.is === 'threaded' && motor.is === 'threaded' && hub.diameter > motor.diameter)
      return {
        at: bore,
        with: says,
        severity: 'warning',
        message: `The hub has a hole of ${millimetres(hub.diameter)}, the shaft ${millimetres(motor.diameter)}. Without a reducing ring the propeller sits off centre and shakes. Add the ring that came with it, or use one for ${millimetres(motor.diameter)}.`,
      };
    return {
      at: bore,
      with: says,
      message: `The propeller is made for ${held(hub)}, the motor has ${held(motor)}. It does not sit. Use the propeller with the hub for this motor; do not drill it.`,
    };
  },
});

export const explanation = {
  why: 'A propeller that is not held by what it was made for flies off or does not go on at all.',
  remedy: 'Take the same propeller with the hub for this motor; both often exist under one name. Never drill a hub.',
  source:
    'common practice: press fits of 1.0, 1.5 and 2.0 mm, two M2 screws 5 mm apart, or a 5 mm hole for an M5 shaft; 0.06 mm for how exactly a bore is named',
  bad: `
dryfit: build
name: One millimetre bore
parts:
  motors:
    shaft: 1.5 mm press
  propellers:
    size: 40 mm, 3 blades
    bore: «1 mm press»
`,
  good: `
dryfit: build
name: Hub and shaft agree
parts:
  motors:
    shaft: M5
  propellers:
    size: 5.1x3.6x3
    bore: 5 mm
`,
};
