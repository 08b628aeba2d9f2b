import type { WeekAnswer } from '../answers/week-shape';
import { currencySign } from '../format/money';
import { plainText } from '../format/phrase';
import { textTable } from '../format/text-table';
import { weekRows, weekSum } from '../format/week-rows';
import { unsoldDays, WEEK, WEEK_BASIS, weekSentences } from '../format/words/week';
import { WEEK_COLUMNS, weekHeads } from '../format/words/week-table';
import { headed, issueLines } from './plain-tables';

/** The week for a terminal: the sentences of the page, the days, what did not sell, what is missing. */
export function weekTable(answer: WeekAnswer): string {
  const purse = { currency: answer.currency, locale: answer.locale };
  const heads = weekHeads(currencySign(purse), answer.before !== null);
  const columns = WEEK_COLUMNS.map((column) => ({
    head: headed(...heads[column]),
    side: column === 'day' ? ('left' as const) : ('right' as const),
  }));
  const rows = [...weekRows(answer, purse).map(({ cells }) => cells), weekSum(answer, purse)];
  const cells = rows.map((row) => WEEK_COLUMNS.map((column) => row[column]));
  const unsold = answer.unsold.map((item) => `- ${item.item}: ${unsoldDays(item, answer.locale)}`);
  const without = unsold.length === 0 ? '' : `\n${WEEK.unsold}:\n${unsold.join('\n')}\n`;
  const head = `${plainText(weekSentences(answer))}\n${WEEK_BASIS.join(' · ')}`;
  return `${head}\n\n${textTable(columns, cells)}${without}${issueLines(answer.issues)}`;
}
