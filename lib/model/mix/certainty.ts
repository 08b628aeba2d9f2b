import type { Day } from '../../core/days';
import { addTo, deviation, type Moments, noMoments } from '../../core/moments';
import { atLeast } from '../../core/near';
import { seededRandom } from '../../core/random';
import { addDays, dayColumns, drawDays } from './day-sums';
import { menuAverages } from './menu-averages';
import type { MixClass, MixFigures, MixModel } from './mix-model';
import { portionsByDay } from './section-days';
import { weekdayStrata } from './strata';

/** A section's trading days as they are resampled: whole days, with everything of a day together. Tables: entry day * items + item. */
export interface MixDays {
  readonly days: readonly Day[];
  readonly items: number;
  readonly onSale: Uint8Array;
  readonly sold: Float64Array;
  readonly expected: Float64Array;
  /** Revenue and food cost of the paid portions, and revenue less their whole cost; not looked at for an item without margin. */
  readonly revenue: Float64Array;
  readonly food: Float64Array;
  readonly contribution: Float64Array;
  /** The period's figures of each item; null where its margin is not known: such an item stays in the portions and leaves every mean. */
  readonly figures: readonly (MixFigures | null)[];
  readonly popularityFactor: number;
  readonly variableCost: number | null;
}

/** Share of the resamples in each class of a model. */
export type ClassShares = Readonly<Partial<Record<MixClass, number>>>;

/** How sure the class of an item is, as far as the choice of days goes. */
export interface Certainty {
  /** Share of the resamples in each class. */
  readonly classShares: ClassShares;
  /** Share of the resamples in which it leaves less than the mean margin. */
  readonly leavesLess: number;
  /** Standard deviation over the resamples of its share of the portions, and of its margin less the mean margin. */
  readonly spread: { readonly share: number; readonly margin: number };
}

/**
 * Resamples the days and classes the menu by a model each time. Null for an item without margin, and for one that no resample classes.
 *
 * Rao & Wu (1988), "Resampling inference with complex survey data", JASA 83: in a stratum of k days, k - 1 are drawn with
 * replacement and each is weighted k / (k - 1), so that the spread of a resampled sum is that of the sum itself. Strata are weekdays.
 * An item that is on sale on no drawn day is left out of that resample; one that is on sale and not sold keeps the period's margin.
 * This is the error of sampling days only; costs are taken as they stand.
 */
export function certainty(
  mix: MixDays,
  model: MixModel,
  resamples: number,
  seed: number,
): readonly (Certainty | null)[] {
  const { items } = mix;
  const columns = dayColumns(mix.days.length, items, tablesOf(mix));
  const strata = weekdayStrata(mix.days, portionsByDay(mix.sold, items));
  const random = seededRandom(seed);
  const weights = new Float64Array(mix.days.length);
  const sums = new Float64Array(columns.width);
  const drawn = mix.figures.map((each): Drawn | null => (each === null ? null : drawnOf(each, model)));
  for (let resample = 0; resample < resamples; resample++) {
    drawDays(strata, random, weights);
    addDays(columns, weights, sums);
    classResample(mix, model, sums, drawn);
  }
  return drawn.map((each) => (each === null || each.count === 0 ? null : certaintyOf(each, model)));
}

/** The columns of a day: each has a cell an item. */
const [SOLD, EXPECTED, CONTRIBUTION, ON_SALE, REVENUE, FOOD] = [0, 1, 2, 3, 4, 5];

function tablesOf({ sold, expected, contribution, onSale, revenue, food }: MixDays): readonly ArrayLike<number>[] {
  return [sold, expected, contribution, onSale, revenue, food];
}

/** An item over the resamples: its figures in the one at hand, written over each time, and the tally of them all. */
interface Drawn {
  readonly period: MixFigures;
  readonly figures: { -readonly [Figure in keyof MixFigures]: MixFigures[Figure] };
  count: number;
  readonly classes: Float64Array;
  /** Resamples in which it left less than the mean. */
  less: number;
  readonly share: Moments;
  readonly margin: Moments;
}

function drawnOf(period: MixFigures, { classes }: MixModel): Drawn {
  return {
    ...{ period, figures: { ...period }, count: 0, classes: new Float64Array(classes.length), less: 0 },
    ...{ share: noMoments(), margin: noMoments() },
  };
}

function classResample(
  { items, popularityFactor, variableCost }: MixDays,
  model: MixModel,
  sums: Float64Array,
  drawn: readonly (Drawn | null)[],
): void {
  let portions = 0;
  for (let item = 0; item < items; item++) portions += sums[item] as number;
  const present = drawn.map((each, item) => {
    if (each === null || sums[ON_SALE * items + item] === 0) return null;
    read(each, items, item, sums);
    return each.figures;
  });
  const menu = menuAverages(present, popularityFactor, variableCost);
  if (portions <= 0 || menu === null) return;
  for (let index = 0; index < items; index++) {
    const item = present[index];
    const each = drawn[index];
    if (!item || !each) continue;
    const mixClass = model.classOf(item, menu);
    if (mixClass === null) continue;
    const at = model.classes.indexOf(mixClass);
    each.count += 1;
    each.classes[at] = (each.classes[at] as number) + 1;
    if (!atLeast(item.margin, menu.meanMargin)) each.less += 1;
    addTo(each.share, item.sold / portions);
    addTo(each.margin, item.margin - menu.meanMargin);
  }
}

/** The figures of an item in a resample; what was not sold in it keeps the money of the period. */
function read({ figures, period }: Drawn, items: number, item: number, sums: Float64Array): void {
  const sold = sums[SOLD * items + item] as number;
  figures.sold = sold;
  figures.expected = sums[EXPECTED * items + item] as number;
  figures.margin = sold > 0 ? (sums[CONTRIBUTION * items + item] as number) / sold : period.margin;
  figures.netPrice = sold > 0 ? (sums[REVENUE * items + item] as number) / sold : period.netPrice;
  figures.food = sold > 0 ? (sums[FOOD * items + item] as number) / sold : period.food;
}

function certaintyOf({ count, classes, less, share, margin }: Drawn, model: MixModel): Certainty {
  const shares = model.classes.map((mixClass, at) => [mixClass, (classes[at] as number) / count] as const);
  return {
    classShares: Object.fromEntries(shares),
    leavesLess: less / count,
    spread: { share: deviation(share), margin: deviation(margin) },
  };
}
