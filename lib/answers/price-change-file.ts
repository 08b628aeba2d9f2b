import { type ColumnKinds, type ReportFile, reportSheet } from '../format/report-file';
import { priceChangeBasis } from '../format/words/price-reports';
import { fileBasis } from './file-basis';
import type { PriceChangeAnswer } from './price-change-shape';

const COLUMNS: ColumnKinds<PriceChangeAnswer['items'][number]> = {
  item: 'text',
  section: 'text',
  sold: 'portions',
  estimated: 'yesNo',
  menuPrice: 'money',
  netPriceBefore: 'money',
  netPrice: 'money',
  plateCostBefore: 'money',
  plateCost: 'money',
  foodCostBeforePct: 'share',
  foodCostPct: 'share',
  marginBefore: 'money',
  margin: 'money',
  contributionChange: 'money',
  classBefore: 'text',
  classAfter: 'text',
  holdMarginPrice: 'money',
  holdPctPrice: 'money',
  breakEvenSalesChange: 'share',
};

/** The period before and after. */
type Row = PriceChangeAnswer['before'] & { readonly prices: 'before' | 'after' };

const PERIOD: ColumnKinds<Row> = {
  prices: 'text',
  revenue: 'money',
  plateCost: 'money',
  foodCostPct: 'share',
  contribution: 'money',
  margin: 'money',
};

/** A change of prices as files of rows, one an item; a workbook has the period before and after beside them. */
export function priceChangeFile(answer: PriceChangeAnswer): ReportFile {
  const period: readonly Row[] = [
    { prices: 'before', ...answer.before },
    { prices: 'after', ...answer.after },
  ];
  return {
    name: 'price-change',
    currency: answer.currency,
    basis: fileBasis(answer, priceChangeBasis(answer.edits, answer.section)),
    issues: answer.issues.map(({ text }) => text),
    sheets: [reportSheet('price change', COLUMNS, answer.items), reportSheet('period', PERIOD, period)],
  };
}
