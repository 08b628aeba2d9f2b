/** One weighing of what was bought and of what was left of it. Weights in grams; null where it was not weighed or does not apply. */
export interface YieldTest {
  readonly boughtGrams: number;
  /** Peel, stones, stalks, bruises: cut off and thrown away. */
  readonly trimGrams: number | null;
  /** What was left once the liquid had run off (of a tin, of frozen fruit thawed), before trimming. */
  readonly drainedGrams: number | null;
  /** What was paid for it, in the venue's currency; null where nobody knows. */
  readonly paid: number | null;
}

/** Why a weighing says nothing. */
export type YieldTestFault =
  | 'nothing-bought' // the bought weight is not above zero
  | 'nothing-weighed' // neither trim nor drained weight
  | 'below-zero' // a weight or what was paid is below zero
  | 'more-than-bought' // drained weighs more than bought
  | 'nothing-left'; // trim takes all of it

export interface YieldTestSum {
  readonly usableGrams: number;
  /** y, 0 < y <= 1. */
  readonly usableYield: number;
  /** Venue currency per kilogram; null where what was paid is not known. */
  readonly costPerBoughtKg: number | null;
  readonly costPerUsableKg: number | null;
}

/**
 * usable = (drained, else bought) - trim; y = usable / bought; cost of a usable kg = paid / usable kg = cost of a bought kg / y.
 * A trim that was not weighed takes nothing off only where the drained weight was. Usual kitchen sum, common practice.
 */
export function yieldTestSum(weighing: YieldTest): YieldTestSum | YieldTestFault {
  const { boughtGrams, trimGrams, drainedGrams, paid } = weighing;
  if ([trimGrams, drainedGrams, paid].some((value) => value !== null && !(value >= 0))) return 'below-zero';
  if (!(boughtGrams > 0 && Number.isFinite(boughtGrams))) return 'nothing-bought';
  if (trimGrams === null && drainedGrams === null) return 'nothing-weighed';
  if (drainedGrams !== null && drainedGrams > boughtGrams) return 'more-than-bought';
  const usableGrams = (drainedGrams ?? boughtGrams) - (trimGrams ?? 0);
  if (usableGrams <= 0) return 'nothing-left';
  const perKg = (grams: number): number | null => (paid === null ? null : (paid * 1000) / grams);
  return {
    usableGrams,
    usableYield: usableGrams / boughtGrams,
    costPerBoughtKg: perKg(boughtGrams),
    costPerUsableKg: perKg(usableGrams),
  };
}
