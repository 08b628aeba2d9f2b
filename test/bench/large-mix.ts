import { seededRandom } from '@/lib/core/random';
import type { MixDays } from '@/lib/model/mix/certainty';
import { mixOf } from '../model/mix/mix-of';

/** A month of 31 days and 200 dishes, whose sales and margins are drawn with a seed. */
export function largeMix(): MixDays {
  const random = seededRandom(31);
  const margins = Array.from({ length: 200 }, () => 3 + 9 * random());
  return mixOf(
    Array.from({ length: 31 }, () => margins.map(() => Math.floor(random() * 20))),
    margins,
  );
}
