import { figure } from '../figures';
import { moneyFigure, type Purse } from '../money';
import { classBefore, isDoubtedBefore, isOnTheLine, otherClass, pairInPerCent, type Standing } from './classes';

export const TABLE = {
  caption: 'The dishes, by what they leave in the period',
  region: 'The dishes of the mix, all columns',
  unknown: 'unknown',
  notCosted: 'not costed',
  notClassed: 'not classed',
  estimate: 'cost is the owner’s estimate',
  none: '–',
} as const;

/** The columns of the mix, in their order. */
export const MIX_COLUMNS = [
  'item',
  'sold',
  'comps',
  'share',
  'price',
  'plateCost',
  'foodCost',
  'leaves',
  'contribution',
  'class',
  'sure',
] as const;

export type MixColumn = (typeof MIX_COLUMNS)[number];

/** Head and unit of each column. */
export function columnHeads(
  sign: string,
  resamples: string | null,
): Readonly<Record<MixColumn, readonly [string, string]>> {
  return {
    item: ['Dish', ''],
    sold: ['Sold', 'portions'],
    comps: ['Comps', 'portions'],
    share: ['Share', '%'],
    price: ['Price', `${sign} net`],
    plateCost: ['Plate cost', sign],
    foodCost: ['Food cost', '%'],
    leaves: ['Leaves', `${sign} each`],
    contribution: ['In the period', sign],
    class: ['Class', ''],
    sure: ['How sure', resamples === null ? '' : `% of ${resamples} resamples`],
  };
}

/** What the sorted column adds to its unit. */
export function sortedWords(column: MixColumn, falling: boolean): string {
  if (column === 'item' || column === 'class') return falling ? 'Z to A' : 'A to Z';
  if (column === 'sure') return falling ? 'surest first' : 'least sure first';
  return falling ? 'most first' : 'least first';
}

/** Under the name of a dish whose cost is not fully known. Why is said among the issues: a price is only one of the things to lack. */
export function missingLines(missing: number, lines: number): string {
  return `${missing} of ${lines} ${lines === 1 ? 'line' : 'lines'} ${missing === 1 ? 'is' : 'are'} not known`;
}

export function atLeast(floor: string, purse: Purse): string {
  return `at least ${moneyFigure(floor, purse)}`;
}

/** The words in the last column, and the two shares its bar is drawn from. */
export interface Sureness {
  readonly text: string;
  readonly bar: readonly [number, number] | null;
  /** What it sorts by: the share of its own class. */
  readonly share: number | null;
}

export function sureness(standing: Standing, locale: string): Sureness {
  const { class: own, classShares } = standing;
  if (own === null) return { text: '', bar: null, share: null };
  if (classShares === null) return { text: 'too few days', bar: null, share: null };
  const share = classShares[own] ?? 0;
  const text = figure(share * 100, locale, 0);
  if (isDoubtedBefore(standing)) return { text: `${text}, ${classBefore(standing)} before`, bar: null, share };
  const other = otherClass(standing);
  if (other === null) {
    return { text: standing.settled === false ? `on the line, ${text}` : `settled, ${text}`, bar: null, share };
  }
  const second = classShares[other] ?? 0;
  const [first, rest] = pairInPerCent(share, second);
  const pair = `${figure(first, locale, 0)} : ${figure(rest, locale, 0)}`;
  return { text: `${pair} ${other}`, bar: [share, second], share };
}

/** The class under the name of a dish, where its own column is folded away. */
export function classWords(standing: Standing): string {
  const { class: own } = standing;
  if (own === null) return TABLE.notClassed;
  return isOnTheLine(standing) ? `${own}, on the line` : own;
}

export function dishCount(count: number): string {
  return count === 1 ? '1 dish' : `${count} dishes`;
}

/** Beside the total where some dishes have no cost: what its means are means of. */
export function costedOnly(costed: number): string {
  return `costs and margins: of the ${costed} costed`;
}

/** The foot of the sheet: which venue and period, and how it is valued. */
export function mixFoot(venue: string, period: string, state: string): readonly string[] {
  return [
    `${venue} · ${period} · ${state}`,
    'Costs: chosen offer, price in force each day',
    'Prices: what was paid for a portion, without sales tax',
    'Comps are counted apart and are in no average',
  ];
}
