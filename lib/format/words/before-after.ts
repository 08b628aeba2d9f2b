import { figure } from '../figures';
import { countWord } from '../portions';

export const BEFORE_AFTER = {
  caption: 'Before and after, dearest change first',
  region: 'The dishes before and after, all columns',
  dish: 'Dish',
  total: 'The period',
  noChange: 'no change',
  none: '–',
  unknown: 'unknown',
  notClassed: 'not classed',
  /** No number of portions earns as much as before. */
  never: 'no number',
  asChanges: 'show changes from zero',
  asMargins: 'show what is left',
  was: (name: string): string => `was ${name}`,
  marginAxis: (unit: string): string => `Leaves, ${unit}: tick before, mark after`,
  changeAxis: (unit: string): string => `Change, ${unit}, from zero`,
} as const;

/** Head and unit of each column after the picture. */
export function changeHeads(sign: string) {
  return {
    before: ['Before', `${sign} each`],
    after: ['After', `${sign} each`],
    change: ['Change', `${sign} each`],
    foodCost: ['Food cost after', '%'],
    inPeriod: ['In the period', `${sign} change`],
    holdMargin: ['To hold the margin', `${sign} on the menu`],
    holdPct: ['To hold food cost', `${sign} on the menu`],
    breakEven: ['To earn as before', 'portions'],
    class: ['Class', ''],
  } as const satisfies Record<string, readonly [string, string]>;
}

/** Below the dishes that are shown, what leads to the others. */
export function moreDishes(count: number, locale: string): string {
  return `and ${figure(count, locale, 0)} more`;
}

/** The dishes that nothing changes for, as one row. */
export function untouchedDishes(count: number, locale: string): string {
  const word = countWord(count, locale);
  return `${word.charAt(0).toUpperCase()}${word.slice(1)} ${count === 1 ? 'dish' : 'dishes'} as now`;
}

export function averages(before: string, after: string): string {
  return before === after ? `average ${before}` : `average ${before}, then ${after}`;
}
