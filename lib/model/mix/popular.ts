import { atLeast } from '../../core/near';
import type { MenuAverages, MixFigures } from './mix-model';

/**
 * Whether an item sells well: sold >= factor * expected (0.70; where every item is on sale every day this is share >= 0.70 / n), the
 * volume cut of Kasavana & Smith (1982). On the threshold counts as popular; what was never sold is not.
 */
export function isPopular(
  { sold, expected }: Pick<MixFigures, 'sold' | 'expected'>,
  { popularityFactor }: Pick<MenuAverages, 'popularityFactor'>,
): boolean {
  return sold > 0 && atLeast(sold, popularityFactor * expected);
}
