import type { VenueSettings } from '../facts';
import type { Issue } from '../issue';
import type { ItemFigures } from '../item-figures';
import type { ModelName } from './mix-model';

/** Fewer trading days than these say too little of each weekday to resample. */
export const DAYS_FOR_CERTAINTY = 14;
/** Averages of fewer items say little. */
const ITEMS_FOR_AVERAGES = 6;
/** Days on sale that a class asks for, where the section traded at least twice as many. */
const DAYS_FOR_CLASS = 10;

/** Days on which an item has to be on sale to be classed: the lesser of 10 and half the section's trading days. */
export function daysForClass(tradingDays: number): number {
  return Math.min(DAYS_FOR_CLASS, tradingDays / 2);
}

/** What the sales of a section leave open as a whole. Where sales wait for a name, nobody has to load any. */
export function sectionIssues(about: string, items: number, tradingDays: number, isWaiting = false): readonly Issue[] {
  if (tradingDays === 0) return isWaiting ? [] : [{ code: 'no-sales', about, facts: {} }];
  return [
    ...(items < ITEMS_FOR_AVERAGES ? [{ code: 'few-items' as const, about, facts: { items } }] : []),
    ...(tradingDays < DAYS_FOR_CERTAINTY
      ? [{ code: 'few-trading-days' as const, about, facts: { days: tradingDays } }]
      : []),
  ];
}

/** What a model asks for that the venue has not stated. */
export function modelIssues(about: string, model: ModelName, { variableCost }: VenueSettings): readonly Issue[] {
  return model === 'goal-value' && variableCost === null ? [{ code: 'no-variable-cost', about, facts: {} }] : [];
}

/** What the sales of one item leave open: its revenue. */
export function revenueIssues(about: string, { standIn, unpriced, revenue }: ItemFigures): readonly Issue[] {
  return [
    ...(unpriced > 0 ? [{ code: 'no-menu-price' as const, about, facts: { portions: unpriced } }] : []),
    ...(standIn > 0 ? [{ code: 'stand-in-revenue' as const, about, facts: { portions: standIn } }] : []),
    ...(revenue !== null && revenue < 0 ? [{ code: 'revenue-negative' as const, about, facts: { revenue } }] : []),
  ];
}

/** An item that was on sale too rarely for a class. */
export function classIssues(about: string, daysOnSale: number, tradingDays: number): readonly Issue[] {
  const needed = daysForClass(tradingDays);
  return daysOnSale < needed
    ? [{ code: 'not-classed', about, facts: { days: daysOnSale, needed: Math.ceil(needed) } }]
    : [];
}
