import { addDays, type Day, dayText, weekday } from '../../../lib/core/days';
import { type Random, seededRandom } from '../../../lib/core/random';
import { between } from '../dice';
import { SEED } from '../house';
import { menuPriceOn } from '../menu';
import { TRADING_DAYS } from '../trade/calendar';
import { recipeOn } from './recipe-book';
import { componentsServed } from './served';

/** What left the kitchen without being sold. */
export interface Move {
  readonly day: Day;
  readonly item: string;
  readonly quantity: number;
  readonly unit: string;
  readonly reason: 'spoiled' | 'over_production' | 'broken' | 'staff_food' | 'tasting';
}

/** Thrown at close: how often, and how much of it. */
const OVER_PRODUCTION = [
  { item: 'Soft whipped cream', chance: 0.85, from: 80, to: 240 },
  { item: 'Italian meringue', chance: 0.7, from: 60, to: 160 },
  { item: 'Dressed strawberries', chance: 0.6, from: 60, to: 260, dish: 'Strawberries, crème fraîche ice' },
] as const;

/** Gone off, while the dish that uses it is on the menu: how often, and how much. */
const SPOILED = [
  { item: 'Double cream', chance: 0.025, from: 1, to: 2, step: 0.5, unit: 'l', dish: 'Marram slate' },
  { item: 'Whole milk', chance: 0.03, from: 1, to: 2, step: 1, unit: 'l', dish: 'Marram slate' },
  { item: 'Custard base', chance: 0.03, from: 400, to: 900, step: 50, unit: 'g', dish: 'Marram slate' },
  { item: 'Raspberries', chance: 0.14, from: 125, to: 250, step: 125, unit: 'g', dish: 'Three scoops' },
  {
    item: 'Strawberries',
    chance: 0.12,
    from: 200,
    to: 800,
    step: 100,
    unit: 'g',
    dish: 'Strawberries, crème fraîche ice',
  },
  { item: 'Black cherries', chance: 0.06, from: 200, to: 500, step: 100, unit: 'g', dish: 'Black cherry trifle' },
  { item: 'Rhubarb', chance: 0.06, from: 200, to: 600, step: 100, unit: 'g', dish: 'Rhubarb custard slice' },
  { item: 'Pineapple', chance: 0.05, from: 400, to: 1200, step: 100, unit: 'g', dish: 'Passion fruit pavé' },
  { item: 'Figs', chance: 0.12, from: 2, to: 6, step: 1, unit: 'each', dish: 'Figs, fig leaf cream' },
] as const;

/** Fragile things: the share of the allowed breakage that was written down; above 1 where the cooks were still learning. */
const BROKEN: Readonly<Record<string, readonly [from: number, to: number]>> = {
  'Tide sheets': [0.55, 1],
  'Nib tuiles': [0.55, 1.05],
  'Tart shells': [0.5, 1],
  'Choux buns': [0.5, 1],
  'Dulse glass': [0.6, 1.1],
  'Sesame brittle': [0.5, 1],
  'Cocoa shells': [1.5, 2.3],
};

const STAFF_FOOD = [
  { weekday: 3, item: 'Madeleine batter', quantity: 220, unit: 'g' },
  { weekday: 6, item: 'Brownie', quantity: 5, unit: 'each' },
  { weekday: 7, item: 'Whole milk', quantity: 3, unit: 'l' },
  { weekday: 7, item: 'Coffee beans', quantity: 250, unit: 'g' },
] as const;

/** Everyone who serves tastes a new dish on its first day. */
const TASTED_ON = ['2025-05-01', '2025-10-01', '2026-03-04', '2026-09-02'] as const;
const TASTED = [
  'Black cherry trifle',
  'Mint and nib iced sandwich',
  'Strawberries, crème fraîche ice',
  'Chestnut dome',
  'Hot orange pudding',
  'Ginger cake, poached quince',
  'Driftwood',
  'Passion fruit pavé',
  'Raspberry and pistachio sablé',
  'Rhubarb custard slice',
  'Smoke and peat',
  'Sea buckthorn posset',
  'Figs, fig leaf cream',
] as const;

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
