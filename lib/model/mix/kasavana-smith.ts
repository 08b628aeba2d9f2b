import { atLeast } from '../../core/near';
import type { MenuAverages, MixFigures, MixModel, QuadrantClass } from './mix-model';
import { isPopular } from './popular';

/**
 * Kasavana & Smith (1982), Menu Engineering: popular if sold >= factor * expected, high margin if margin >= the portion-weighted mean
 * margin of the menu.
 *
 * star: both; plowhorse: popular only; puzzle: high margin only; dog: neither. On the threshold counts as the favourable side.
 */
export function kasavanaSmith(item: MixFigures, menu: MenuAverages): QuadrantClass {
  const leavesMuch = atLeast(item.margin, menu.meanMargin);
  if (isPopular(item, menu)) return leavesMuch ? 'star' : 'plowhorse';
  return leavesMuch ? 'puzzle' : 'dog';
}

export const QUADRANTS: readonly QuadrantClass[] = ['star', 'plowhorse', 'puzzle', 'dog'];

export const KASAVANA_SMITH: MixModel = {
  name: 'kasavana-smith',
  classes: QUADRANTS,
  asksLabour: false,
  classOf: kasavanaSmith,
};
