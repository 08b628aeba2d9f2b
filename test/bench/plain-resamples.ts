import { seededRandom } from '@/lib/core/random';
import type { MixDays } from '@/lib/model/mix/certainty';
import { drawDays } from '@/lib/model/mix/day-sums';
import { kasavanaSmith } from '@/lib/model/mix/kasavana-smith';
import type { MenuAverages } from '@/lib/model/mix/mix-model';
import { portionsByDay } from '@/lib/model/mix/section-days';
import { weekdayStrata } from '@/lib/model/mix/strata';

interface SaleRow {
  readonly item: number;
  readonly sold: number;
  readonly expected: number;
  readonly contribution: number;
}

/** The days of a mix as a list of rows a day: what a plain loop goes through. */
function rowsOf({ days, items, sold, expected, contribution, onSale }: MixDays): readonly (readonly SaleRow[])[] {
  return days.map((_, day) =>
    Array.from({ length: items }, (_each, item) => day * items + item)
      .filter((cell) => onSale[cell] === 1)
      .map((cell) => ({
        ...{ item: cell % items, sold: sold[cell] as number },
        ...{ expected: expected[cell] as number, contribution: contribution[cell] as number },
      })),
  );
}

/**
 * The class shares of Kasavana & Smith's model by a plain loop over objects: each resample sums the rows of its days by item in a map,
 * then classes every item. The same draws as `certainty`; every item with a known margin.
 */
export function plainResamples(mix: MixDays, resamples: number, seed: number): () => readonly Map<string, number>[] {
  const rows = rowsOf(mix);
  const strata = weekdayStrata(mix.days, portionsByDay(mix.sold, mix.items));
  return () => {
    const random = seededRandom(seed);
    const weights = new Float64Array(mix.days.length);
    const counts = mix.figures.map(() => new Map<string, number>());
    for (let resample = 0; resample < resamples; resample++) {
      drawDays(strata, random, weights);
      const sums = new Map<number, { sold: number; expected: number; contribution: number }>();
      rows.forEach((ofDay, day) => {
        const weight = weights[day] as number;
        if (weight === 0) return;
        for (const row of ofDay) {
          let sum = sums.get(row.item);
          if (!sum) {
            sum = { sold: 0, expected: 0, contribution: 0 };
            sums.set(row.item, sum);
          }
          sum.sold += weight * row.sold;
          sum.expected += weight * row.expected;
          sum.contribution += weight * row.contribution;
        }
      });
      const all = [...sums.values()];
      const meanMargin =
        all.reduce((sum, each) => sum + each.contribution, 0) / all.reduce((sum, each) => sum + each.sold, 0);
      for (const [item, { sold, expected, contribution }] of sums) {
        const margin = sold > 0 ? contribution / sold : (mix.figures[item]?.margin ?? 0);
        const figures = { sold, expected, margin, netPrice: 0, food: 0, labour: null };
        const menu = { popularityFactor: mix.popularityFactor, meanMargin } as MenuAverages;
        const mixClass = kasavanaSmith(figures, menu);
        counts[item]?.set(mixClass, (counts[item]?.get(mixClass) ?? 0) + 1);
      }
    }
    return counts;
  };
}
