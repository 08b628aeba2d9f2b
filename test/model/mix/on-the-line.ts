import { addDays } from '@/lib/core/days';
import { type Random, seededRandom } from '@/lib/core/random';
import { certainty } from '@/lib/model/mix/certainty';
import { KASAVANA_SMITH, QUADRANTS } from '@/lib/model/mix/kasavana-smith';
import { day } from '../../books';
import { withMargin } from './mix-of';

/** Number of events of a Poisson process with that mean (Knuth, The Art of Computer Programming, 3.4.1). */
function poisson(random: Random, mean: number): number {
  const limit = Math.exp(-mean);
  let count = 0;
  for (let product = random(); product > limit; product *= random()) count++;
  return count;
}

const WEEKDAY = [0.75, 0.8, 0.9, 1, 1.3, 1.4, 0.85];
const ITEMS = 8;
const LINE = 0.7 / ITEMS;

/**
 * How often an item whose true share is exactly the threshold is called settled: in at least 90 % of its resamples in one class. A sure
 * class on a line that nothing tells apart is luck, and the luck of 90 % is one case in five. Days vary by weekday and by the day.
 */
export function settledOnTheLine(days: number, cases: number, resamples: number, seed: number): number {
  const random = seededRandom(seed);
  const dates = Array.from({ length: days }, (_, index) => addDays(day('2026-10-05'), index));
  let settled = 0;
  for (let each = 0; each < cases; each++) {
    const sold = new Float64Array(days * ITEMS);
    const expected = new Float64Array(days * ITEMS);
    const contribution = new Float64Array(days * ITEMS);
    for (let index = 0; index < days; index++) {
      const guests = 80 * (WEEKDAY[index % 7] ?? 1) * (0.7 + 0.6 * random());
      let portions = 0;
      for (let item = 0; item < ITEMS; item++) {
        const share = item === 0 ? LINE : (1 - LINE) / (ITEMS - 1);
        const count = poisson(random, guests * share);
        portions += count;
        sold[index * ITEMS + item] = count;
        contribution[index * ITEMS + item] = count * (item === 0 ? 9 : 6);
      }
      expected.fill(portions / ITEMS, index * ITEMS, (index + 1) * ITEMS);
    }
    const [first] = certainty(
      {
        days: dates,
        items: ITEMS,
        onSale: new Uint8Array(days * ITEMS).fill(1),
        sold,
        expected,
        contribution,
        revenue: contribution,
        food: new Float64Array(days * ITEMS),
        figures: Array.from({ length: ITEMS }, (_, item) => withMargin(item === 0 ? 9 : 6)),
        popularityFactor: 0.7,
        variableCost: null,
      },
      KASAVANA_SMITH,
      resamples,
      each,
    );
    if (first && QUADRANTS.some((mixClass) => (first.classShares[mixClass] ?? 0) >= 0.9)) settled += 1;
  }
  return settled / cases;
}
