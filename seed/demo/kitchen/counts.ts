import { type Day, dayText } from '../../../lib/core/days';
import { type Random, seededRandom } from '../../../lib/core/random';
import { bell } from '../dice';
import { SEED } from '../house';
import { INGREDIENTS } from '../ingredients/all-ingredients';
import { rounded } from '../rounding';
import type { Ingredient } from '../shapes';
import { COUNT_DAYS } from '../trade/calendar';
import { STORE_RUN } from '../trade/deliveries';
import { PREPARED } from './prepared';
import { recipeOn } from './recipe-book';
import { STORE } from './split-goods';

/** A line of a count sheet. */
export interface Count {
  readonly day: Day;
  readonly item: string;
  readonly part?: string;
  readonly quantity: number;
  readonly unit: string;
  readonly place: string;
}

/** How a thing is counted where it is not weighed: the unit, its size in base units, and the finest step. */
const COUNTED_AS: Readonly<Record<string, { readonly unit: string; readonly size: number; readonly step: number }>> = {
  'Double cream': { unit: 'tub', size: 2000, step: 0.25 },
  'Whole milk': { unit: 'bottle', size: 2000, step: 0.25 },
};
const BY_MEASURE = {
  g: { unit: 'kg', size: 1000, step: 0.01 },
  ml: { unit: 'l', size: 1000, step: 0.05 },
  each: { unit: 'each', size: 1, step: 1 },
} as const;

/** Part of it stands at the pass: units, where there are as many. */
const AT_THE_PASS: Readonly<Record<string, number>> = { 'Double cream': 1.5, 'Whole milk': 1 };
const PASS = 'Service fridge';

/** A tub that stood behind the door and was seen twice. */
const MISCOUNTED = [{ item: 'Double cream', day: '2026-06-30', units: 1 }] as const;

/** People weigh and read to within half a per cent. */
const READING = 0.005;

function countsOf(ingredient: Ingredient, place: string, day: Day, random: Random): readonly Count[] {
  const { name, measure } = ingredient;
  const { unit, size, step } = COUNTED_AS[name] ?? BY_MEASURE[measure];
  const stock = STORE_RUN.stock.get(day)?.get(name) ?? 0;
  const read = (stock / size) * (measure === 'each' ? 1 : 1 + READING * bell(random));
  const seenTwice = MISCOUNTED.find((each) => each.item === name && each.day === dayText(day))?.units ?? 0;
  const quantity = rounded(Math.round(read / step) * step, 3) + seenTwice;
  const atPass = Math.min(AT_THE_PASS[name] ?? 0, quantity);
  const sheets = [
    { quantity: rounded(quantity - atPass, 3), place },
    { quantity: atPass, place: PASS },
  ];
  return sheets.filter((each) => each.quantity > 0).map((each) => ({ day, item: name, unit, ...each }));
}

/** Counted as gone: it stood on the sheet before. */
function goneOf(ingredient: Ingredient, place: string, day: Day): Count {
  const { unit } = COUNTED_AS[ingredient.name] ?? BY_MEASURE[ingredient.measure];
  return { day, item: ingredient.name, quantity: 0, unit, place };
}

function partsOn(day: Day): readonly Count[] {
  const left = STORE.get(day)?.partsLeft ?? new Map<string, number>();
  return (['white', 'yolk'] as const).flatMap((part) => {
    const kg = rounded((left.get(`Shell eggs/${part}`) ?? 0) / 1000, 2);
    const place = part === 'white' ? 'Freezer' : PASS;
    return kg < 0.05 ? [] : [{ day, item: 'Shell eggs', part, quantity: kg, unit: 'kg', place }];
  });
}

function preparedOn(day: Day): readonly Count[] {
  return (PREPARED.get(day) ?? []).map(({ item, amount, place }) => {
    const unit = recipeOn(item, dayText(day)).gives?.[1];
    const isPieces = unit === 'each';
    return {
      day,
      item,
      quantity: isPieces ? amount : rounded(amount / 1000, 3),
      unit: isPieces ? 'each' : unit === 'ml' ? 'l' : 'kg',
      place,
    };
  });
}

function drawCounts(): readonly Count[] {
  const random = seededRandom(SEED + 5);
  const onSheet = new Set<string>();
  return COUNT_DAYS.flatMap((day) => {
    const bought = INGREDIENTS.flatMap((ingredient) => {
      const { place, name } = ingredient;
      if (place === undefined) return [];
      const found = countsOf(ingredient, place, day, random);
      const stoodBefore = onSheet.has(name);
      if (found.length > 0) onSheet.add(name);
      else onSheet.delete(name);
      return found.length === 0 && stoodBefore ? [goneOf(ingredient, place, day)] : found;
    });
    return [...bought, ...partsOn(day), ...preparedOn(day)];
  });
}

/** The count sheets: the opening one and one at the end of each month. */
export const COUNTS: readonly Count[] = drawCounts();
