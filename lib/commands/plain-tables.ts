import type { DishCostsAnswer } from '../answers/dish-costs-shape';
import type { MenuMixAnswer } from '../answers/menu-mix-shape';
import { perCentFigure } from '../format/figures';
import { currencySign, moneyFigure } from '../format/money';
import { plainText } from '../format/phrase';
import { portionsFigure } from '../format/portions';
import { textTable } from '../format/text-table';
import { dishCostHeads } from '../format/words/dish-costs';
import { mixBasis, mixSentences } from '../format/words/menu-mix';
import { costNextPhrase, NOTES } from '../format/words/mix-notes';
import { atLeast, columnHeads, type MixColumn, missingLines, sureness, TABLE } from '../format/words/mix-table';

const MIX_COLUMNS: readonly (readonly [MixColumn, 'left' | 'right'])[] = [
  ['item', 'left'],
  ['sold', 'right'],
  ['share', 'right'],
  ['price', 'right'],
  ['plateCost', 'right'],
  ['foodCost', 'right'],
  ['leaves', 'right'],
  ['contribution', 'right'],
  ['class', 'left'],
  ['sure', 'left'],
];

export function headed(head: string, unit: string): string {
  return unit === '' ? head : `${head}, ${unit}`;
}

interface Costed {
  readonly plateCost: string | null;
  readonly floor: string | null;
  readonly linesMissing: number | null;
  readonly linesTotal: number | null;
  readonly estimated: boolean;
}

export function issueLines(issues: MenuMixAnswer['issues']): string {
  return issues.length === 0 ? '' : `\n${issues.map(({ text }) => `- ${text}`).join('\n')}\n`;
}

/** The mix for a terminal: the sentences of the page, the table, what is missing. */
export function menuMixTable(answer: MenuMixAnswer): string {
  const { currency, locale } = answer;
  const purse = { currency, locale };
  const telling = { locale, running: false };
  const money = (amount: string | null) => (amount === null ? TABLE.unknown : moneyFigure(amount, purse));
  const share = (fraction: number | null) => (fraction === null ? TABLE.unknown : perCentFigure(fraction, locale));
  const heads = columnHeads(currencySign(purse), answer.resamples === null ? null : String(answer.resamples));
  const rows = answer.items.map((item) => [
    item.item,
    portionsFigure(item.sold, locale),
    perCentFigure(item.share, locale),
    money(item.netPrice),
    plateCostCell(item, purse),
    share(item.foodCostPct),
    money(item.margin),
    money(item.contribution),
    item.class ?? TABLE.notClassed,
    sureness(item, locale).text,
  ]);
  const columns = MIX_COLUMNS.map(([column, side]) => ({ head: headed(...heads[column]), side }));
  const sentences = plainText(mixSentences(answer, telling));
  const basis = mixBasis(answer, telling).join(' · ');
  return `${sentences}\n${basis}\n\n${textTable(columns, rows)}${costNextLine(answer)}${issueLines(answer.issues)}`;
}

function costNextLine({ costNext, locale }: MenuMixAnswer): string {
  return costNext.length === 0 ? '' : `\n${NOTES.costNext}: ${plainText(costNextPhrase(costNext, locale))}\n`;
}

function plateCostCell(item: Costed, purse: { readonly currency: string; readonly locale: string }): string {
  if (item.plateCost !== null) return `${moneyFigure(item.plateCost, purse)}${item.estimated ? ' est.' : ''}`;
  if (item.floor === null) return TABLE.notCosted;
  const { linesMissing, linesTotal } = item;
  const doubt = linesMissing === null || linesTotal === null ? '' : ` (${missingLines(linesMissing, linesTotal)})`;
  return `${atLeast(item.floor, purse)}${doubt}`;
}

/** What each dish costs, for a terminal. */
export function dishCostsTable(answer: DishCostsAnswer): string {
  const { currency, locale } = answer;
  const purse = { currency, locale };
  const money = (amount: string | null) => (amount === null ? TABLE.unknown : moneyFigure(amount, purse));
  const rows = answer.items.map((item) => [
    item.item,
    item.channel,
    portionsFigure(item.sold, locale),
    money(item.netPrice),
    plateCostCell(item, purse),
    item.foodCostPct === null ? TABLE.unknown : perCentFigure(item.foodCostPct, locale),
    money(item.margin),
  ]);
  const columns = dishCostHeads(currencySign(purse)).map((head, at) => ({
    head,
    side: at < 2 ? ('left' as const) : ('right' as const),
  }));
  return `${textTable(columns, rows)}${issueLines(answer.issues)}`;
}
