/** What builders call a kind of part when they type: the one place to add such a word. Chooses none where two are meant. */
import { partKinds } from './propose';

const spoken: Readonly<Record<string, readonly string[]>> = {
  fc: ['flight-controller'],
  'flight-control': ['flight-controller'],
  vtx: ['video-transmitter'],
  'air-unit': ['video-transmitter'],
  aio: ['all-in-one'],
  '4in1': ['esc'],
  '4-in-1': ['esc'],
  'speed-controller': ['esc'],
  rx: ['receiver'],
  cam: ['camera'],
  'fpv-camera': ['camera'],
  prop: ['propeller'],
  props: ['propeller'],
  lipo: ['battery'],
  pack: ['battery'],
  cap: ['capacitor'],
  pigtail: ['battery-lead'],
  lead: ['battery-lead'],
  antenna: ['video-antenna', 'receiver-antenna'],
  beeper: ['buzzer'],
  led: ['lights'],
  leds: ['lights'],
  screw: ['fastener'],
  cable: ['harness', 'battery-lead'],
};

/** @returns one kind, several that may be meant, or none */
export function kindsMeant(word: string): readonly string[] {
  const plain = word
    .trim()
    .toLowerCase()
    .replace(/[\s_]+/g, '-');
  for (const one of [plain, plain.replace(/s$/, '')]) {
    if (partKinds.includes(one)) return [one];
    const meant = Object.hasOwn(spoken, one) ? spoken[one] : undefined;
    if (meant) return meant;
  }
  return [];
}
