/** Reads an amount of money with its currency: `450 EUR`, `1250.50 SEK`. Knows no rate. */
import { splitOrigin } from '../origin';
import { misread, type Read } from '../quantity';

export interface Money {
  /** Whole cents, or whatever the hundredth of the currency is called. */
  readonly cents: number;
  /** ISO 4217. */
  readonly currency: string;
}

const signs: Readonly<Record<string, string>> = { '€': 'EUR', $: 'USD', '£': 'GBP', '¥': 'JPY' };

export function readMoney(text: string): Read<Money> {
  const { said, origin } = splitOrigin(text);
  const match = /^(\d{1,9})(?:\.(\d{1,2}))?\s*([A-Z]{3})$/.exec(said);
  if (match)
    return {
      ok: true,
      value: { cents: Number(match[1]) * 100 + Number((match[2] ?? '').padEnd(2, '0')), currency: match[3]! },
      origin,
    };
  const amount = /\d+(?:[.,]\d{1,2})?/.exec(said)?.[0].replace(',', '.');
  const sign = /[€$£¥]/.exec(said)?.[0];
  const word = sign ? signs[sign] : /\b[a-z]{3}\b/i.exec(said)?.[0].toUpperCase();
  return misread(
    `\`${said}\` is no amount with a currency; write it as in \`450 EUR\``,
    ...(amount !== undefined && word ? [`${amount} ${word}`] : []),
  );
}

/** `12.50 EUR` */
export const money = (cents: number, currency: string): string => `${plainMoney(cents)} ${currency}`;

/** `12.50` */
export const plainMoney = (cents: number): string =>
  `${cents < 0 ? '-' : ''}${Math.floor(Math.abs(cents) / 100)}.${String(Math.abs(cents) % 100).padStart(2, '0')}`;
