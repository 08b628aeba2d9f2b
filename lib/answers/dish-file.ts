import { type ColumnKinds, type ReportFile, reportSheet } from '../format/report-file';
import { MODEL_SOURCE } from '../format/words/classes';
import { dishBasis } from '../format/words/dish';
import type { DishAnswer, DishPeriodAnswer } from './dish-shape';
import { fileBasis } from './file-basis';

const PERIODS: ColumnKinds<DishPeriodAnswer> = {
  month: 'text',
  from: 'date',
  to: 'date',
  onSale: 'yesNo',
  sold: 'portions',
  comps: 'portions',
  share: 'share',
  listPrice: 'money',
  netPrice: 'money',
  plateCost: 'money',
  estimated: 'yesNo',
  foodCostPct: 'share',
  margin: 'money',
};

const BOUGHT: ColumnKinds<DishAnswer['bought'][number]> = {
  item: 'text',
  isEstimate: 'yesNo',
  quantity: 'number',
  unit: 'text',
  cost: 'price',
};

type Moved = NonNullable<NonNullable<DishAnswer['change']>['plateCost']>['ingredients'][number];

const CHANGE: ColumnKinds<Moved> = {
  item: 'text',
  isEstimate: 'yesNo',
  before: 'price',
  after: 'price',
  price: 'price',
  recipe: 'price',
};

/** A dish as files of rows, one a period; a workbook has what is bought for a portion, and what changed, beside them. */
export function dishFile(answer: DishAnswer): ReportFile {
  const moved = answer.change?.plateCost?.ingredients ?? [];
  return {
    name: 'dish',
    currency: answer.currency,
    basis: fileBasis(answer, [answer.item, ...dishBasis(answer, MODEL_SOURCE)]),
    issues: answer.issues.map(({ text }) => text),
    sheets: [
      reportSheet('periods', PERIODS, answer.periods),
      ...(answer.bought.length === 0 ? [] : [reportSheet('bought for a portion', BOUGHT, answer.bought)]),
      ...(moved.length === 0 ? [] : [reportSheet('what changed', CHANGE, moved)]),
    ],
  };
}
