import type { DishCostAnswer } from '../answers/dish-cost-shape';
import type { Purse } from '../format/money';
import { plainText } from '../format/phrase';
import { textTable } from '../format/text-table';
import { costHead, headWords, meanWords, recipeWords, spanWords, WORKING } from '../format/words/cost-working';
import { printedSheet, type SheetRow } from '../format/working-sheet';
import { headed, issueLines } from './plain-tables';

/** The working of one cost, for a terminal: a line a line, set in under what it is part of, and where each price comes from. */
export function dishCostSheet(answer: DishCostAnswer): string {
  const purse = { currency: answer.currency, locale: answer.locale };
  const { rows, total, inOneLine } = printedSheet(answer, purse);
  const flat = (row: SheetRow, level: number): readonly string[][] => [
    [`${'  '.repeat(level)}${row.name}`, row.sum, row.cost, [...row.notes, ...row.missing].join('; ')],
    ...row.rows.flatMap((each) => flat(each, level + 1)),
  ];
  const heads = [WORKING.line, WORKING.how, headed(...costHead(purse)), WORKING.from];
  const columns = heads.map((name, at) => ({ head: name, side: at === 2 ? ('right' as const) : ('left' as const) }));
  const sum = [answer.kind === 'component' ? WORKING.batchCost : WORKING.plateCost, '', total];
  const lines = [...rows.flatMap((row) => flat(row, 0)), sum];
  const head = [...sheetHead(answer, purse), ...(inOneLine === null ? [] : [plainText(inOneLine)])];
  return `${head.join('\n')}\n\n${textTable(columns, lines)}${issueLines(answer.issues)}`;
}

function sheetHead(answer: DishCostAnswer, purse: Purse): readonly string[] {
  const { period, recipe } = answer;
  return [
    headWords(answer, purse.locale),
    ...(recipe === null ? [] : [recipeWords(recipe, answer.kind === 'component', purse.locale)]),
    ...(period === null ? [] : [meanWords(period, answer, purse)]),
    ...(period === null ? [] : spanWords(period, purse).map((words) => `- ${words}`)),
  ];
}
