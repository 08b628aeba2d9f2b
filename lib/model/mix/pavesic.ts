import { atLeast } from '../../core/near';
import { hasLowFoodCost } from './food-cost-cut';
import type { MenuAverages, MixFigures, MixModel } from './mix-model';

/**
 * Pavesic (1983), Cost-margin analysis: food-cost % against the menu's, and what an item left in the period (margin * sold) against the
 * mean of the items.
 *
 * prime: low cost, leaves much; standard: high cost, leaves much; sleeper: low cost, leaves little; problem: neither. On a threshold counts
 * as the favourable side. Null where a food-cost % is not known.
 */
export function pavesic(item: MixFigures, menu: MenuAverages): 'prime' | 'standard' | 'sleeper' | 'problem' | null {
  const isLow = hasLowFoodCost(item, menu);
  if (isLow === null) return null;
  const leavesMuch = atLeast(item.margin * item.sold, menu.meanContribution);
  if (leavesMuch) return isLow ? 'prime' : 'standard';
  return isLow ? 'sleeper' : 'problem';
}

export const PAVESIC: MixModel = {
  name: 'pavesic',
  classes: ['prime', 'standard', 'sleeper', 'problem'],
  asksLabour: false,
  classOf: pavesic,
};
