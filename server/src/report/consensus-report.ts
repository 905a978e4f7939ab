/** The consensus of a class as text, Markdown and JSON, with what so few references cannot say. Compares nothing itself. */
import { type Consensus, type Envelope, enough } from '../plan/consensus';
import type { Standing } from '../plan/consensus-craft';
import { tableAsMarkdown, tableAsText } from './table';

const plain = (value: number, digits: number): string => Number(value.toFixed(digits)).toString();

/** `1750 to 1850 Kv` */
function envelopeRow(one: Envelope): readonly string[] {
  const title = one.is === 'number' && one.cells !== undefined ? `${one.of.title} on ${one.cells}S` : one.of.title;
  if (one.is === 'term')
    return [title, one.shares.map(({ term, count }) => `${term} (${count})`).join(', '), '', '', String(one.count)];
  const { spread, of } = one;
  const say = (value: number): string => plain(value, of.digits);
  const all =
    spread.least === spread.most
      ? `${say(spread.least)} ${of.unit}`
      : `${say(spread.least)} to ${say(spread.most)} ${of.unit}`;
  return [
    title,
    spread.median === undefined ? '' : `${say(spread.median)} ${of.unit}`,
    spread.middle === undefined ? '' : `${say(spread.middle[0])} to ${say(spread.middle[1])}`,
    all,
    String(spread.count),
  ];
}

const heads = ['', 'median or shares', 'middle half', 'all', 'said by'];

/** What this many cannot say. */
export function silences(count: number): readonly string[] {
  if (count === 0) return ['No reference of this class in the workspace; common practice is shown instead.'];
  if (count === 1)
    return [
      'One reference shows what is possible, not what is usual: no median and no range. Common practice is shown beside it.',
    ];
  if (count === 2)
    return [
      'Two references give two values, no median, and no sign which of them is usual. Common practice is shown beside them.',
    ];
  if (count === 3) return ['Three references give a median and extremes; a middle half needs four.'];
  return count < 8 ? [`${count} references: one more craft can move every figure.`] : [];
}

const origins = (consensus: Consensus): readonly string[] =>
  consensus.references.map((craft) => {
    const { name, source, seen } = craft.said;
    return `${name?.value ?? 'unnamed'}: ${source?.value ?? 'source not said'}${seen ? `, seen ${seen.value}` : ''}`;
  });

export function consensusAsText(consensus: Consensus): string {
  const { references, envelopes, practice, craftClass } = consensus;
  const few = references.length < enough;
  return `${[
    `${craftClass}: ${references.length === 1 ? '1 reference' : `${references.length} references`}`,
    ...(envelopes.length > 0 ? ['', tableAsText({ heads, rows: envelopes.map(envelopeRow) })] : []),
    ...silences(references.length).map((line) => `\n  ${line}`),
    ...(few && practice.length > 0
      ? [
          '',
          '  Common practice, not read from any craft:',
          tableAsText({ heads: ['', ''], rows: practice.map(({ title, usual }) => [title, usual]) }, '    '),
        ]
      : []),
    ...(references.length > 0 ? ['', '  From', ...origins(consensus).map((line) => `    ${line}`)] : []),
  ].join('\n')}\n`;
}

export function consensusAsMarkdown(consensus: Consensus): string {
  const { references, envelopes, practice, craftClass } = consensus;
  const few = references.length < enough;
  return `${[
    `## ${craftClass}: ${references.length === 1 ? '1 reference' : `${references.length} references`}`,
    '',
    ...(envelopes.length > 0 ? [tableAsMarkdown({ heads, rows: envelopes.map(envelopeRow) }), ''] : []),
    ...silences(references.length),
    ...(few && practice.length > 0
      ? [
          '',
          'Common practice, not read from any craft:',
          '',
          tableAsMarkdown({ heads: ['', 'usual'], rows: practice.map(({ title, usual }) => [title, usual]) }),
        ]
      : []),
    ...(references.length > 0 ? ['', ...origins(consensus).map((line) => `- ${line}`)] : []),
  ].join('\n')}\n`;
}

export const consensusAsJson = (consensus: Consensus): unknown => ({
  class: consensus.craftClass,
  references: consensus.references.map((craft) => ({
    name: craft.said.name?.value ?? null,
    source: craft.said.source?.value ?? null,
    seen: craft.said.seen?.value ?? null,
  })),
  basis: consensus.references.length < enough ? 'common practice' : 'references',
  fields: consensus.envelopes.map((one) =>
    one.is === 'term'
      ? { field: one.of.field, kind: 'term', count: one.count, shares: one.shares }
      : {
          field: one.of.field,
          kind: 'number',
          unit: one.of.unit,
          cells: one.cells ?? null,
          count: one.spread.count,
          median: one.spread.median ?? null,
          middle: one.spread.middle ?? null,
          least: one.spread.least,
          most: one.spread.most,
        },
  ),
  practice: consensus.references.length < enough ? consensus.practice : [],
  cannotSay: silences(consensus.references.length),
});

/** One line for the hover of a value: where it lies among the references. */
export function standingLine(standing: Standing): string {
  const { of, envelope, value, lies, count, cells } = standing;
  const say = (one: number): string => (of.is === 'number' ? `${plain(one, of.digits)} ${of.unit}` : String(one));
  const all =
    envelope.is === 'term'
      ? envelope.shares.map((share) => (count < enough ? share.term : `${share.term} (${share.count})`)).join(', ')
      : envelope.spread.least === envelope.spread.most || of.is !== 'number'
        ? say(envelope.spread.least)
        : `${plain(envelope.spread.least, of.digits)} to ${say(envelope.spread.most)}`;
  const on = cells === undefined ? '' : ` on ${cells}S`;
  if (count < enough)
    return `${count === 1 ? 'One reference' : 'Two references'}${on}: ${all}. Too few to say what is usual.`;
  if (envelope.is === 'term')
    return lies === 0
      ? `None of ${count} references has ${value}; they have ${all}.`
      : `${lies} of ${count} references ${lies === 1 ? 'has' : 'have'} ${value}.`;
  const { median } = envelope.spread;
  const where = lies === 'inside' ? 'inside' : `${lies} all of them`;
  return `${count} references${on}: ${all}${median === undefined ? '' : `, median ${say(median)}`}; ${typeof value === 'number' ? say(value) : value} is ${where}.`;
}
