/** A figure in one unknown: at0 + slope * x + square * x * x. */
export interface Quadratic {
  readonly at0: number;
  readonly slope: number;
  readonly square: number;
}

/** A square term that moves the root by less than this share of it is rounding. */
const NOTHING = 1e-14;

/**
 * Where a quadratic is zero, ascending, each once; none where it is constant or stays on one side. Where the square term is only rounding, the
 * root of the linear equation.
 *
 * With q = -(b + sign(b) sqrt(b^2 - 4ac)) / 2 the roots are q / a and c / q, so that neither loses digits (Press et al., Numerical
 * Recipes, 5.6, from memory).
 */
export function rootsOf({ at0, slope, square }: Quadratic): readonly number[] {
  if (square === 0 || Math.abs(square * at0) < NOTHING * slope * slope) {
    return slope === 0 ? [] : [0 - at0 / slope];
  }
  const inside = slope * slope - 4 * square * at0;
  if (inside < 0) return [];
  const half = -(slope + (slope < 0 ? -1 : 1) * Math.sqrt(inside)) / 2;
  const roots = half === 0 ? [0] : [half / square, at0 / half];
  return [...new Set(roots)].sort((a, b) => a - b);
}
