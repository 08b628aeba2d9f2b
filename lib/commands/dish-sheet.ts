import type { DishAnswer } from '../answers/dish-shape';
import { figure } from '../format/figures';
import { currencySign, type Purse } from '../format/money';
import { plainText } from '../format/phrase';
import { textTable } from '../format/text-table';
import { MODEL_SOURCE } from '../format/words/classes';
import { DISH, dishBasis, dishHead, dishSentences, dishSum } from '../format/words/dish';
import { PERIOD_COLUMNS, periodCells, periodHeads } from '../format/words/dish-periods';
import { headed, issueLines } from './plain-tables';

/** One dish in depth, for a terminal: the head, the sum and the sentences of the page, what it takes, and a line a period. */
export function dishSheet(answer: DishAnswer): string {
  const purse = { currency: answer.currency, locale: answer.locale };
  const head = dishHead(answer, answer.locale).map(plainText).join(' · ');
  const sum = dishSum(answer, purse)
    .map(({ operator, figure, labels }) => `${operator ?? ' '} ${figure}  ${labels.join(', ')}`)
    .join('\n');
  const sentences = plainText(dishSentences(answer, purse)).trim();
  const basis = dishBasis(answer, MODEL_SOURCE).join(' · ');
  const top = [answer.item, head, sum, sentences, basis].filter((text) => text !== '').join('\n');
  return `${top}\n\n${boughtTable(answer, purse)}${periodTable(answer, purse)}${issueLines(answer.issues)}`;
}

function boughtTable({ bought }: DishAnswer, purse: Purse): string {
  if (bought.length === 0) return '';
  const rows = bought.map(({ item, isEstimate, cost }) => [
    isEstimate ? `${item}, ${DISH.estimate}` : item,
    figure(cost, purse.locale, 3),
  ]);
  const columns = [
    { head: DISH.bought, side: 'left' as const },
    { head: headed(DISH.cost, currencySign(purse)), side: 'right' as const },
  ];
  return `${textTable(columns, rows)}\n`;
}

function periodTable(answer: DishAnswer, purse: Purse): string {
  if (answer.periods.length === 0) return '';
  const heads = periodHeads(currencySign(purse), answer.kind === 'extra');
  const columns = PERIOD_COLUMNS.map((column) => ({
    head: headed(...heads[column]),
    side: column === 'month' || column === 'events' ? ('left' as const) : ('right' as const),
  }));
  const rows = answer.periods.map((row) => {
    const cells = periodCells(row, answer.menuEvents, answer.kind === 'extra', purse);
    return PERIOD_COLUMNS.map((column) => cells[column]);
  });
  return textTable(columns, rows);
}
