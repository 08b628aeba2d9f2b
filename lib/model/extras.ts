import type { Day } from '../core/days';
import type { CostedPeriod } from './costed-period';
import type { Issue } from './issue';
import { plateCost } from './plate-cost';
import type { PortionWeight } from './portion-weights';
import { segmentOf } from './segments';
import { isGiven } from './served';
import type { Thing } from './things';

/** What every guest was given of one extra in a period. Money is venue currency, q included. */
export interface ExtraGiven {
  readonly node: number;
  readonly thing: Thing;
  /** Guests of the days on which it was given, as far as they are known. */
  readonly covers: number;
  /** Cost of all of them; null where a part of it is not known. */
  readonly cost: number | null;
  /** Cost of one, weighted by covers; null where there were none or it is not known. */
  readonly perCover: number | null;
  /** Days with sales on which it was given and of which the covers are not known. */
  readonly daysWithoutCovers: number;
}

/** The extras of a period, by name: sum over days of covers * f. They are in no dish's plate cost. */
export function extrasGiven(period: CostedPeriod): readonly ExtraGiven[] {
  const known = new Set(period.covers.map(({ day }) => day));
  const traded = new Set(
    period.things.flatMap(({ sales }) => sales.filter(({ sold }) => sold > 0).map(({ day }) => day)),
  );
  const without = [...traded].filter((day) => !known.has(day));
  return period.things.flatMap((thing, node) => {
    if (thing.kind !== 'extra' || thing.channel !== null) return [];
    const days = period.covers.filter(({ day }) => isGiven(period, node, day));
    const costOn = (day: Day) => plateCost(period, node, segmentOf(period.segments, day));
    const isKnown = days.every(({ day, covers }) => covers === 0 || costOn(day).complete);
    const covers = days.reduce((sum, each) => sum + each.covers, 0);
    const cost = isKnown ? days.reduce((sum, each) => sum + each.covers * costOn(each.day).total, 0) : null;
    return [
      {
        ...{ node, thing, covers, cost, perCover: cost === null || covers === 0 ? null : cost / covers },
        daysWithoutCovers: without.filter((day) => isGiven(period, node, day)).length,
      },
    ];
  });
}

/** An extra whose guests are not known on every day with sales. */
export function coversIssues(extras: readonly ExtraGiven[]): readonly Issue[] {
  return extras.flatMap(({ thing, daysWithoutCovers: days }) =>
    days === 0 ? [] : [{ code: 'no-covers' as const, about: thing.name, facts: { days } }],
  );
}

/** What a mean over what was given of an extra is weighed by: the guests of each segment; the days on which it is given where none are known. */
export function givenWeights(period: CostedPeriod, node: number): readonly PortionWeight[] {
  if (period.things[node]?.kind !== 'extra') return [];
  const { count, cuts } = period.segments;
  const covers = new Float64Array(count);
  const days = new Float64Array(count);
  for (const { day, covers: guests } of period.covers) {
    if (isGiven(period, node, day)) {
      const segment = segmentOf(period.segments, day);
      covers[segment] = (covers[segment] as number) + guests;
    }
  }
  for (let segment = 0; segment < count; segment++) {
    if (isGiven(period, node, cuts[segment] as Day))
      days[segment] = (cuts[segment + 1] as Day) - (cuts[segment] as Day);
  }
  const weighed = covers.some((guests) => guests > 0) ? covers : days;
  return [...weighed].flatMap((weight, segment) => (weight === 0 ? [] : [{ segment, channel: null, weight }]));
}
