/** Limits of what meets what: lengths in millimetres, patterns, threads and counts of screws. */
import { edge } from './boundary';

const nut = { 'parts.motors.shaft': 'M5' };

export const mechanical = [
  edge('board-rotation-unset', 'setup.board-rotation', ['270 deg', 'silent'], ['271 deg', 'error']),
  edge('board-rotation-unset', 'parts.flight-controller.rotated', ['0 deg', 'silent'], ['1 deg', 'warning'], {
    'setup.board-rotation': undefined,
  }),
  edge('board-too-wide-for-bay', 'parts.esc.outside', ['45x40x7 mm', 'silent'], ['45x40.1x7 mm', 'warning']),
  edge('board-too-wide-for-bay', 'parts.esc.outside', ['50x40x7 mm', 'silent'], ['50.1x40x7 mm', 'warning']),
  // Holes with 0.35 mm of play go together, up to 0.75 mm with grommets between; patterns are written to a tenth.
  ...(['flight-controller', 'esc'] as const).flatMap((board) =>
    [
      {
        frame: '30.5x30.5 M3',
        fits: '30.2x30.2 M3',
        near: '30.1x30.1 M3',
        soft: '29.8x29.8 M3',
        apart: '29.7x29.7 M3',
      },
      {
        frame: '25.5x25.5 M2',
        fits: '25.8x25.8 M2',
        near: '25.9x25.9 M2',
        soft: '26.2x26.2 M2',
        apart: '26.3x26.3 M2',
      },
    ].flatMap(({ frame, fits, near, soft, apart }) =>
      (
        [
          [fits, 'silent', near, 'warning'],
          [soft, 'warning', apart, 'error'],
        ] as const
      ).map(([last, says, first, then]) =>
        edge(`${board}-holes-off-frame`, `parts.${board}.mount`, [last, says], [first, then], {
          'parts.frame.stack-mounts': frame,
        }),
      ),
    ),
  ),
  edge(
    'boards-differ-in-holes',
    'parts.flight-controller.mount',
    ['30.2x30.2 M3', 'silent'],
    ['30.1x30.1 M3', 'warning'],
  ),
  edge(
    'video-transmitter-holes-off-frame',
    'parts.video-transmitter.mount',
    ['20.7x20.7 M2', 'silent'],
    ['20.8x20.8 M2', 'error'],
  ),
  edge('motor-holes-off-arm', 'parts.motors.mount', ['16.3x16.3 M3', 'silent'], ['16.4x16.4 M3', 'error']),
  edge('motor-holes-off-arm', 'parts.motors.mount', ['19.3x19.3 M3', 'silent'], ['19.4x19.4 M3', 'error'], {
    'parts.frame.motor-mounts': '16-19 M3',
  }),
  // Half a millimetre of slack in any cage; cages of 20 to 22 mm are one class, measured to a tenth.
  ...(
    [
      ['14 mm', '14.5 mm', '14.6 mm'],
      ['19 mm', '19.5 mm', '19.6 mm'],
      ['20 mm', '22.1 mm', '22.2 mm'],
      ['22 mm', '22.5 mm', '22.6 mm'],
      ['28 mm', '28.5 mm', '28.6 mm'],
    ] as const
  ).map(([cage, fits, wide]) =>
    edge('camera-too-wide-for-cage', 'parts.camera.width', [fits, 'silent'], [wide, 'error'], {
      'parts.frame.camera-widths': cage,
    }),
  ),
  edge('camera-without-brackets', 'parts.camera.width', ['27.5 mm', 'silent'], ['27.4 mm', 'information']),
  edge('camera-without-brackets', 'parts.camera.width', ['19.9 mm', 'silent'], ['19.8 mm', 'information'], {
    'parts.frame.camera-widths': '22 mm',
  }),
  edge('esc-wider-than-arm', 'parts.esc.outside', ['16x32x6 mm', 'silent'], ['16.1x32x6 mm', 'information']),
  // Three inches are sold as 76 mm as well.
  edge(
    'flight-controller-hard-mounted',
    'parts.propellers.size',
    ['75.9 mm, 3 blades', 'silent'],
    ['76 mm, 3 blades', 'information'],
  ),
  edge('motor-screw-into-winding', 'parts.motors.screws', ['M3x9 cap', 'silent'], ['M3x9.1 cap', 'error']),
  edge('motor-screw-into-winding', 'parts.motors.screws', ['M2x7 cap', 'silent'], ['M2x7.1 cap', 'warning'], {
    'parts.motors.mount': '12x12 M2',
    'parts.motors.thread-depth': undefined,
  }),
  edge('motor-screw-into-winding', 'parts.motors.washer', ['1 mm', 'silent'], ['0.9 mm', 'error']),
  edge('motor-screw-thread-differs', 'parts.motors.screws', ['M2x8 button', 'silent'], ['M2.1x8 button', 'error']),
  edge('motor-screw-thread-differs', 'parts.frame.motor-mounts', ['12x12 M2', 'silent'], ['12x12 M1.9', 'error'], {
    'parts.motors.screws': 'M2x8 button',
  }),
  edge('motor-screw-too-short', 'parts.motors.screws', ['M3x8.5 cap', 'silent'], ['M3x8.4 cap', 'warning']),
  edge('motor-screw-too-short', 'parts.motors.screws', ['M3x7.5 cap', 'warning'], ['M3x7.4 cap', 'error']),
  edge('motor-screw-too-short', 'parts.motors.screws', ['M2x7.5 cap', 'silent'], ['M2x7.4 cap', 'warning']),
  edge('motor-screw-too-short', 'parts.motors.screws', ['M2x7.2 cap', 'warning'], ['M2x7.1 cap', 'error']),
  edge('motor-screw-too-short', 'parts.motors.soft-mount', ['1 mm', 'silent'], ['1.1 mm', 'warning'], {
    'parts.motors.screws': 'M3x9 cap',
  }),
  edge('motor-screws-too-few', 'parts.motors.screws-each', ['4', 'silent'], ['3', 'warning']),
  edge('motor-screws-too-few', 'parts.motors.screws-each', ['3', 'silent'], ['2', 'warning'], {
    'parts.motors.mount': '3 holes on 6.6 mm M1.4',
  }),
  edge('motor-screws-too-few', 'parts.fasteners.bag.count', ['16', 'silent'], ['15', 'warning'], {
    'parts.motors.screws-each': undefined,
    'parts.motors.count': '4',
    'parts.fasteners.bag.for': 'motors',
    'parts.fasteners.bag.screw': 'M3x8 cap',
  }),
  // 295 / 2 - 25
  edge('motor-wires-too-short', 'parts.motors.wire-length', ['122.5 mm', 'silent'], ['122.4 mm', 'information']),
  edge('pack-wider-than-plate', 'packs.main.outside', ['75x42x38 mm', 'silent'], ['75x42.1x38 mm', 'warning']),
  // Bores are named to a tenth; 0.06 mm more or less is how well that is kept.
  edge('propeller-hub-differs', 'parts.propellers.bore', ['1.44 mm press', 'silent'], ['1.43 mm press', 'error']),
  edge('propeller-hub-differs', 'parts.propellers.bore', ['1.56 mm press', 'silent'], ['1.57 mm press', 'error']),
  edge('propeller-hub-differs', 'parts.propellers.bore', ['5.06 mm', 'silent'], ['5.07 mm', 'warning'], nut),
  edge('propeller-hub-differs', 'parts.propellers.bore', ['4.94 mm', 'silent'], ['4.93 mm', 'error'], nut),
  edge('propeller-nut-short-of-thread', 'parts.propellers.hub-thickness', ['8 mm', 'silent'], ['8.1 mm', 'warning']),
  edge('propeller-tight-in-duct', 'parts.frame.duct-diameter', ['41 mm', 'silent'], ['40.9 mm', 'warning']),
  edge('propeller-tight-in-duct', 'parts.frame.duct-diameter', ['40.1 mm', 'warning'], ['40 mm', 'error']),
  edge('propeller-tight-in-duct', 'parts.frame.duct-diameter', ['46 mm', 'silent'], ['46.1 mm', 'information']),
  // 5.1 in are 129.54 mm; with 6 mm, and with 2 mm, times the square root of two: 191.68 and 186.03 mm.
  edge('propeller-tips-meet', 'parts.frame.wheelbase', ['191.7 mm', 'silent'], ['191.6 mm', 'warning']),
  edge('propeller-tips-meet', 'parts.frame.wheelbase', ['186.1 mm', 'warning'], ['186 mm', 'error']),
  // Neighbours of a hexagon are half the diagonal apart: 132 - 126 = 6, 128 - 126 = 2.
  edge('propeller-tips-meet', 'parts.frame.wheelbase', ['264 mm', 'silent'], ['263.9 mm', 'warning'], {
    'parts.frame.geometry': 'hexa',
    'parts.propellers.size': '126 mm, 3 blades',
  }),
  edge('propeller-tips-meet', 'parts.frame.wheelbase', ['256 mm', 'warning'], ['255.9 mm', 'error'], {
    'parts.frame.geometry': 'hexa',
    'parts.propellers.size': '126 mm, 3 blades',
  }),
  // A fifth of a millimetre is rounding between inches and millimetres: 5.1 in are 129.54 mm.
  edge('propeller-too-large-for-frame', 'parts.propellers.size', ['5.1x4x3', 'silent'], ['5.11x4x3', 'warning']),
  edge('propeller-too-large-for-frame', 'parts.propellers.size', ['5.2x4x3', 'warning'], ['5.21x4x3', 'error']),
  edge(
    'propeller-too-large-for-frame',
    'parts.propellers.size',
    ['129.7 mm, 3 blades', 'silent'],
    ['129.8 mm, 3 blades', 'warning'],
  ),
  // With 5 mm between the tips the label counts for less: 152.4 and 5 mm, times the square root of two.
  edge('propeller-too-large-for-frame', 'parts.frame.wheelbase', ['222.6 mm', 'warning'], ['222.5 mm', 'error'], {
    'parts.frame.geometry': 'x',
  }),
  edge('stack-screw-too-thick', 'parts.flight-controller.hole', ['3 mm', 'silent'], ['2.9 mm', 'error']),
  ...(['M2', 'M3'] as const).map((thread) =>
    edge(
      'stack-screw-too-thick',
      'parts.flight-controller.hole',
      [thread === 'M3' ? '4.2 mm' : '3.2 mm', 'silent'],
      [thread === 'M3' ? '4.3 mm' : '3.3 mm', 'warning'],
      { 'parts.frame.stack-screws': `${thread}x25 cap`, 'parts.flight-controller.grommets': 'no' },
    ),
  ),
  edge('stack-too-tall', 'parts.frame.stack-height', ['25 mm', 'silent'], ['24.9 mm', 'warning']),
  edge('stack-too-tall', 'parts.frame.stack-height', ['20 mm', 'warning'], ['19.9 mm', 'error']),
  edge('standoff-thread-differs', 'parts.frame.standoff-thread', ['M3', 'silent'], ['M2.9', 'error']),
  // Twice 38 and 45 mm once round.
  edge('strap-too-short', 'parts.strap.length', ['226 mm', 'silent'], ['225.9 mm', 'information']),
  edge('strap-too-short', 'parts.strap.length', ['206 mm', 'information'], ['205.9 mm', 'warning']),
  // Half a millimetre more is how webbing varies.
  ...[10, 12, 16, 20, 25].map((slot) =>
    edge(
      'strap-wider-than-slots',
      'parts.strap.width',
      [`${slot + 0.5} mm`, 'silent'],
      [`${slot + 0.6} mm`, 'warning'],
      {
        'parts.frame.strap-width': `${slot} mm`,
      },
    ),
  ),
];
