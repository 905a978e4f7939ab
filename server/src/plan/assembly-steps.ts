/** The order of work for this build: steps with their gates and the cautions that belong to them. Every step that applies power names the gates it needs, and stands behind them. */
import type { Craft } from '../build/craft';
import { type Gate, gateNames, gatePrint } from './assembly-gates';
import { ironFor, type Joint } from './assembly-joints';
import { nutsOf } from './assembly-screws';
import { worked } from './worked';

export interface Step {
  readonly id: string;
  readonly title: string;
  /** What to do, a line each. */
  readonly todo: readonly string[];
  readonly cautions: readonly string[];
  /** Applies power to any of it. */
  readonly powers: boolean;
  /** Propellers are on. */
  readonly propellersOn: boolean;
  /** The transmitter or receiver radiates. */
  readonly radiates: boolean;
  /** Gates that have to be passed before. */
  readonly needs: readonly Gate[];
  /** The gate that ends it, with what to see. */
  readonly gate: { readonly name: Gate; readonly see: readonly string[] } | undefined;
}

export interface GateState {
  readonly gate: Gate;
  readonly date: string | undefined;
  /** Passed, but what it vouches for has changed since; or passed without a print to tell by. */
  readonly is: 'open' | 'passed' | 'void' | 'unbound';
  readonly print: string;
}

export function gateStates(craft: Craft): readonly GateState[] {
  return gateNames.map((gate) => {
    const fact = craft.said.gates?.entries.get(gate);
    const print = gatePrint(craft, gate);
    const is = !fact
      ? 'open'
      : fact.value.print === undefined
        ? 'unbound'
        : fact.value.print === print
          ? 'passed'
          : 'void';
    return { gate, date: fact?.value.date, is, print };
  });
}

const propsOff = 'Propellers off.';
const meterFirst = 'No pack near it: nothing is powered in this step.';
const limiter =
  'Through the current limiter, on a surface that does not burn, hand on the plug: out at once at smoke, smell or heat.';

export function stepsOf(craft: Craft, joints: readonly Joint[]): readonly Step[] {
  const { roles } = craft;
  const has = (part: string): boolean => joints.some((joint) => joint.part === part);
  const steps: Step[] = [];
  const step = (one: Partial<Step> & Pick<Step, 'id' | 'title' | 'todo'>): void => {
    steps.push({
      cautions: [],
      powers: false,
      propellersOn: false,
      radiates: false,
      needs: [],
      gate: undefined,
      ...one,
    });
  };
  const solder = (is: Joint['is'], parts?: readonly string[]): string[] =>
    joints
      .filter((joint) => joint.is === is && (!parts || parts.includes(joint.part)))
      .map(
        (joint) =>
          `${joint.count} x ${joint.part}: ${joint.what}${joint.gauge === undefined ? '' : `, ${joint.gauge} AWG`}, ${ironFor(joint).from} to ${ironFor(joint).to} C`,
      );
  const gate = (name: Gate, ...see: string[]): Step['gate'] => ({ name, see });

  if (craft.bench?.experience?.value === 'first build')
    step({
      id: 'practise',
      title: 'Practise on a board that may be spoilt',
      todo: ['Ten thin wires, four thick ones; each shines, none moves.'],
      cautions: ['Ventilate, protect your eyes, wash your hands after solder.'],
    });
  step({
    id: 'dry-fit',
    title: 'Put everything together without solder',
    todo: [
      'Frame, boards, motors, camera with their screws, by hand.',
      'Plugs reach, USB can be reached, the pack lies on its plate.',
    ],
    gate: gate(
      'dry-fit',
      'Holes and heights fit.',
      'Each motor turns freely with its screws tight: they end before the winding.',
    ),
  });
  const harness = worked(craft, undefined, 'worked.harness')?.value;
  const oneBoard = craft.boards === 'all-in-one';
  step({
    id: 'harness',
    title: oneBoard ? 'Read the pins of the board' : 'Read the cable between ESC and flight controller',
    todo: [
      oneBoard
        ? 'One board is both, no cable joins them: look up the pins of every plug before it goes in.'
        : harness
          ? harness.reading.moves.length > 0
            ? `Move ${harness.reading.moves.length} contacts: \`dryfit harness\` has the table.`
            : 'Every wire goes to its like; compare once with both boards before you.'
          : 'Look up both pin orders and compare them wire by wire; no pin list is written in this build.',
      oneBoard ? 'Photograph the board, both sides.' : 'Photograph both boards.',
    ],
    cautions: [meterFirst],
    gate: gate(
      'harness',
      oneBoard
        ? 'Battery plus meets no pin of a plug but its own, by the meter.'
        : 'Battery plus of the ESC meets battery plus of the flight controller and nothing else, by the meter.',
    ),
  });
  if (has('battery-lead') || has('capacitor'))
    step({
      id: 'power-joints',
      title: `${has('capacitor') ? 'Battery lead and capacitor' : 'Battery lead'} first, on the cool board`,
      todo: [...solder('power'), 'Tin pads and wires, then join; a tie holds the lead to the frame.'],
      cautions: [
        meterFirst,
        `Ventilate, protect your eyes, wash your hands.${has('capacitor') ? ' A capacitor the wrong way round bursts: its stripe goes to minus.' : ''}`,
      ],
      needs: ['dry-fit'],
      gate: gate(
        'joints',
        `Plus to minus is no short${has('capacitor') ? '; the beep of a charging capacitor ends' : ''}.`,
        'Plug and wires have plus where the plug says plus.',
      ),
    });
  if (has('motors'))
    step({
      id: 'motor-joints',
      title: 'Motor wires',
      todo: [
        ...solder('motor'),
        'Trim to reach, without tension; then screw the motors down, thread locker on metal only.',
      ],
      cautions: [meterFirst],
      needs: ['dry-fit'],
      gate: gate('motor-wires', 'No motor screw beeps to a motor wire, no wire to the frame or to battery minus.'),
    });
  const beforePower: Gate[] = ['dry-fit', 'harness'];
  if (has('battery-lead') || has('capacitor')) beforePower.push('joints');
  if (has('motors')) beforePower.push('motor-wires');
  step({
    id: 'first-power',
    title: oneBoard ? 'First power: the board alone' : 'First power: the ESC alone',
    todo: ['Meter once more: plus to minus is no short.', 'Plug in through the limiter.'],
    cautions: [propsOff, limiter],
    powers: true,
    needs: beforePower,
    gate: gate('first-power', 'The limiter stays dark, nothing is warm, the motors sound their start tones.'),
  });
  const rails = worked(craft, undefined, 'worked.rails')?.value;
  const small = solder('signal', ['harness', 'esc', 'gps', 'buzzer', 'lights', 'remote-id', 'action-camera']);
  if (small.length > 0)
    step({
      id: 'small-joints',
      title: 'Small wires of the flight controller',
      todo: small,
      cautions: [meterFirst],
      needs: ['first-power'],
    });
  step({
    id: 'rails',
    title: oneBoard ? 'Rails measured' : 'Flight controller on, rails measured',
    todo: [
      ...(rails?.ledgers.map(
        (one) => `${one.rail}: ${(one.volts * 0.96).toFixed(1)} to ${(one.volts * 1.04).toFixed(1)} V on its pad.`,
      ) ?? ['Each rail within 4 % of its name.']),
      'USB sees the board; it lies level on the screen; write the settings of `dryfit setup`.',
    ],
    cautions: [propsOff, limiter],
    powers: true,
    needs: [...beforePower, 'first-power'],
    gate: gate('rails', "Rails right, the battery voltage shown is the meter's."),
  });
  if (roles.receiver) {
    step({
      id: 'receiver-joints',
      title: 'Receiver and its antenna',
      todo: [...solder('signal', ['receiver']), 'Antenna on before any power: a receiver with telemetry sends.'],
      cautions: [meterFirst],
    });
    step({
      id: 'receiver',
      title: 'Bind, arm switch, failsafe',
      todo: ['Each channel moves its bar the right way.', 'Switch the radio off: the motors are told to stop.'],
      cautions: [propsOff, 'Radio power and band by your local rules; where a licence is required, have one.'],
      powers: true,
      radiates: true,
      needs: [...beforePower, 'first-power', 'rails'],
      gate: gate('receiver', 'Failsafe seen with the radio off.'),
    });
  }
  if (roles['video-transmitter'] || roles.camera) {
    step({
      id: 'video-joints',
      title: 'Camera, video transmitter, and its antenna',
      todo: [
        ...solder('signal', ['camera', 'video-transmitter']),
        'Antenna screwed or pressed on, and held, before any power.',
      ],
      cautions: [meterFirst],
    });
    step({
      id: 'video',
      title: 'Picture',
      todo: ['Lowest power, a fan on the transmitter.', 'Channel and power as your profile has them.'],
      cautions: [
        propsOff,
        'Never power a transmitter without its antenna. Channels and power by your local rules; where a licence is required, have one.',
      ],
      powers: true,
      radiates: true,
      needs: [...beforePower, 'first-power', 'rails'],
      gate: gate('video', 'Picture and overlay; nothing too hot to touch after two minutes in moving air.'),
    });
  }
  const radio: Gate[] = roles.receiver ? ['receiver'] : [];
  step({
    id: 'motors-turn',
    title: 'Order and direction of the motors',
    todo: [
      harness?.reading.remap
        ? `Write the motor order into the firmware as \`dryfit setup\` says; a re-flash erases it.`
        : 'Each motor number answers at its place.',
      `Each turns as ${craft.said.setup?.spin?.value ?? 'the setting'} wants it.`,
    ],
    cautions: [propsOff, 'Hold the craft down; keep hair, cords and fingers away.'],
    powers: true,
    needs: [...beforePower, 'first-power', 'rails', ...radio],
    gate: gate('motors-turn', 'Four numbers, four directions, rpm shown on each.'),
  });
  step({
    id: 'close',
    title: 'Close it up',
    todo: [
      `Board screws on soft mounts, wires tied away from the propellers${roles.strap ? ', strap on' : ''}.`,
      'Nothing inside the propeller circles; it balances on two fingers with its pack.',
    ],
    gate: gate('closed', 'Nothing touches, nothing rattles.'),
  });
  step({
    id: 'weigh',
    title: 'Weigh it and look up the rules',
    todo: [
      'Write the weight: `dryfit delivery FILE --weighed "640 g"`.',
      'Label, registration, identification as your place asks for.',
    ],
    cautions: ['Rules differ and change: check your local ones.'],
    gate: gate('weighed', 'Written down, within 5 % of the estimate or explained.'),
  });
  step({
    id: 'first-hover',
    title: 'Propellers last, at the field',
    todo: [
      'Range check with the radio at low power, propellers still off.',
      `Propellers on: each hand on its motor${nutsOf(craft).some((nut) => nut.for === 'propellers') ? ', nuts past their nylon ring' : ', pressed or screwed home'}.`,
      'Arm low for two seconds, disarm, feel for heat; hover ten seconds, feel the motors; then fly.',
    ],
    cautions: ['Everybody behind you. Arm only on the ground, with nobody within reach.'],
    powers: true,
    propellersOn: true,
    radiates: true,
    needs: [...gateNames.filter((name) => name !== 'first-hover' && steps.some((one) => one.gate?.name === name))],
    gate: gate('first-hover', 'Motors hand-warm, no odd sound.'),
  });
  return steps;
}
