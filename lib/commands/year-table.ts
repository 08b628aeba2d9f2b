import type { YearAnswer } from '../answers/year-shape';
import { currencySign } from '../format/money';
import { plainText } from '../format/phrase';
import { textTable } from '../format/text-table';
import { yearBasis, yearSentences } from '../format/words/year';
import { YEAR_COLUMNS, yearHeads } from '../format/words/year-table';
import { yearRows, yearSum } from '../format/year-rows';
import { headed, issueLines } from './plain-tables';

/** The year for a terminal: the sentences of the page, the periods, what is missing. */
export function yearTable(answer: YearAnswer): string {
  const purse = { currency: answer.currency, locale: answer.locale };
  const heads = yearHeads(currencySign(purse), !answer.month.includes('P'));
  const columns = YEAR_COLUMNS.map((column) => ({
    head: headed(...heads[column]),
    side: column === 'period' || column === 'menu' ? ('left' as const) : ('right' as const),
  }));
  const sum = yearSum(answer, purse);
  const rows = yearRows(answer.periods, purse).map(({ cells, note }) =>
    YEAR_COLUMNS.map((column) => (column === 'period' && note !== null ? `${cells.period} (${note})` : cells[column])),
  );
  const total = YEAR_COLUMNS.map((column) => sum[column] ?? '');
  const head = `${plainText(yearSentences(answer))}\n${yearBasis(answer).join(' · ')}`;
  return `${head}\n\n${textTable(columns, [...rows, total])}${issueLines(answer.issues)}`;
}
