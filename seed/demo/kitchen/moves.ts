import { addDays, type Day, dayText, weekday } from '../../../lib/core/days';
import { type Random, seededRandom } from '../../../lib/core/random';
import { between } from '../dice';
import { SEED } from '../house';
import { menuPriceOn } from '../menu';
import { TRADING_DAYS } from '../trade/calendar';
import { recipeOn } from './recipe-book';
import { componentsServed } from './served';
import { BROKEN, OVER_PRODUCTION, SPOILED, STAFF_FOOD, TASTED, TASTED_ON } from './waste-habits';

/** What left the kitchen without being sold. */
export interface Move {
  readonly day: Day;
  readonly item: string;
  readonly quantity: number;
  readonly unit: string;
  readonly reason: 'spoiled' | 'over_production' | 'broken' | 'staff_food' | 'tasting';
}

function isServed(dish: string, day: Day): boolean {
  return menuPriceOn(dish, 'dine_in', dayText(day)) !== null;
}

function stepped(random: Random, from: number, to: number, step: number): number {
  return Math.max(step, Math.round(between(random, from, to) / step) * step);
}

function thrown(day: Day, random: Random): readonly Move[] {
  return OVER_PRODUCTION.flatMap((each) => {
    const quantity = stepped(random, each.from, each.to, 10);
    const happens = random() < each.chance && (!('dish' in each) || isServed(each.dish, day));
    return happens ? [{ day, item: each.item, quantity, unit: 'g', reason: 'over_production' as const }] : [];
  });
}

function spoiled(day: Day, random: Random): readonly Move[] {
  return SPOILED.flatMap(({ item, chance, from, to, step, unit, dish }) => {
    const quantity = stepped(random, from, to, step);
    const happens = random() < chance && isServed(dish, day);
    return happens ? [{ day, item, quantity, unit, reason: 'spoiled' as const }] : [];
  });
}

/** Allowed breakage of the week that ends on a Sunday: served * r / (1 - r). */
export function allowedBreakage(item: string, sunday: Day): number {
  const week = [0, 1, 2, 3, 4, 5, 6].map((back) => addDays(sunday, -back));
  const served = week.reduce((sum, day) => sum + (componentsServed(day).get(item) ?? 0), 0);
  if (served === 0) return 0;
  const breakage = (recipeOn(item, dayText(sunday)).breakagePct ?? 0) / 100;
  return (served * breakage) / (1 - breakage);
}

function broken(sunday: Day, random: Random): readonly Move[] {
  return Object.entries(BROKEN).flatMap(([item, [from, to]]) => {
    const quantity = Math.round(allowedBreakage(item, sunday) * between(random, from, to));
    return quantity > 0 ? [{ day: sunday, item, quantity, unit: 'each', reason: 'broken' as const }] : [];
  });
}

function eaten(day: Day): readonly Move[] {
  return STAFF_FOOD.filter((each) => each.weekday === weekday(day)).map(({ item, quantity, unit }) => ({
    day,
    item,
    quantity,
    unit,
    reason: 'staff_food' as const,
  }));
}

function tasted(day: Day): readonly Move[] {
  const text = dayText(day);
  if (!TASTED_ON.some((each) => each === text)) return [];
  const isNew = (dish: string): boolean =>
    menuPriceOn(dish, 'dine_in', text) !== null && recipeOn(dish, text).from === text;
  return TASTED.filter(isNew).map((item) => ({ day, item, quantity: 2, unit: 'each', reason: 'tasting' as const }));
}

function drawMoves(): readonly Move[] {
  const random = seededRandom(SEED + 3);
  return TRADING_DAYS.flatMap((day) => [
    ...thrown(day, random),
    ...spoiled(day, random),
    ...(weekday(day) === 7 ? broken(day, random) : []),
    ...eaten(day),
    ...tasted(day),
  ]);
}

/** The waste book: what was thrown, broken, tasted and eaten by the staff. */
export const MOVES: readonly Move[] = drawMoves();
