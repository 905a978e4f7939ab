/** What the video antenna radiates is above what the region's profile has for a craft without a licence. */
import { dBmOfWatts, eirp, wattsOfDBm } from '../../physics';
import { exceeds } from '../beyond';
import { check } from '../check';
import { write } from '../edit';
import { dated, hasProfile, profileFor } from '../region';
import { apart, watts } from '../words';

export default check({
  id: 'transmitter-power-over-limit',
  group: 'rules',
  title: 'Radio power above your profile',
  severity: 'warning',
  needs: { level: 'video-transmitter.level' },
  may: { gain: 'video-antenna.gain', loss: 'video-transmitter.cable-loss', channel: 'video-transmitter.channel' },
  when: hasProfile,
  judge({ level, gain, loss }, craft) {
    const profile = profileFor(craft);
    if (!profile) return undefined;
    // Antennas for craft have about 1.5 dBi.
    const gained = gain?.value ?? 1.5;
    const radiated = wattsOfDBm(eirp(dBmOfWatts(level.value), gained, loss?.value ?? 0));
    const most = profile.video.radiated;
    if (!exceeds(radiated, most * 1.01)) return undefined;
    const [sends, allowed] = apart(watts, radiated, most);
    const setting = wattsOfDBm(dBmOfWatts(most) - gained + (loss?.value ?? 0));
    const lower = craft.roles['video-transmitter']?.levels?.items.filter((item) => item.value <= setting).at(-1);
    const small = !exceeds(level.value, most);
    return {
      at: level,
      with: gain ? [{ fact: gain, says: `the antenna has ${gain.text}` }] : [],
      severity: small || !gain || profile.video.licensed ? 'information' : 'warning',
      message: `${level.text} into ${gain ? gain.text : 'about 1.5 dBi, which was taken as usual,'} radiate ${sends}; your profile says ${most < 0.001 ? `${Number((most * 1000).toFixed(2))} mW` : allowed} ${profile.video.note}, which is a setting of ${Number((setting * 1000).toFixed(setting < 0.002 ? 2 : 1))} mW here. Choose a lower level, or accept this with your licence as the reason. ${dated(profile)}`,
      fixes: lower ? [write(level, lower.text)] : [],
    };
  },
});

export const explanation = {
  why: "Radiated power counts, not the setting: the antenna's gain adds to it.",
  remedy: 'Choose a lower level, an antenna of less gain, or note the licence in accept.',
  source:
    'dated profiles in plan/rules.ts, each with its source; radiated power = power + gain - cable loss, and 1 % for rounding',
  bad: `
dryfit: build
name: Example
region: EU
parts:
  video-transmitter:
    level: «600 mW»
  video-antenna:
    gain: 2 dBi
`,
  good: `
dryfit: build
name: Example
region: EU
parts:
  video-transmitter:
    level: 14 mW
  video-antenna:
    gain: 2 dBi
`,
};
