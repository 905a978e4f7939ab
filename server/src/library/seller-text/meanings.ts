/** What the words beside a value are about when it is the value of a field; the one place to say so for a field. Knows no word of a page. */
import type { About } from './stems';

/**
 * By `kind.field` or, for all kinds, by field; ways of saying it parted by `|`. Each names what the words must be about
 * and, with `?`, what they may be about besides. Words about anything else are about another thing, so that nothing is
 * read. A way that only has `?` means that the unit or the word itself tells the field; `...` allows all but another thing's words.
 */
const ways: Readonly<Record<string, string>> = {
  weight:
    'weight size? wire? antenna? screw? connector? pieces? standoff? scale? grommet? idle? overall? | wire? antenna? screw? pieces? scale? overall?',
  outside:
    'size length? width? height? thickness? plate? weight? wire? connector? together? overall? diameter? | length width height? thickness? overall? diameter? | length? width? height? thickness? plate? overall? diameter?',
  supply:
    'voltage input? supply? cells? continuous? frequency? most? power? | supply cells? input? voltage? power? | input cells? power? | input? supply? voltage? need? power?',
  current:
    'draw current? voltage? most? power? supply? mount? | current draw? supply? voltage? most? mount? | draw? current? mount?',
  sensitivity: 'sensitivity? most? link? frequency? measuring?',
  gain: '...',
  hole: 'hole diameter? size? mount? grommet? thread? pattern? screw? thickness?',
  grommets: 'grommet together? supplied? pieces? mount? hole? screw? thread?',

  'frame.wheelbase': 'wheelbase motor? pattern? steep? size? shaft? diameter?',
  'frame.geometry': 'geometry arm? sort?',
  'frame.largest-propeller': 'prop most? size? diameter? advice? together? supply?',
  'frame.arm-thickness': 'arm thickness? plate? material?',
  'frame.arm-width': 'arm width',
  'frame.material': 'material plate? arm? | plate? arm? thickness?',
  'frame.motor-mounts': 'motor mount? hole? pattern? size? screw? thread? arm? pieces? wheelbase?',
  'frame.stack-mounts':
    'stack mount? hole? pattern? size? screw? middle? thread? esc? | middle mount? hole? pattern? size? screw? thread? | mount hole? pattern? size? screw? thread? | hole pattern? screw? thread? | pattern screw? thread?',
  'frame.rear-mounts':
    'rear mount? hole? pattern? size? screw? stack? vtx? thread? | vtx mount? hole? pattern? size? screw? stack? thread?',
  'frame.stack-height':
    'stack height free? middle? most? plate? | free height stack? middle? plate? | between plate middle? height? free? stack?',
  'frame.camera-widths': 'camera width? mount? size? plate? advice? small_class? together? bracket?',
  'frame.strap-width': 'strap width? hole? cells? size?',
  'frame.standoff-thread': 'standoff screw? height? length? thread? size? pieces? thickness? pattern? bracket?',
  'frame.gps-mount': 'gps mount rear? | gps mount? | gps bracket',
  'frame.battery-side': 'cells mount? plate? strap?',

  'motor.kv': '...',
  '~screw':
    'thread depth? most? hole? screw? size? mount? | hole screw? size? diameter? grommet? thread? pattern? | mount screw? | grommet hole? supplied? | screw mount?',
  'motor.stator': 'stator size?',
  'motor.cells':
    'cells voltage? supply? input? most? advice? continuous? pieces? power? | voltage supply? input? continuous? most? frequency? advice? power? | input supply? power? | supply advice? power? | advice power?',
  'motor.mount':
    'mount hole? pattern? screw? thread? size? | hole pattern? screw? thread? size? mount? | pattern screw? thread? plate?',
  'motor.thread-depth': 'depth screw? thread? hole? most? mount? length? | screw length most mount?',
  'motor.shaft': 'shaft diameter? prop? thread? size? nut? mount? output?',
  'motor.shaft-length': 'shaft length prop? thread? most? together? | shaft height prop? thread?',
  'motor.resistance': 'resistance? free? motor?',
  'motor.no-load-current': 'idle current? voltage? draw? continuous? charge?',
  'motor.peak-current':
    'current most continuous? burst? draw? voltage? motor? | current burst most? continuous? draw? | burst most? continuous? time? | most continuous? burst? | draw most burst? current? | draw burst most? current?',
  'motor.peak-power': 'power most? continuous? burst? output? supply? | most? burst? continuous? supply?',
  'motor.wire': 'wire? gauge? length? size? pieces?',
  'motor.wire-length': 'wire length? gauge? size? pieces? together?',
  'motor.~stator-diameter': 'stator diameter size?',
  'motor.~stator-height': 'stator height size? | stator thickness | stator length',

  'propeller.hub-thickness': 'hub thickness? height? depth? length? size? middle? | middle thickness',
  'propeller.bore':
    'hole hub? shaft? diameter? mount? middle? size? free? prop? motor? | shaft diameter? hub? hole? size? advice? motor? | hub free diameter? | free diameter',
  'propeller.pieces': 'pieces prop? box? together? capacity?',
  'propeller.rotation': 'rotation? pieces? prop? pair? motor? cells? box?',
  'propeller.~diameter': 'diameter size? length? prop?',
  'propeller.~pitch': 'steep size? blade? prop? wheelbase? screw?',
  'propeller.~blades': 'blade pieces? prop? steep?',

  'esc.cells':
    'cells voltage? supply? input? continuous? most? advice? power? | voltage input? supply? continuous? frequency? power? | input supply? power? | supply input? power?',
  'esc.current':
    'current continuous? motor? channel? pieces? | continuous current? motor? channel? pieces? discharge? | continuous? motor? channel? pieces? esc?',
  'esc.burst':
    'burst current? most? motor? channel? time? pieces? discharge? | current most motor? channel? burst? time? | most motor? channel? burst?',
  'esc.channels': 'channel motor? output?',
  'esc.mount':
    'mount hole? pattern? screw? size? thread? grommet? | hole pattern? screw? size? thread? grommet? | pattern screw? thread? | screw? thread? grommet?',
  'esc.telemetry': 'telemetry wire? esc? control? together?',
  'esc.bidirectional': 'both_ways control? telemetry?',
  'esc.current-sensor': 'sensor current together? continuous? | sensor scale?',
  'esc.sensor-scale': 'scale current? sensor?',
  'esc.regulators': 'bec output? voltage? current? supply? burst? most? continuous?',
  'esc.controller-socket': 'connector stack control? | connector esc? wire? pieces? together? control?',
  'esc.protocols': 'control? standard? input? both_ways? motor? esc? together? most?',
  'esc.capacitor-supplied': 'capacitor supplied',
  'esc.firmware': 'firmware',

  'flight-controller.mcu': '...',
  'flight-controller.input':
    'cells voltage? supply? input? continuous? most? power? | voltage input? supply? continuous? frequency? power? | input supply? power? cells? | supply input? cells? power?',
  'flight-controller.mount':
    'mount hole? pattern? screw? size? thread? grommet? | hole pattern? screw? size? thread? grommet? | pattern screw? thread? | screw? thread? grommet?',
  'flight-controller.regulators':
    'bec output? voltage? current? supply? burst? most? continuous? together? digital? camera? vtx? link? pads? | output voltage? current? supply? bec? digital? camera? vtx? link? pads? | output? digital? camera? vtx? link? pads?',
  'flight-controller.motor-outputs':
    'motor output? pads? channel? control? together? connector? esc? | output motor? control? connector? esc?',
  'flight-controller.osd': 'osd together? digital? control? sort? camera?',
  'flight-controller.i2c': 'i2c pads? baro? compass? gps? together? uart?',
  'flight-controller.led-pad':
    'led_strip led? pads? output? buzzer? strap? control? connector? frequency? | led pads output? buzzer? control? frequency? | led output frequency? | led connector frequency?',
  'flight-controller.buzzer-pads': 'buzzer pads? output? led? together? wire? connector?',
  'flight-controller.usb': 'usb connector? sort? together?',
  'flight-controller.log-storage': 'memory? capacity? together? osd? size? free? stored?',
  'flight-controller.camera-pads': 'camera pads vtx? output?',
  'flight-controller.esc-socket':
    'connector esc wire? pieces? together? | connector wire? pieces? esc? together? | esc together?',
  'flight-controller.protocols': 'control? motor? esc? output? together? both_ways?',
  'flight-controller.voltage-sense': 'measuring voltage cells? size?',
  'flight-controller.firmware': 'firmware',
  'flight-controller.bidirectional': 'both_ways control? telemetry?',

  'camera.width': 'width size? camera? small_class? | small_class size? camera? width? mount?',
  'camera.standard': 'standard? output? control? ratio?',
  'camera.ratio': 'ratio? standard? size? control?',
  'camera.socket': 'connector wire?',
  'camera.overlay': 'osd together? control? sort? camera?',
  'camera.system': 'standard? output? camera? resolution? ratio?',

  'video-transmitter.levels': 'power output? channel? supply? | output power? supply? | power? output? supply?',
  'video-transmitter.draw': 'draw power? current? most? voltage? supply? input? mount? | most? power? supply?',
  'video-transmitter.mount':
    'mount hole? pattern? screw? size? thread? | hole pattern? screw? size? thread? | pattern screw? | screw? thread? grommet?',
  'video-transmitter.camera-supply':
    'camera output? supply? bec? voltage? current? most? together? power? | output bec? voltage? current? supply? most? power? | bec output? voltage? power?',
  'video-transmitter.control': 'control wire? vtx? connector?',
  'video-transmitter.pit-mode': 'pit control? together?',
  'video-transmitter.system': 'standard? vtx? frequency? output?',
  'antenna-plug': 'antenna connector? sort? rear? output? mount? | connector sort? mount? | mount?',

  'video-antenna.plug': 'connector? antenna? sort? wire? together? length? without?',
  'video-antenna.polarisation': 'polar? antenna?',
  'video-antenna.band': 'frequency supply? most? continuous? antenna? | supply?',
  'video-antenna.length':
    'length together? antenna? connector? size? overall? | length wire together connector? overall? | size wire together connector? | overall length? wire? connector? together? size? | length width wire together',
  'video-antenna.axial-ratio': 'axial? ratio?',

  'receiver.link': 'link control? sort? radio_module? standard?',
  'receiver.band': 'frequency? link? antenna? supply? radio_module?',
  'receiver.protocols': 'control? output? uart? supply? standard? link? pads? telemetry?',
  'receiver.telemetry-power':
    'telemetry power? output? most? link? draw? current? supply? | power output? most? link? draw? current? supply? | output? power? most? draw? current? supply?',
  'receiver.current':
    'draw current? voltage? most? power? supply? telemetry? link? | current draw? supply? voltage? most? telemetry? | draw? current? telemetry?',
  'receiver.antenna-supplied': 'antenna supplied pieces? length?',
  'receiver.antennas': 'antenna together? pieces? supplied?',

  'battery.capacity': 'capacity? cells? discharge? continuous?',
  'battery.cells': 'cells? voltage? continuous? sort? capacity? chemistry?',
  'battery.chemistry': 'chemistry? sort? cells?',
  'battery.discharge':
    'discharge continuous most? current? | discharge continuous? current? power? output? | continuous current? | continuous? current? cells?',
  'battery.burst-discharge': 'burst discharge? current? most? time? continuous? | discharge most current? burst?',
  'battery.charge-limit': 'charge most? current? continuous? power? burst?',
  'battery.plug':
    'connector sort? discharge? output? middle? power? current? most? wire? together? supply? cells? | wire? sort?',
  'battery.landing-voltage': 'cells least voltage? discharge?',
  'battery.balance-pins': 'balance connector? wire?',
  'battery.wire': 'wire? gauge? discharge? middle? size? connector? power? current? together? length?',
  'battery.energy': '...',
  'battery.cell-resistance': 'resistance cells free?',

  'capacitor.capacitance': '...',
  'capacitor.outside':
    'size length? diameter? height? geometry? capacitor? together? | geometry? diameter? height? length?',
  'capacitor.voltage': 'voltage? most? supply? continuous? capacitor?',
  'capacitor.leads':
    'leg length? wire? size? together? supplied? connector? | wire length? leg? supplied? connector? | connector length? supplied? connector?',
  'capacitor.~diameter': 'diameter size? | thickness size?',
  'capacitor.~height': 'height size? without? leg? | length size?',

  'gps.compass': 'compass together? control?',
  'battery-lead.plug': 'connector sort? | wire?',
  'battery-lead.wire': 'wire? gauge? size? length? connector?',
  'battery-lead.length': 'wire length? gauge? | length wire?',
  'frame.motor-screws': 'screw motor pieces? together? supplied?',
  'frame.stack-screws': 'screw stack pieces? together? supplied?',
  'frame.frame-screws': 'screw frame pieces? together? supplied? | hardware pieces? together? supplied?',
  'esc.voltage-limit': 'most voltage? input? supply?',
  'esc.pads': 'pads cells? wire? most? | cells wire most',
  'flight-controller.usb-side': 'usb connector? side?',
  'flight-controller.video-socket': 'connector digital wire? pieces? | connector vtx digital? wire? pieces?',
  'video-transmitter.socket': 'connector wire? sort?',
  'flight-controller.uarts': 'uart output? free? hardware?',
  'video-transmitter.channels': 'channel frequency?',
};

export interface Way {
  readonly must: readonly About[];
  readonly may: ReadonlySet<About>;
  /** The unit is never used for anything else. */
  readonly whatever: boolean;
}

/** What the thing itself is called, and words that leave any meaning alone. */
const itself: Readonly<Record<string, readonly About[]>> = {
  frame: ['frame'],
  motor: ['motor'],
  propeller: ['prop'],
  esc: ['esc'],
  'flight-controller': ['stack'],
  camera: ['camera'],
  'video-transmitter': ['vtx'],
  'video-antenna': ['antenna'],
  receiver: ['link', 'receiver'],
  battery: ['cells'],
  capacitor: ['capacitor'],
};
const neutral: readonly About[] = ['sort', 'without', 'together'];

/** All fields of a kind that have ways, with the fields of all kinds. */
const keysOf = (kind: string): readonly string[] =>
  Object.keys(ways).flatMap((name) =>
    name.startsWith(`${kind}.`) ? name.slice(kind.length + 1) : name.includes('.') ? [] : name,
  );

/** Whether words about this name a field of such a part, all of it or one; the unit beside them is not asked. */
export const nameAField = (kind: string, about: ReadonlySet<About>, only?: string): boolean =>
  keysOf(kind).some(
    (key) =>
      (only === undefined || key === only) &&
      waysOf(kind, key).some(({ must }) => must.length > 0 && must.every((one) => about.has(one))),
  );

/** Asked for every line of a page, so each is taken apart once. */
const parted = new Map<string, readonly Way[]>();

export function waysOf(kind: string, key: string): readonly Way[] {
  const name = `${kind}.${key}`;
  const known = parted.get(name) ?? partedWays(kind, key);
  parted.set(name, known);
  return known;
}

function partedWays(kind: string, key: string): readonly Way[] {
  const said = ways[`${kind}.${key}`] ?? ways[key];
  if (said === undefined) return [];
  return said.split('|').map((way) => {
    const whatever = way.includes('...');
    const all = way.replace('...', '').trim().split(/\s+/).filter(Boolean);
    const names = (optional: boolean): About[] =>
      all.filter((one) => one.endsWith('?') === optional).map((one) => one.replace('?', '') as About);
    const must = names(false);
    return { must, whatever, may: new Set([...must, ...names(true), ...(itself[kind] ?? []), ...neutral]) };
  });
}
