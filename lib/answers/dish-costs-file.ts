import { type ColumnKinds, type ReportFile, reportSheet } from '../format/report-file';
import { DISH_COSTS_BASIS } from '../format/words/dish-costs';
import type { DishCostsAnswer } from './dish-costs-shape';
import { fileBasis } from './file-basis';

const COLUMNS: ColumnKinds<DishCostsAnswer['items'][number]> = {
  item: 'text',
  kind: 'text',
  section: 'text',
  channel: 'text',
  sold: 'portions',
  netPrice: 'money',
  plateCost: 'money',
  floor: 'money',
  linesMissing: 'count',
  linesTotal: 'count',
  estimated: 'yesNo',
  recipeLabour: 'money',
  foodPlusLabour: 'money',
  smallBatchLoss: 'money',
  foodCostPct: 'share',
  commission: 'money',
  margin: 'money',
  platingMinutes: 'minutes',
  marginPerPlatingMinute: 'money',
};

const EXTRAS: ColumnKinds<DishCostsAnswer['extras'][number]> = {
  item: 'text',
  covers: 'count',
  perCover: 'money',
  cost: 'money',
};

/** What each dish costs as files of rows, one an item and channel; a workbook has the extras of every cover beside them. */
export function dishCostsFile(answer: DishCostsAnswer): ReportFile {
  const extras = answer.extras.length === 0 ? [] : [reportSheet('per cover', EXTRAS, answer.extras)];
  return {
    name: 'dish-costs',
    currency: answer.currency,
    basis: fileBasis(answer, DISH_COSTS_BASIS),
    issues: answer.issues.map(({ text }) => text),
    sheets: [reportSheet('dish costs', COLUMNS, answer.items), ...extras],
  };
}
