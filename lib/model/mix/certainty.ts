import type { Day } from '../../core/days';
import { addTo, deviation, type Moments, noMoments } from '../../core/moments';
import { type Random, seededRandom } from '../../core/random';
import { kasavanaSmith, MIX_CLASSES, type MixClass } from './kasavana-smith';
import { portionsByDay } from './section-days';
import { weekdayStrata } from './strata';

/** A section's trading days as they are resampled: whole days, with everything of a day together. Tables: entry day * items + item. */
export interface MixDays {
  readonly days: readonly Day[];
  readonly items: number;
  readonly onSale: Uint8Array;
  readonly sold: Float64Array;
  readonly expected: Float64Array;
  /** Revenue less cost of the paid portions; not looked at for an item without margin. */
  readonly contribution: Float64Array;
  /** The period's margin of each item; null where it is not known: such an item stays in the portions and leaves the mean margin. */
  readonly margins: readonly (number | null)[];
  /** Kasavana & Smith's share of the expected portions from which an item is popular. */
  readonly factor: number;
}

/** How sure the class of an item is, as far as the choice of days goes. */
export interface Certainty {
  /** Share of the resamples in each class. */
  readonly classShares: Readonly<Record<MixClass, number>>;
  /** Standard deviation over the resamples of its share of the portions, and of its margin less the mean margin. */
  readonly spread: { readonly share: number; readonly margin: number };
}

/**
 * Resamples the days and classes the menu each time. Null for an item without margin, and for one that no resample holds.
 *
 * Rao & Wu (1988), "Resampling inference with complex survey data", JASA 83: in a stratum of k days, k - 1 are drawn with
 * replacement and each is weighted k / (k - 1), so that the spread of a resampled sum is that of the sum itself. Strata are weekdays.
 * An item that is on sale on no drawn day is left out of that resample; one that is on sale and not sold keeps the period's margin.
 * This is the error of sampling days only; costs are taken as they stand.
 */
export function certainty(mix: MixDays, resamples: number, seed: number): readonly (Certainty | null)[] {
  const { items } = mix;
  const columns = dayColumns(mix);
  const strata = weekdayStrata(mix.days, portionsByDay(mix.sold, items));
  const random = seededRandom(seed);
  const weights = new Float64Array(mix.days.length);
  const sums = new Float64Array(columns.width);
  const tallies = mix.margins.map((margin) => (margin === null ? null : emptyTally()));
  for (let resample = 0; resample < resamples; resample++) {
    drawDays(strata, random, weights);
    addDays(columns, weights, sums);
    classResample(mix, sums, tallies);
  }
  return tallies.map((tally) => (tally === null || tally.count === 0 ? null : certaintyOf(tally)));
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

/** A day's sold, expected, contribution and on sale of all items side by side, so that one short loop adds a day. */
interface DayColumns {
  readonly width: number;
  readonly cells: Float64Array;
}

function dayColumns({ days, items, sold, expected, contribution, onSale }: MixDays): DayColumns {
  const width = 4 * items;
  const cells = new Float64Array(days.length * width);
  days.forEach((_, day) => {
    [sold, expected, contribution, onSale].forEach((table, column) => {
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
  readonly classes: Record<MixClass, number>;
  share: Moments;
  margin: Moments;
}

function emptyTally(): Tally {
  return {
    count: 0,
    classes: { star: 0, plowhorse: 0, puzzle: 0, dog: 0 },
    share: noMoments(),
    margin: noMoments(),
  };
}

function classResample(
  { items, margins, factor }: MixDays,
  sums: Float64Array,
  tallies: readonly (Tally | null)[],
): void {
  let portions = 0;
  let costedPortions = 0;
  let contribution = 0;
  for (let item = 0; item < items; item++) {
    const sold = sums[item] as number;
    portions += sold;
    if (margins[item] === null) continue;
    costedPortions += sold;
    contribution += sums[2 * items + item] as number;
  }
  if (portions <= 0 || costedPortions <= 0) return;
  const meanMargin = contribution / costedPortions;
  tallies.forEach((tally, item) => {
    if (tally === null || sums[3 * items + item] === 0) return;
    const sold = sums[item] as number;
    const margin = sold > 0 ? (sums[2 * items + item] as number) / sold : (margins[item] as number);
    const mixClass = kasavanaSmith({ sold, expected: sums[items + item] as number, margin }, factor, meanMargin);
    tally.count += 1;
    tally.classes[mixClass] += 1;
    addTo(tally.share, sold / portions);
    addTo(tally.margin, margin - meanMargin);
  });
}

function certaintyOf({ count, classes, share, margin }: Tally): Certainty {
  const shares = MIX_CLASSES.map((mixClass) => [mixClass, classes[mixClass] / count] as const);
  const classShares = Object.fromEntries(shares) as Record<MixClass, number>;
  return { classShares, spread: { share: deviation(share), margin: deviation(margin) } };
}
