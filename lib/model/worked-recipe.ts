import type { Day } from '../core/days';
import type { BaseUnit } from '../core/units';
import type { CostedPeriod } from './costed-period';
import type { RecipePiece } from './recipe-piece';
import { inSegment } from './segments';

/** The recipe that something is made by on the day. */
export interface WorkedRecipe {
  /** From which day this version holds; null: from the beginning. */
  readonly validFrom: Day | null;
  /** What one batch gives after what every batch loses, before breakage; null where that is not known. A plate gives 1. */
  readonly usable: number | null;
  readonly usableUnit: BaseUnit | null;
  /** Grams that every batch loses, already taken from `usable`; null: none stated. */
  readonly batchLossG: number | null;
  /** r: made but not served. */
  readonly breakage: number;
  /** Air beaten in, as a share of the mix: `usable` is with it; null: none stated. */
  readonly overrun: number | null;
  /** s: where it is a part of something bought, its share of the price of the whole. */
  readonly costShare: number | null;
}

/** The recipe by which a thing is made on the days of a segment, as it was read. */
export function workedRecipe(period: CostedPeriod, node: number, segment: number, piece: RecipePiece): WorkedRecipe {
  const { version, usable } = piece;
  return {
    validFrom: version.validFrom,
    usable: Number.isNaN(usable) ? null : usable,
    usableUnit: inSegment(period.measures[node] ?? [], segment)?.measure?.base ?? null,
    batchLossG: version.batchLossG,
    breakage: version.breakage,
    overrun: version.overrun,
    costShare: period.things[node]?.part?.costShare ?? null,
  };
}
