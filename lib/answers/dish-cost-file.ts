import { type ColumnKinds, type ReportFile, reportSheet } from '../format/report-file';
import { headWords } from '../format/words/cost-working';
import { REPORT_FILE } from '../format/words/report-file';
import type { CostLineAnswer, DishCostAnswer } from './dish-cost-shape';

type Offer = NonNullable<CostLineAnswer['offer']>;
type OfTheOffer = 'supplier' | 'code' | 'packCount' | 'packSize' | 'packUnit' | 'price' | 'priceKind' | 'priceFrom';

/** A line with how deep it stands, from 1, and the offer that its price comes from. */
type FlatLine = { readonly level: number } & Omit<CostLineAnswer, 'offer'> & {
    readonly [Name in OfTheOffer]: Offer[Name] | null;
  };

const COLUMNS: ColumnKinds<FlatLine> = {
  level: 'count',
  item: 'text',
  kind: 'text',
  position: 'count',
  quantity: 'number',
  unit: 'text',
  as: 'text',
  use: 'text',
  part: 'text',
  choice: 'text',
  sharePct: 'share',
  byProduct: 'text',
  bought: 'number',
  boughtUnit: 'text',
  usableYieldPct: 'share',
  unitPrice: 'price',
  cost: 'price',
  floor: 'price',
  department: 'text',
  estimated: 'yesNo',
  closed: 'yesNo',
  supplier: 'text',
  code: 'text',
  packCount: 'number',
  packSize: 'number',
  packUnit: 'text',
  price: 'number', // in the offer's currency, which may be another
  priceKind: 'text',
  priceFrom: 'date',
};

/** The working of one cost as files of rows: one a line, each under the one that it is part of. */
export function dishCostFile(answer: DishCostAnswer): ReportFile {
  return {
    name: 'dish-cost',
    currency: answer.currency,
    basis: [
      [REPORT_FILE.venue, answer.venue],
      [REPORT_FILE.costOf, headWords(answer, answer.locale)],
    ],
    issues: answer.issues.map(({ text }) => text),
    sheets: [
      reportSheet(
        'dish cost',
        COLUMNS,
        answer.lines.flatMap((line) => flat(line, 1)),
      ),
    ],
  };
}

function flat({ offer, ...line }: CostLineAnswer, level: number): readonly FlatLine[] {
  const {
    supplier = null,
    code = null,
    packCount = null,
    packSize = null,
    packUnit = null,
    price = null,
    priceKind = null,
    priceFrom = null,
  } = offer ?? {};
  const ofTheOffer = { supplier, code, packCount, packSize, packUnit, price, priceKind, priceFrom };
  return [{ level, ...line, ...ofTheOffer }, ...line.lines.flatMap((each) => flat(each, level + 1))];
}
