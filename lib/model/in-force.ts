import type { Day, DayRange } from '../core/days';
import { ascending } from '../core/grouped';

/** A fact and the days, inside the range asked for, on which it is in force. */
export interface InForce<Fact> extends DayRange {
  readonly fact: Fact;
}

const start = (fact: { readonly validFrom: Day | null }): number => fact.validFrom ?? Number.NEGATIVE_INFINITY;

/**
 * The dated facts of one thing as the days of the range on which each is in force: on every day the one with the latest
 * validFrom on or before it (null: from the beginning). Ascending, without overlap; days before the first fact are in none.
 */
export function inForce<Fact extends { readonly validFrom: Day | null }>(
  facts: readonly Fact[],
  range: DayRange,
): readonly InForce<Fact>[] {
  const dated = ascending(facts, (a, b) => start(a) - start(b));
  return dated.flatMap((fact, index) => {
    const from = Math.max(range.from, start(fact)) as Day;
    const next = dated[index + 1];
    const to = Math.min(range.to, next ? start(next) : range.to) as Day;
    return from < to ? [{ fact, from, to }] : [];
  });
}

/** The one of some spans in force on a day, or null. */
export function onDay<Fact>(spans: readonly InForce<Fact>[], day: Day): Fact | null {
  return spans.find((span) => day >= span.from && day < span.to)?.fact ?? null;
}
