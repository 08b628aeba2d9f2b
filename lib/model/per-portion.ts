import type { CostedPeriod } from './costed-period';
import { plateCost, portionOf } from './plate-cost';
import { type PortionWeight, weightedMean } from './portion-weights';
import type { LossPerUnit } from './small-batch/small-batch-loss';

/** The work in one portion of an item, portion-weighted over a period; null where any of it is not known. */
export interface LabourPerPortion {
  /** In venue currency. */
  readonly recipeLabour: number | null;
  readonly platingMinutes: number | null;
}

export function labourPerPortion(
  period: CostedPeriod,
  node: number,
  weights: readonly PortionWeight[],
): LabourPerPortion {
  const { cost, known, platingMinutes, platingKnown } = period.labour;
  return {
    recipeLabour: portionMean(period, node, weights, cost, ({ cell }) => known[cell] === 1),
    platingMinutes: portionMean(period, node, weights, platingMinutes, ({ cell }) => platingKnown[cell] === 1),
  };
}

/** Small-batch loss in one portion; null where the plate cost is not known by recipe, or the loss of something in it is not. */
export function lossPerPortion(
  period: CostedPeriod,
  losses: LossPerUnit,
  node: number,
  weights: readonly PortionWeight[],
): number | null {
  return portionMean(period, node, weights, losses.loss, ({ cell, segment }) => {
    const { complete, estimated } = plateCost(period, node, segment);
    return complete && !estimated && losses.unknown[cell] === 0;
  });
}

/** Portion-weighted mean of a table by node and segment, per portion; null where it is not known in all of the segments. */
function portionMean(
  period: CostedPeriod,
  node: number,
  weights: readonly PortionWeight[],
  of: Float64Array,
  isKnown: (at: { readonly cell: number; readonly segment: number }) => boolean,
): number | null {
  const cellOf = (segment: number): number => node * period.segments.count + segment;
  const isOpen = weights.some(
    ({ segment }) => portionOf(period, node, segment) === null || !isKnown({ cell: cellOf(segment), segment }),
  );
  if (isOpen) return null;
  return weightedMean(weights, ({ segment }) => (of[cellOf(segment)] ?? 0) * (portionOf(period, node, segment) ?? 0));
}
