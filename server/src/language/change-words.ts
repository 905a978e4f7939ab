/** What choosing another part would change, in a few words: weight, thrust to weight, flight time. Computes through the same figures as the card. */
import type { Craft } from '../build/craft';
import { weightOf } from '../plan/weight';
import { valuesFor } from '../plan/worked';
import { mainPack } from '../report/card';

export function changeWords(now: Craft | undefined, then: Craft): string {
  const before = now && keyFigures(now);
  const after = keyFigures(then);
  const lines: string[] = [];
  const say = (
    name: string,
    key: keyof KeyFigures,
    write: (value: number) => string,
    sign: (value: number) => string,
  ): void => {
    const value = after[key];
    if (value === undefined) return;
    const was = before?.[key];
    const change = was === undefined ? 0 : value - was;
    lines.push(
      `${name} ${write(value)}${was !== undefined && write(was) !== write(value) ? ` (${change > 0 ? '+' : '−'}${sign(Math.abs(change))})` : ''}`,
    );
  };
  say(
    'ready to fly',
    'weight',
    (value) => `${(value * 1000).toFixed(0)} g`,
    (value) => `${(value * 1000).toFixed(0)} g`,
  );
  say(
    'thrust to weight',
    'lift',
    (value) => value.toFixed(1),
    (value) => value.toFixed(1),
  );
  say(
    'as you fly it',
    'minutes',
    (value) => `${value.toFixed(1)} min`,
    (value) => `${value.toFixed(1)} min`,
  );
  return lines.join(' · ');
}

interface KeyFigures {
  readonly weight: number | undefined;
  readonly lift: number | undefined;
  readonly minutes: number | undefined;
}

function keyFigures(craft: Craft): KeyFigures {
  const pack = mainPack(craft);
  const made = valuesFor(craft, pack);
  return {
    weight: weightOf(craft, pack).ready.value,
    lift: made?.full.ok ? made.full.value.thrustToWeight : undefined,
    minutes: made?.asFlown.ok ? made.asFlown.value.minutes : undefined,
  };
}
