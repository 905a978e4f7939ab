/** Reads where a value came from, the brackets behind it: `(weighed 2026-10-02)`, `(seller)`. Decides nothing about its worth. */
import { kept } from './kept';
import { own } from './own';

export type Trust = 'measured' | 'maker' | 'seller' | 'estimate' | 'unsaid';

export interface Origin {
  readonly trust: Trust;
  readonly word?: string;
  /** As written, `YYYY-MM-DD`. */
  readonly date?: string;
}

export const unsaid: Origin = { trust: 'unsaid' };

const trustOf: Readonly<Record<string, Trust>> = {
  weighed: 'measured',
  measured: 'measured',
  flown: 'measured',
  maker: 'maker',
  seller: 'seller',
  estimate: 'estimate',
};

export const originWords = Object.keys(trustOf);

/** Splits a text into what is said and the origin behind it. An unknown word in the brackets is returned as `odd`. */
export const splitOrigin = kept((text: string): { said: string; origin: Origin; odd?: string } => {
  const match = /^(.*?)\s*\(([^()]*)\)\s*$/s.exec(text);
  if (!match) return { said: text.trim(), origin: unsaid };
  const inside = match[2]!.trim();
  const word = /^[a-z]+/i.exec(inside)?.[0].toLowerCase();
  const trust = word ? own(trustOf, word) : undefined;
  if (!word || !trust) return { said: match[1]!.trim(), origin: unsaid, odd: inside };
  const date = /\b\d{4}-\d{2}-\d{2}\b/.exec(inside)?.[0];
  return { said: match[1]!.trim(), origin: date ? { trust, word, date } : { trust, word } };
});
