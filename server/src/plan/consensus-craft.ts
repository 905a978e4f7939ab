/** Where a craft's own values lie among the references of its class. Words nothing; works out nothing for a craft without a class. */
import { beside } from '../build/beside';
import type { Craft } from '../build/craft';
import type { Pointable } from '../build/fact';
import { type Consensus, consensusOf, type Envelope, enough, envelopeFor, isReference } from './consensus';
import { type Compared, compared } from './consensus-fields';

export interface Standing {
  readonly of: Compared;
  readonly at: Pointable;
  readonly envelope: Envelope;
  /** As compared: a number in the field's unit, or a term. */
  readonly value: number | string;
  readonly cells: number | undefined;
  /** How many references this rests on. */
  readonly count: number;
  /** For a number: below, inside or above all of them. For a term: how many have it. */
  readonly lies: 'below' | 'inside' | 'above' | number;
}

const memory = beside<Craft, Consensus>('consensus');

/** By the first of its references: the same ones are met at every keystroke. */
const byReferences = new WeakMap<Craft, Consensus>();

export function consensusFor(craft: Craft): Consensus | undefined {
  const own = craft.said.craft?.value;
  if (own === undefined) return undefined;
  let known = memory.get(craft);
  if (!known) {
    known = remembered(
      own,
      craft.references().filter((one) => one.said.craft?.value === own && one.where !== craft.where),
    );
    memory.set(craft, known);
  }
  return known;
}

function remembered(craftClass: string, references: readonly Craft[]): Consensus {
  const [first] = references;
  const known = first && byReferences.get(first);
  if (known?.references.length === references.length && references.every((one, i) => one === known.references[i]))
    return known;
  const made = consensusOf(craftClass, references);
  if (first) byReferences.set(first, made);
  return made;
}

export function standings(craft: Craft): readonly Standing[] {
  const consensus = consensusFor(craft);
  if (!consensus || isReference(craft)) return [];
  return compared.flatMap((of): Standing[] => {
    const envelope = envelopeFor(consensus, of, craft);
    if (!envelope) return [];
    const cells = envelope.is === 'number' ? envelope.cells : undefined;
    if (of.is === 'term') {
      const read = of.read(craft);
      if (!read || envelope.is !== 'term') return [];
      const count = envelope.shares.find((one) => one.term === read.term)?.count ?? 0;
      return [{ of, at: read.at, envelope, value: read.term, cells, count: envelope.count, lies: count }];
    }
    const read = of.read(craft);
    if (!read || envelope.is !== 'number') return [];
    const { least, most, count } = envelope.spread;
    const lies = read.value < least ? 'below' : read.value > most ? 'above' : 'inside';
    return [{ of, at: read.at, envelope, value: read.value, cells, count, lies }];
  });
}

/** Outside all of at least three references. */
export const isOutside = ({ lies, count }: Standing): boolean =>
  count >= enough && (lies === 'below' || lies === 'above' || lies === 0);
