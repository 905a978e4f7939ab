/** What ready-made craft of one class agree on: robust figures of what was written down, with counts, or common practice where too few were. Judges no build. */
import type { Craft } from '../build/craft';
import { type Compared, type ComparedNumber, cellsOfCraft, compared } from './consensus-fields';
import { type Practice, practiceOf } from './consensus-practice';
import { type Share, type Spread, sharesOf, spreadOf } from './consensus-statistics';

export interface NumberEnvelope {
  readonly is: 'number';
  readonly of: ComparedNumber;
  /** The cell count these have, where it decides. */
  readonly cells: number | undefined;
  readonly spread: Spread;
}

export interface TermEnvelope {
  readonly is: 'term';
  readonly of: Compared;
  readonly count: number;
  readonly shares: readonly Share[];
}

export type Envelope = NumberEnvelope | TermEnvelope;

export interface Consensus {
  readonly craftClass: string;
  readonly references: readonly Craft[];
  readonly envelopes: readonly Envelope[];
  /** What the trade does, shown where fewer than three references speak. */
  readonly practice: readonly Practice[];
}

/** References that a comparison rests on; fewer prove nothing. */
export const enough = 3;

export const isReference = (craft: Craft): boolean => craft.said.reference?.value === true;

export function consensusOf(craftClass: string, crafts: readonly Craft[]): Consensus {
  const references = crafts.filter((craft) => isReference(craft) && craft.said.craft?.value === craftClass);
  return {
    craftClass,
    references,
    envelopes: compared.flatMap((one) => (one.is === 'number' ? numbersOf(one, references) : termsOf(one, references))),
    practice: practiceOf(craftClass),
  };
}

function numbersOf(of: ComparedNumber, references: readonly Craft[]): readonly Envelope[] {
  const groups = new Map<number | undefined, number[]>();
  for (const craft of references) {
    const read = of.read(craft);
    const cells = of.byCells ? cellsOfCraft(craft) : undefined;
    // Without the cell count a motor speed compares with nothing.
    if (!read || (of.byCells && cells === undefined)) continue;
    groups.set(cells, [...(groups.get(cells) ?? []), read.value]);
  }
  return [...groups]
    .sort((a, b) => b[1].length - a[1].length || (a[0] ?? 0) - (b[0] ?? 0))
    .flatMap(([cells, values]) => {
      const spread = spreadOf(values);
      return spread ? [{ is: 'number' as const, of, cells, spread }] : [];
    });
}

function termsOf(of: Extract<Compared, { is: 'term' }>, references: readonly Craft[]): readonly Envelope[] {
  const terms = references.flatMap((craft) => of.read(craft)?.term ?? []);
  return terms.length > 0 ? [{ is: 'term', of, count: terms.length, shares: sharesOf(terms) }] : [];
}

/** The envelope that a craft's value of a field is compared with. */
export function envelopeFor(consensus: Consensus, of: Compared, craft: Craft): Envelope | undefined {
  const cells = of.is === 'number' && of.byCells ? cellsOfCraft(craft) : undefined;
  return consensus.envelopes.find((one) => one.of === of && (one.is === 'term' || one.cells === cells));
}
