/** The card as data for other programs: every figure by its stable name as value, low, high, unit and basis. The form is a promise. */
import type { ThrustLevel } from '../text/notation/thrust-level';
import { type Card, type CardFigure, figuresByName, type PackCard } from './card';

export function cardAsJson(card: Card): unknown {
  const { hover, cruise, punch, cruiseThrust, punchThrust, reserve, from } = card.levels;
  const level = ({ of, ratio }: ThrustLevel): unknown => ({ of, ratio });
  return {
    name: card.name,
    craft: card.craft ?? null,
    packs: Object.fromEntries(card.packs.map((pack) => [pack.pack || 'none', packAsJson(pack)])),
    flown: card.flown,
    flight: {
      hover,
      cruise,
      punch,
      'cruise-thrust': level(cruiseThrust),
      'punch-thrust': level(punchThrust),
      reserve,
      from,
    },
    checks: card.checks,
  };
}

function packAsJson(pack: PackCard): unknown {
  return {
    headline: pack.headline,
    figures: Object.fromEntries(
      [...figuresByName(pack)].reverse().map(([name, figure]) => [name, figureAsJson(figure)]),
    ),
    parts: pack.parts.map(({ part, count, mass, share }) => ({ part, count, share, mass: figureAsJson(mass) })),
    measured: pack.measured.map(({ fact, what, used, date }) => ({ fact, what, used, date: date ?? null })),
    remarks: pack.groups.flatMap((group) => group.remarks),
  };
}

export const figureAsJson = ({ value, low, high, unit, basis }: CardFigure): unknown => ({
  value,
  low,
  high,
  unit,
  basis,
});
