/** `1.3 x weight`, `60 % of full`: how hard a part of the flight is flown. */

import { splitOrigin } from '../origin';
import { misread, type Read } from '../quantity';

export type ThrustLevel = { readonly of: 'weight' | 'full'; readonly ratio: number };

export function readThrustLevel(text: string): Read<ThrustLevel> {
  const { said, origin } = splitOrigin(text);
  const weight = /^(\d+(?:\.\d+)?)\s*[x×]\s*weight$/.exec(said);
  if (weight) return within({ of: 'weight', ratio: Number(weight[1]) }, 1, 20, said, origin);
  const full = /^(\d+(?:\.\d+)?)\s*%\s+of\s+full$/.exec(said);
  if (full) return within({ of: 'full', ratio: Number(full[1]) / 100 }, 0.05, 1, said, origin);
  return misread(`\`${said}\` is not a thrust level; write \`1.3 x weight\` or \`60 % of full\``);
}

function within(
  value: ThrustLevel,
  least: number,
  most: number,
  said: string,
  origin: ReturnType<typeof splitOrigin>['origin'],
): Read<ThrustLevel> {
  if (value.ratio < least || value.ratio > most)
    return misread(
      `\`${said}\` cannot be flown; use ${value.of === 'weight' ? '1 to 20 x weight' : '5 to 100 % of full'}`,
    );
  return { ok: true, value, origin };
}
