import type { Day } from '../../core/days';
import { addTo, deviation, type Moments, noMoments } from '../../core/moments';
import { type Random, seededRandom } from '../../core/random';
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
  const columns = dayColumns(mix);
  const strata = weekdayStrata(mix.days, portionsByDay(mix.sold, items));
  const random = seededRandom(seed);
  const weights = new Float64Array(mix.days.length);
  const sums = new Float64Array(columns.width);
  const tallies = mix.figures.map((each) => (each === null ? null : emptyTally(model)));
  for (let resample = 0; resample < resamples; resample++) {
    drawDays(strata, random, weights);
    addDays(columns, weights, sums);
    classResample(mix, model, sums, tallies);
  }
  return tallies.map((tally) => (tally === null || tally.count === 0 ? null : certaintyOf(tally, model)));
}

/** k - 1 draws with replacement from each stratum of k days, weighted k / (k - 1); a day alone in its stratum stays as it is. */
export function drawDays(strata: readonly (readonly number[])[], random: Random, weights: Float64Array): void {
  weights.fill(0);
  for (const stratum of strata) {
    const draws = Math.max(1, stratum.length - 1);
    for (let draw = 0; draw < draws; draw++) {
      const day = stratum[Math.floor(random() * stratum.length)] as number;
      weights[day] = (weights[day] as number) + stratum.length / draws;
    }
  }
}

/** A day's figures of all items side by side, so that one short loop adds a day. */
interface DayColumns {
  readonly width: number;
  readonly cells: Float64Array;
}

/** The columns of a day: each has a cell an item. */
const [SOLD, EXPECTED, CONTRIBUTION, ON_SALE, REVENUE, FOOD] = [0, 1, 2, 3, 4, 5];

function dayColumns({ days, items, sold, expected, contribution, onSale, revenue, food }: MixDays): DayColumns {
  const tables = [sold, expected, contribution, onSale, revenue, food];
  const width = tables.length * items;
  const cells = new Float64Array(days.length * width);
  days.forEach((_, day) => {
    tables.forEach((table, column) => {
      cells.set(table.subarray(day * items, (day + 1) * items), day * width + column * items);
    });
  });
  return { width, cells };
}

function addDays({ width, cells }: DayColumns, weights: Float64Array, sums: Float64Array): void {
  sums.fill(0);
  for (let day = 0; day < weights.length; day++) {
    const weight = weights[day] as number;
    if (weight === 0) continue;
    const start = day * width;
    for (let column = 0; column < width; column++) {
      sums[column] = (sums[column] as number) + weight * (cells[start + column] as number);
    }
  }
}

interface Tally {
  count: number;
  readonly classes: Partial<Record<MixClass, number>>;
  share: Moments;
  margin: Moments;
}

function emptyTally({ classes }: MixModel): Tally {
  return {
    count: 0,
    classes: Object.fromEntries(classes.map((each) => [each, 0])),
    share: noMoments(),
    margin: noMoments(),
  };
}

function classResample(
  { items, figures, popularityFactor, variableCost }: MixDays,
  model: MixModel,
  sums: Float64Array,
  tallies: readonly (Tally | null)[],
): void {
  const at = (column: number, item: number): number => sums[column * items + item] as number;
  let portions = 0;
  const drawn = figures.map((period, item): MixFigures | null => {
    const sold = at(SOLD, item);
    portions += sold;
    if (period === null) return null;
    const { labour } = period;
    const expected = at(EXPECTED, item);
    if (sold <= 0) return { ...period, sold, expected };
    const margin = at(CONTRIBUTION, item) / sold;
    return { sold, expected, margin, netPrice: at(REVENUE, item) / sold, food: at(FOOD, item) / sold, labour };
  });
  const menu = menuAverages(drawn, popularityFactor, variableCost);
  if (portions <= 0 || menu === null) return;
  drawn.forEach((item, index) => {
    const tally = tallies[index];
    if (item === null || !tally || at(ON_SALE, index) === 0) return;
    const mixClass = model.classOf(item, menu);
    if (mixClass === null) return;
    tally.count += 1;
    tally.classes[mixClass] = (tally.classes[mixClass] ?? 0) + 1;
    addTo(tally.share, item.sold / portions);
    addTo(tally.margin, item.margin - menu.meanMargin);
  });
}

function certaintyOf({ count, classes, share, margin }: Tally, model: MixModel): Certainty {
  const shares = model.classes.map((mixClass) => [mixClass, (classes[mixClass] ?? 0) / count] as const);
  return { classShares: Object.fromEntries(shares), spread: { share: deviation(share), margin: deviation(margin) } };
}
