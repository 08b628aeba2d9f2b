import { mkdirSync, mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** A published menu table as a data folder, and what it must come back with. */
export interface PublishedMenu {
  readonly venue: string;
  readonly currency: string;
  readonly items: readonly {
    readonly name: string;
    readonly sold: number;
    readonly cost: string;
    readonly price: string;
    readonly class: string;
    readonly sharePct: number;
  }[];
  /** How far a share may be from the printed one, in points. */
  readonly shareWithin: number;
  readonly popularityPct: number;
  readonly meanMargin: number;
  /** How far the mean margin may be from the printed one. */
  readonly within: number;
}

/**
 * Dittmer P.R. & Keefe J.D. (2009), Principles of Food, Beverage, and Labor Cost Controls, 9th ed., Wiley, ch. 11, problem 1:
 * sold, cost and price seen; classes, shares and thresholds derived from them by Kasavana & Smith (1982).
 */
export const EIGHT_ITEMS: PublishedMenu = {
  venue: 'Eight items',
  currency: 'USD',
  items: [
    { name: 'Strip Steak', sold: 73, cost: '6.50', price: '18.90', class: 'star', sharePct: 11.6057 },
    { name: 'Fried Chicken', sold: 90, cost: '3.90', price: '12.75', class: 'plowhorse', sharePct: 14.3084 },
    { name: 'Lamb Chops', sold: 55, cost: '7.00', price: '20.35', class: 'puzzle', sharePct: 8.744 },
    { name: 'Fried Scallops', sold: 92, cost: '5.90', price: '18.50', class: 'star', sharePct: 14.6264 },
    { name: 'Broiled Haddock', sold: 85, cost: '4.50', price: '15.65', class: 'plowhorse', sharePct: 13.5135 },
    { name: 'Roast Turkey', sold: 92, cost: '3.00', price: '12.00', class: 'plowhorse', sharePct: 14.6264 },
    { name: 'Baked Stuffed Shrimp', sold: 77, cost: '6.70', price: '18.50', class: 'star', sharePct: 12.2417 },
    { name: 'Veal Marsala', sold: 65, cost: '6.50', price: '18.75', class: 'star', sharePct: 10.3339 },
  ],
  shareWithin: 5e-5,
  popularityPct: 8.75,
  meanMargin: 11.249205,
  within: 5e-7,
};

/**
 * Lee B.-S., Shin S.-Y. & Choi M.-K. (2006), Using Activity-Based Cost in Menu Engineering for Restaurant Menu Analysis (abstract): shares, margins,
 * classes and the mean margin of 21,957 are printed. Portions are share x 100; the cost of 1 is ours.
 */
export const SIX_ITEMS: PublishedMenu = {
  venue: 'Six items',
  currency: 'KRW',
  items: [
    { name: 'Beef sirloin steak', sold: 6195, cost: '1', price: '21201', class: 'plowhorse', sharePct: 61.95 },
    { name: 'Beef tenderloin steak', sold: 1713, cost: '1', price: '21901', class: 'plowhorse', sharePct: 17.13 },
    { name: 'BBQ pork ribs', sold: 494, cost: '1', price: '29001', class: 'puzzle', sharePct: 4.94 },
    { name: 'Salmon fillet', sold: 266, cost: '1', price: '25811', class: 'puzzle', sharePct: 2.66 },
    { name: 'Seafood platter', sold: 577, cost: '1', price: '22401', class: 'puzzle', sharePct: 5.77 },
    { name: 'Teriyaki chicken', sold: 756, cost: '1', price: '22001', class: 'puzzle', sharePct: 7.56 },
  ],
  shareWithin: 0.01, // the printed shares add up to 100.01
  popularityPct: 70 / 6,
  meanMargin: 21957,
  within: 1,
};

/** The month in which the published tables are sold, all on one day: a table knows no days. */
export const PUBLISHED_MONTH = '2026-09';
const DAY = `${PUBLISHED_MONTH}-14`;

/**
 * Writes a published table as a folder of files: each dish is one piece of one ingredient that costs what the plate does, so that the
 * cost comes through offers, prices and recipes. Gives the folder's path.
 */
export function publishedFolder(menu: PublishedMenu): string {
  const folder = join(mkdtempSync(join(tmpdir(), 'plateworth-published-')), menu.venue);
  mkdirSync(folder);
  const file = (name: string, head: string, rows: readonly (readonly (string | number)[])[]) =>
    writeFileSync(join(folder, name), `${[head, ...rows.map((row) => row.join(','))].join('\n')}\n`);
  const { items } = menu;
  const bought = (name: string) => `${name} as bought`;
  file('venue.csv', 'setting,value', [
    ['name', menu.venue],
    ['currency', menu.currency],
    ['q_factor_pct', 0],
  ]);
  file(
    'ingredients.csv',
    'ingredient,measure',
    items.map(({ name }) => [bought(name), 'each']),
  );
  file(
    'offers.csv',
    'supplier,code,ingredient,pack_count,pack_size,pack_unit',
    items.map(({ name }, at) => ['The supplier', `P${at}`, bought(name), 1, 10, 'each']),
  );
  file(
    'offer_prices.csv',
    'supplier,code,valid_from,price,kind',
    items.map(({ cost }, at) => ['The supplier', `P${at}`, '2026-01-01', (Number(cost) * 10).toFixed(2), 'list']),
  );
  file(
    'recipes.csv',
    'recipe,kind,valid_from',
    items.map(({ name }) => [name, 'dish', '2026-01-01']),
  );
  file(
    'recipe_lines.csv',
    'recipe,valid_from,item,quantity,unit',
    items.map(({ name }) => [name, '2026-01-01', bought(name), 1, 'each']),
  );
  file(
    'menu.csv',
    'item,valid_from,price,tax_pct,tax_included',
    items.map(({ name, price }) => [name, '2026-01-01', price, 0, 'no']),
  );
  file(
    'sales.csv',
    'date,item,sold,net_revenue',
    items.map(({ name, sold, price }) => [DAY, name, sold, (sold * Number(price)).toFixed(2)]),
  );
  return folder;
}
