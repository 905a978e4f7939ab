/** An order as text laid out by parcel, as Markdown to tick off, as JSON and as a table for a spreadsheet. Works nothing out. */
import { plainMoney } from '../text/notation/money';
import type { Alternative } from './order-alternatives';
import type { OrderReport, ReportLine, ReportParcel } from './order-report';

const amount = (cents: number): number => Number((cents / 100).toFixed(2));

export const orderAsJson = (report: OrderReport): unknown => {
  const { priced, optimal, bound } = report.order;
  return {
    currency: report.currency,
    total: amount(priced.total),
    goods: amount(priced.goods),
    shipping: amount(priced.shipping),
    taxes: amount(priced.taxes),
    optimal,
    bound: amount(bound),
    lines: report.lines.map(({ part, shop, packs, pieces, cost }) => ({
      part,
      shop,
      packs,
      pieces,
      cost: amount(cost),
    })),
    parcels: report.parcels.map(({ shop, goods, shipping }) => ({
      shop,
      goods: amount(goods),
      shipping: amount(shipping),
    })),
    compared: {
      cheapestEverywhere: report.everywhere === undefined ? null : amount(report.everywhere),
      singleShop: report.single === undefined ? null : amount(report.single.total),
    },
  };
};

export function orderAsCsv(report: OrderReport): string {
  const cell = (text: string | number): string => {
    // A cell that starts like a formula would be run by a spreadsheet.
    const plain = typeof text === 'string' && /^[=+\-@\t]/.test(text) ? `'${text}` : String(text);
    return /[",\n\r]/.test(plain) ? `"${plain.replaceAll('"', '""')}"` : plain;
  };
  const rows = [
    ['parcel', 'shop', 'part', 'packs', 'pieces', 'cost', 'currency'],
    ...report.lines.map((line) => [
      line.parcel + 1,
      line.shop,
      line.part,
      line.packs,
      line.pieces,
      plainMoney(line.cost),
      report.currency,
    ]),
    ...report.parcels.map((parcel, i) => [
      i + 1,
      parcel.shop,
      'shipping',
      '',
      '',
      plainMoney(parcel.shipping),
      report.currency,
    ]),
    ...report.parcels.flatMap((parcel, i) =>
      parcel.taxes > 0
        ? [[i + 1, parcel.shop, 'duty, tax and handling', '', '', plainMoney(parcel.taxes), report.currency]]
        : [],
    ),
  ];
  return `${rows.map((row) => row.map(cell).join(',')).join('\n')}\n`;
}

export function orderAsText(report: OrderReport, alternatives: readonly Alternative[] = []): string {
  const width = Math.max(28, ...report.lines.map((line) => words(line).length)) + 4;
  const right = Math.max(
    ...report.lines.map((line) => plainMoney(line.cost).length),
    plainMoney(report.order.priced.total).length,
  );
  const rule = (left: string, cents: number): string => `${left.padEnd(width)}${plainMoney(cents).padStart(right)}`;
  const parcels = report.parcels.flatMap((parcel, i) => [
    `┌ ${headOf(parcel, i)}`,
    ...report.lines.filter((line) => line.parcel === i).map((line) => `│ ${rule(words(line), line.cost)}`),
    `│ ${rule(parcel.free && parcel.shipping === 0 ? 'shipping, free from this value on' : 'shipping', parcel.shipping)}`,
    ...(parcel.taxes > 0 ? [`│ ${rule('duty, tax and handling', parcel.taxes)}`] : []),
    `└${'─'.repeat(width + right + 1)}`,
  ]);
  const { priced } = report.order;
  return `${[
    `Order for ${report.crafts.join(' and ')}, in ${report.currency}`,
    '',
    ...parcels,
    '',
    `  ${rule('goods', priced.goods)}`,
    `  ${rule('shipping', priced.shipping)}`,
    ...(priced.taxes > 0 ? [`  ${rule('duty, tax and handling', priced.taxes)}`] : []),
    `  ${rule('to pay', priced.total)}`,
    '',
    ...comparedWords(report).map((line) => `  ${line}`),
    ...(report.shares.length > 0
      ? [
          '',
          '  Shipping and taxes shared by the value of the goods:',
          ...report.shares.map((share) => `  ${rule(`  ${share.name}`, share.total)}${aloneWords(share)}`),
          ...togetherWords(report).map((line) => `  ${line}`),
        ]
      : []),
    ...titled('\n  Not in this order:', missingWords(report, alternatives), '    '),
  ].join('\n')}\n`;
}

export function orderAsMarkdown(report: OrderReport, alternatives: readonly Alternative[] = []): string {
  const { priced } = report.order;
  const parcels = report.parcels.flatMap((parcel, i) => [
    `### ${headOf(parcel, i)}`,
    '',
    ...report.lines.filter((line) => line.parcel === i).map((line) => `- [ ] ${words(line)}: ${plainMoney(line.cost)}`),
    '',
    `Shipping ${plainMoney(parcel.shipping)}${parcel.taxes > 0 ? `, duty, tax and handling ${plainMoney(parcel.taxes)}` : ''}.`,
    '',
  ]);
  return `${[
    `## Order for ${report.crafts.join(' and ')}`,
    '',
    `**${plainMoney(priced.total)} ${report.currency}**: goods ${plainMoney(priced.goods)}, shipping ${plainMoney(priced.shipping)}${priced.taxes > 0 ? `, duty, tax and handling ${plainMoney(priced.taxes)}` : ''}.`,
    '',
    ...comparedWords(report).map((line) => `- ${line}`),
    '',
    ...parcels,
    ...titled(
      '### Shipping and taxes shared by the value of the goods\n',
      [
        ...report.shares.map((share) => `${share.name}: ${plainMoney(share.total)}${aloneWords(share)}`),
        ...togetherWords(report),
      ],
      '- ',
    ),
    ...titled(
      `${report.shares.length > 0 ? '\n' : ''}### Not in this order\n`,
      missingWords(report, alternatives),
      '- ',
    ),
  ].join('\n')}\n`;
}

const headOf = (parcel: ReportParcel, i: number): string =>
  [
    `Parcel ${i + 1} from ${parcel.shop}`,
    parcel.batteries ? 'packs, sent apart' : '',
    `about ${Math.round(parcel.mass)} g`,
    parcel.days === undefined ? '' : `${parcel.days} days`,
  ]
    .filter(Boolean)
    .join(', ');

function words(line: ReportLine): string {
  const packs =
    line.pack > 1 ? `${line.packs} ${line.packs === 1 ? 'pack' : 'packs'} of ${line.pack}` : `${line.pieces}`;
  return `${packs} x ${line.part}${line.left > 0 ? ` (${line.left} more than asked)` : ''}`;
}

function comparedWords(report: OrderReport): readonly string[] {
  const { priced, optimal, bound } = report.order;
  const than = (other: number): string =>
    other > priced.total ? `${plainMoney(other - priced.total)} more` : 'the same';
  return [
    optimal
      ? 'No order from these offers is cheaper: proved.'
      : `Not proved in time: no order is cheaper than ${plainMoney(bound)} (${(((priced.total - bound) / priced.total) * 100).toFixed(2)} % below this one).`,
    report.everywhere === undefined
      ? 'Each part where it is cheapest would not be sent: a shop takes no such order.'
      : `Each part where it is cheapest: ${plainMoney(report.everywhere)}, ${than(report.everywhere)}.`,
    report.single === undefined
      ? 'No single shop has everything.'
      : `All from ${report.single.shop}: ${plainMoney(report.single.total)}, ${than(report.single.total)}.`,
    ...(report.fewer && report.fewer.total !== report.single?.total
      ? [
          `From ${report.fewer.shops === 1 ? 'one shop' : `${report.fewer.shops} shops`}: ${plainMoney(report.fewer.total)}, ${than(report.fewer.total)}.`,
        ]
      : []),
    ...(report.said !== undefined
      ? [`As the build says it with \`from\`: ${plainMoney(report.said)}, ${than(report.said)}.`]
      : []),
    ...(report.budget
      ? [
          report.budget.kept
            ? `Within the budget of ${plainMoney(report.budget.cents)}.`
            : `Over the budget of ${plainMoney(report.budget.cents)} by ${plainMoney(priced.total - report.budget.cents)}.`,
        ]
      : []),
    ...report.remarks,
  ];
}

const aloneWords = ({ alone }: OrderReport['shares'][number]): string =>
  alone === undefined ? '' : ` (alone ${plainMoney(alone)})`;

/** What ordering together saves; nothing when one of the orders alone is not known. */
function togetherWords({ shares, order }: OrderReport): readonly string[] {
  const alone = shares.reduce((sum, share) => sum + (share.alone ?? Number.NaN), 0);
  const saved = alone - order.priced.total;
  if (shares.length === 0 || Number.isNaN(saved)) return [];
  return [
    saved > 0
      ? `Together ${plainMoney(saved)} less than ${plainMoney(alone)} for each alone.`
      : 'Together nothing is saved over each alone.',
  ];
}

function missingWords(report: OrderReport, alternatives: readonly Alternative[]): readonly string[] {
  const why = {
    nowhere: 'in no shops file',
    'sold out': 'not enough in stock anywhere',
    'no id': 'no id to order it by: add `sold-as`',
  };
  return report.missing.map(({ part, craft, why: reason }) => {
    const other = alternatives.find((one) => one.part === part);
    const instead = !other
      ? ''
      : other.found
        ? ` Fits instead: ${other.found.part} from ${other.found.shop}, ${plainMoney(other.found.cost)}.`
        : ' Nothing else that is offered fits.';
    return `${part} for ${craft}: ${why[reason]}.${instead}`;
  });
}

/** A heading with its lines; nothing without any. */
const titled = (title: string, lines: readonly string[], mark: string): readonly string[] =>
  lines.length === 0 ? [] : [title, ...lines.map((line) => mark + line)];
