import { atLeast } from '../../core/near';
import { kasavanaSmith, QUADRANTS } from './kasavana-smith';
import type { MenuAverages, MixFigures, MixModel, QuadrantClass } from './mix-model';

/**
 * LeBruto, Quain & Ashley (1995), Menu engineering: a model including labor: Kasavana & Smith's classes with recipe labour as a third
 * axis, against its portion-weighted mean. At the mean counts as light; null where the labour is not known.
 */
export function withLabour(item: MixFigures, menu: MenuAverages): `${QuadrantClass}-${'light' | 'heavy'}` | null {
  if (item.labour === null || menu.meanLabour === null) return null;
  return `${kasavanaSmith(item, menu)}-${atLeast(menu.meanLabour, item.labour) ? 'light' : 'heavy'}`;
}

export const WITH_LABOUR: MixModel = {
  name: 'labour',
  classes: QUADRANTS.flatMap((quadrant) => [`${quadrant}-light`, `${quadrant}-heavy`] as const),
  asksLabour: true,
  classOf: withLabour,
};
