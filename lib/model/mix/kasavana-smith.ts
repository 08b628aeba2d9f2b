import { atLeast } from '../../core/near';

/** Kasavana & Smith's four classes. */
export type MixClass = 'star' | 'plowhorse' | 'puzzle' | 'dog';

export const MIX_CLASSES: readonly MixClass[] = ['star', 'plowhorse', 'puzzle', 'dog'];

/** What a mix model looks at, of one item or of one item in one resample. */
export interface MixFigures {
  readonly sold: number;
  /** Portions it would have had if each day's portions had been shared equally among that day's items. */
  readonly expected: number;
  /** Contribution margin per portion. */
  readonly margin: number;
}

/**
 * Kasavana & Smith (1982), Menu Engineering: popular if sold >= factor * expected (0.70; where every item is on sale every day this
 * is share >= 0.70 / n), high margin if margin >= the portion-weighted mean margin of the menu.
 *
 * star: both; plowhorse: popular only; puzzle: high margin only; dog: neither. On the threshold counts as the favourable side; what was never
 * sold is not popular.
 */
export function kasavanaSmith({ sold, expected, margin }: MixFigures, factor: number, meanMargin: number): MixClass {
  const popular = sold > 0 && atLeast(sold, factor * expected);
  const leavesMuch = atLeast(margin, meanMargin);
  if (popular) return leavesMuch ? 'star' : 'plowhorse';
  return leavesMuch ? 'puzzle' : 'dog';
}
