import type { ClassShares } from './certainty';
import type { MixClass } from './mix-model';

/** Share of the resamples that have to agree before a class is called settled. */
export const SETTLED = 0.9;

/** What is known of an item's class in one period. */
export interface Classing {
  readonly class: MixClass | null;
  readonly classShares: ClassShares | null;
}

export interface Verdict {
  readonly settled: boolean | null;
  /** Where it is not settled: the two classes it lies between, likelier first. */
  readonly between: readonly [MixClass, MixClass] | null;
}

/**
 * Settled: at least 90 % of the resamples in the class that the period gives it, in this period and in the one before, where that
 * one says. Else on the line, between that class and the one that most of the other resamples of both periods name; likelier first, a tie
 * going to the period's own class.
 */
export function verdict(now: Classing, before: Classing | null): Verdict {
  const mixClass = now.class;
  if (mixClass === null || now.classShares === null) return { settled: null, between: null };
  const periods = [now.classShares, ...(before?.classShares ? [before.classShares] : [])];
  const settled = periods.every((shares) => (shares[mixClass] ?? 0) >= SETTLED);
  if (settled) return { settled, between: null };
  const total = (each: MixClass): number => periods.reduce((sum, shares) => sum + (shares[each] ?? 0), 0);
  const named = Object.keys(now.classShares) as MixClass[];
  const [other] = named.filter((each) => each !== mixClass).sort((a, b) => total(b) - total(a));
  if (!other) return { settled, between: null };
  return { settled, between: total(other) > total(mixClass) ? [other, mixClass] : [mixClass, other] };
}
