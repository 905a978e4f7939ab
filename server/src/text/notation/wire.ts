/** `12 AWG`: a wire by its American gauge number. */

import { splitOrigin } from '../origin';
import { misread, type Read } from '../quantity';

export function readGauge(text: string): Read<number> {
  const { said, origin } = splitOrigin(text);
  const match = /^(\d{1,2})\s*AWG$/.exec(said);
  const loose = /^(?:AWG\s*)?(\d{1,2})\s*(?:awg)?$/i.exec(said);
  if (!match)
    return misread(`\`${said}\` is not a wire gauge; write it as in \`12 AWG\``, ...(loose ? [`${loose[1]} AWG`] : []));
  const gauge = Number(match[1]);
  if (gauge > 40) return misread(`\`${said}\` is outside 0 to 40 AWG; check the gauge`);
  return { ok: true, value: gauge, origin };
}
