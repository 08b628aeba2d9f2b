import { hasLowFoodCost } from './food-cost-cut';
import type { MenuAverages, MixFigures, MixModel } from './mix-model';
import { isPopular } from './popular';

/**
 * Miller (1980), Menu Pricing and Strategy: food-cost % against the menu's, and how often an item sells.
 *
 * winner: low cost and popular; loser: neither; marginal: one of the two. Null where a food-cost % is not known.
 */
export function miller(item: MixFigures, menu: MenuAverages): 'winner' | 'marginal' | 'loser' | null {
  const isLow = hasLowFoodCost(item, menu);
  if (isLow === null) return null;
  const popular = isPopular(item, menu);
  if (isLow && popular) return 'winner';
  return isLow || popular ? 'marginal' : 'loser';
}

export const MILLER: MixModel = {
  name: 'miller',
  classes: ['winner', 'marginal', 'loser'],
  asksLabour: false,
  classOf: miller,
};
