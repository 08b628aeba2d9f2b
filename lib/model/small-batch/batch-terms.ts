import type { RecipePiece } from '../recipe-piece';
import type { BatchTerms } from './run-batches';

/** The smallest batch in base units of what is left of it, and the days it keeps; null where one of them is not known. */
export function batchTerms(piece: RecipePiece | null): BatchTerms | null {
  const smallest = piece && smallestBatch(piece);
  const days = piece && keptDays(piece);
  return smallest === null || days === null ? null : { smallest, days };
}

/**
 * The smallest batch is stated in the unit of the yield (of grams, where the yield is blank) and shrinks and swells as a whole batch does.
 * Null where it is not stated, or what a batch gives is not known.
 */
export function smallestBatch({ usable, version }: RecipePiece): number | null {
  const { smallestBatch: stated, yieldQuantity, batchLossG } = version;
  if (stated === null || Number.isNaN(usable)) return null;
  return (stated / (yieldQuantity ?? usable + (batchLossG ?? 0))) * usable;
}

/** L: the days that it keeps, the day of making being the first; what is thrown at close keeps one. */
export function keptDays({ version }: RecipePiece): number | null {
  return version.thrownAtClose ? 1 : version.shelfLifeDays;
}
