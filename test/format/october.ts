import type { MenuMixAnswer } from '@/lib/answers/menu-mix-shape';

type Name = 'star' | 'plowhorse' | 'puzzle' | 'dog';
type Row = [
  item: string,
  section: string,
  sold: number,
  comps: number,
  price: number,
  cost: number | null,
  of: Name | null,
  sure: number,
  other: Name | null,
];

const ROWS: readonly Row[] = [
  ['Buckwheat soufflé, oat cream', 'Warm', 361, 2, 12.64, 2.41, 'star', 1, null],
  ['Dune', 'Cold', 312, 4, 15, 3.18, 'star', 1, null],
  ['Baked chocolate, malt crumb', 'Warm', 402, 3, 11.73, 3.64, 'plowhorse', 0.81, 'star'],
  ['Chocolate slate', 'Cold', 276, 2, 12.27, 3.93, 'star', 0.95, null],
  ['Hazelnut tide', 'Cold', 204, 1, 13.64, 4.31, 'star', 0.99, null],
  ['Three truffles', 'Small', 388, 14, 6.36, 2.02, 'plowhorse', 1, null],
  ['Brown-bread ice, barley', 'Frozen', 214, 5, 9.09, 1.88, 'plowhorse', 1, null],
  ['Cold chocolate, pine salt', 'Cold', 187, 2, 11.82, 3.71, 'plowhorse', 0.69, 'star'],
  ['Rye choux, hay cream', 'Warm', 143, 1, 11.86, 2.55, 'puzzle', 0.65, 'star'],
  ['Warm oat pudding, heather honey', 'Warm', 168, 1, 9.05, 1.74, 'plowhorse', 0.84, 'dog'],
  ['Cocoa-nib parfait', 'Frozen', 158, 0, 10.91, 3.45, 'plowhorse', 0.68, 'dog'],
  ['Quince and bay custard', 'Cold', 131, 0, 10.45, 1.62, 'puzzle', 0.86, 'star'],
  ['Sheep’s curd, fig leaf', 'Cold', 96, 1, 11.36, null, null, 1, null],
  ['Caraway madeleines', 'Small', 180, 21, 5.91, 0.98, 'plowhorse', 0.95, null],
  ['Sorrel granita, green apple', 'Frozen', 118, 6, 8.18, 1.36, 'dog', 0.97, null],
  ['Iced pear lantern', 'Frozen', 74, 0, 13.64, 3.02, 'puzzle', 1, null],
];

const ESTIMATED = 'Iced pear lantern';
const SOLD = ROWS.reduce((sum, row) => sum + row[2], 0);

function shares(of: Name, sure: number, other: Name | null): Record<Name, number> {
  const all = { star: 0, plowhorse: 0, puzzle: 0, dog: 0 };
  all[of] = sure;
  if (other) all[other] = 1 - sure;
  return all;
}

function item([name, section, sold, comps, price, cost, of, sure, other]: Row): MenuMixAnswer['items'][number] {
  const share = sold / SOLD;
  const margin = cost === null ? null : price - cost;
  return {
    item: name,
    section,
    sold,
    comps,
    share,
    expected: SOLD / ROWS.length,
    daysOnSale: 31,
    netPrice: price.toFixed(2),
    revenue: (price * sold).toFixed(2),
    plateCost: cost === null ? null : cost.toFixed(2),
    floor: cost === null ? '1.12' : null,
    linesMissing: cost === null ? 2 : null,
    linesTotal: cost === null ? 7 : null,
    estimated: name === ESTIMATED,
    foodCostPct: cost === null ? null : cost / price,
    margin: margin === null ? null : margin.toFixed(2),
    contribution: margin === null ? null : (margin * sold).toFixed(2),
    class: of,
    classShares: of === null ? null : shares(of, sure, other),
    settled: of === null ? null : other === null,
    between: of === null || other === null ? null : [of, other],
    spread:
      margin === null ? null : { share: 0.0075 * Math.sqrt(share / 0.08), margin: 0.16 * Math.sqrt(0.05 / share) },
    advice: null,
  };
}

const items = ROWS.map(item).sort((a, b) => Number(b.contribution ?? -1) - Number(a.contribution ?? -1));
const costed = items.filter((one) => one.margin !== null);

function sum(
  of: readonly MenuMixAnswer['items'][number][],
  value: (one: MenuMixAnswer['items'][number]) => number,
): number {
  return of.reduce((total, one) => total + value(one), 0);
}

const costedSold = sum(costed, (one) => one.sold);
const costedRevenue = sum(costed, (one) => Number(one.revenue));
const left = sum(costed, (one) => Number(one.contribution));

/** A month of Marram House as the answer has it: sixteen dishes in four sections, six on the line, one half known, one on estimate. */
export const october: MenuMixAnswer = {
  venue: 'Marram House',
  month: '2026-10',
  period: { from: '2026-10-01', to: '2026-11-01' },
  model: 'kasavana-smith',
  currency: 'EUR',
  locale: 'en-IE',
  section: null,
  setMenus: 'section',
  setMenusSold: 0,
  tradingDays: 31,
  resamples: 2000,
  thresholds: {
    popularity: 0.7 / ROWS.length,
    popularityFactor: 0.7,
    margin: (left / costedSold).toFixed(6),
    foodCostPct: null,
    contribution: null,
    goalValue: null,
    labour: null,
  },
  totals: {
    sold: SOLD,
    comps: sum(items, (one) => one.comps),
    revenue: sum(items, (one) => Number(one.revenue)).toFixed(2),
    costedSold,
    costedRevenue: costedRevenue.toFixed(2),
    estimatedSold: sum(
      costed.filter((one) => one.estimated),
      (one) => one.sold,
    ),
    plateCost: (costedRevenue - left).toFixed(2),
    foodCostPct: (costedRevenue - left) / costedRevenue,
    margin: left.toFixed(2),
  },
  coverage: costedSold / SOLD,
  waiting: { rows: 0, portions: 0, names: 0, largest: [] },
  stockCounted: false,
  costNext: items.filter((one) => one.margin === null).map((one) => ({ item: one.item, share: one.share })),
  items,
  issues: [
    {
      code: 'no-price',
      about: 'fig leaf',
      text: 'Fig leaf has no price on 1 October 2026. Give its offer one in offer_prices.csv.',
    },
    { code: 'no-offer', about: 'heather ash', text: 'Nobody offers heather ash. Add an offer for it in offers.csv.' },
  ],
};
