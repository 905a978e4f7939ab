/** Limits of tools and of the order of work. */
import { edge } from './boundary';

const gatesBefore = { 'gates.harness': '2026-11-20', 'gates.joints': '2026-11-20', 'gates.motor-wires': '2026-11-20' };

export const assembly = [
  edge('current-limiter-too-large', 'bench.tools.current-limiter', ['3 A', 'silent'], ['3.01 A', 'information']),
  edge('current-limiter-too-large', 'bench.tools.current-limiter', ['2 A', 'silent'], ['2.01 A', 'information'], {
    'packs.main.cells': '2S',
  }),
  edge('current-limiter-too-large', 'packs.main.cells', ['3S', 'silent'], ['2S', 'information'], {
    'bench.tools.current-limiter': '2.5 A',
  }),
  // Keys and drivers are named to a tenth of a millimetre.
  edge('hex-driver-missing', 'bench.tools.hex', ['1.5 mm, 2.04 mm', 'silent'], ['1.5 mm, 2.05 mm', 'warning']),
  edge('nut-driver-missing', 'bench.tools.nuts', ['4 mm, 7.96 mm', 'silent'], ['4 mm, 7.95 mm', 'warning']),
  edge('insulation-missing', 'bench.tools.heat-shrink', ['3.5 mm', 'silent'], ['3.6 mm', 'information']),
  // On one day the order of two gates cannot be told.
  edge('gate-skipped', 'gates.dry-fit', ['2026-11-20', 'silent'], ['2026-11-21', 'warning'], gatesBefore),
  edge('iron-temperature-plan', 'bench.tools.iron-temperature', ['400 C', 'silent'], ['401 C', 'information']),
  edge('iron-temperature-plan', 'bench.tools.iron-temperature', ['315 C', 'silent'], ['314 C', 'information']),
  edge('iron-temperature-plan', 'bench.tools.iron-temperature', ['429 C', 'information'], ['430 C', 'warning']),
  edge('iron-too-weak', 'bench.tools.iron', ['60 W', 'silent'], ['59.99 W', 'warning']),
  edge('iron-too-weak', 'parts.battery-lead.wire', ['15 AWG', 'silent'], ['14 AWG', 'warning']),
  edge('solder-mismatch', 'bench.tools.iron-temperature', ['350 C', 'silent'], ['349 C', 'information']),
  edge('wire-for-joint-missing', 'bench.tools.wires', ['12 AWG', 'silent'], ['13 AWG', 'information']),
  // Signal wires of 28 AWG; a neighbouring gauge does.
  edge('wire-for-joint-missing', 'bench.tools.wires', ['12 AWG, 26 AWG', 'silent'], ['12 AWG, 25 AWG', 'information'], {
    'parts.receiver.link': 'openlink',
  }),
  edge('wire-for-joint-missing', 'bench.tools.wires', ['12 AWG, 30 AWG', 'silent'], ['12 AWG, 31 AWG', 'information'], {
    'parts.receiver.link': 'openlink',
  }),
  edge('pad-and-wire-size', 'parts.motors.wire', ['20 AWG', 'silent'], ['19 AWG', 'warning']),
  edge('pad-and-wire-size', 'parts.esc.pads', ['18 AWG', 'silent'], ['19 AWG', 'warning']),
  // From 24 AWG on.
  edge('wire-for-joint-missing', 'parts.battery-lead.wire', ['24 AWG', 'silent'], ['23 AWG', 'information'], {
    'bench.tools.wires': '25 AWG',
  }),
];
