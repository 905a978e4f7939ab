/** The receiver antenna's plug doesn't mate with the receiver's. */
import { mating } from '../../plan/radio-plugs';
import { check } from '../check';

export default check({
  id: 'receiver-antenna-plug-differs',
  group: 'radio',
  title: 'Receiver antenna does not plug in',
  severity: 'error',
  needs: { antenna: 'receiver-antenna.plug', receiver: 'receiver.antenna-plug' },
  judge({ antenna, receiver }) {
    const fit = mating(antenna.value, receiver.value);
    if (fit === 'mates' || fit === 'soldered') return undefined;
    return {
      with: [{ fact: receiver, says: `the receiver has ${receiver.text}` }],
      message: `The antenna has ${antenna.text}, the receiver ${receiver.text}. ${fit === 'open' || fit === 'crushed' ? 'The threads go on, but the contacts do not meet.' : 'They do not mate.'} Use an antenna with the receiver's plug.`,
    };
  },
});

export const explanation = {
  why: 'Two of the tiny snap-in plugs look alike and crush one another; without contact there is no control.',
  remedy: "Take an antenna with the receiver's plug.",
  source: 'U.FL and MHF4 do not mate: common practice',
  bad: `
dryfit: build
name: Example
parts:
  receiver:
    antenna-plug: U.FL
  receiver-antenna:
    plug: «MHF4»
`,
  good: `
dryfit: build
name: Example
parts:
  receiver:
    antenna-plug: U.FL
  receiver-antenna:
    plug: U.FL
`,
};
