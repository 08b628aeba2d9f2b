import { type ColumnKinds, type ReportFile, reportSheet } from '../format/report-file';
import { turningBasis } from '../format/words/price-reports';
import { fileBasis } from './file-basis';
import type { TurningPricesAnswer } from './turning-prices-shape';

const COLUMNS: ColumnKinds<TurningPricesAnswer['items'][number]> = {
  item: 'text',
  section: 'text',
  ingredient: 'text',
  unit: 'text',
  priceNow: 'money',
  turningPrice: 'money',
  classNow: 'text',
  classBeyond: 'text',
};

/** Turning prices as files of rows, one an item. */
export function turningPricesFile(answer: TurningPricesAnswer): ReportFile {
  return {
    name: 'turning-prices',
    currency: answer.currency,
    basis: fileBasis(answer, turningBasis(answer.ingredient, answer.unit, answer.section, answer.model)),
    issues: answer.issues.map(({ text }) => text),
    sheets: [reportSheet('turning prices', COLUMNS, answer.items)],
  };
}
