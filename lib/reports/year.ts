import type { DayRange } from '../core/days';
import type { Period } from '../core/periods';
import type { MenuPrice, VenueSettings } from '../model/facts';
import type { Issue } from '../model/issue';
import { firstMenuDay, type MenuChange, menuChanges } from '../model/menu-changes';
import { type MixTotals, PROVISIONAL_BELOW, sumOfTotals } from '../model/mix/mix-totals';
import type { PeriodMix } from '../model/mix/period-mix';
import { portionsSold, sumOfWaiting, waitingIssues } from '../model/waiting-sales';

export interface YearPeriod {
  readonly period: Period;
  readonly tradingDays: number;
  readonly totals: MixTotals;
  /** What the portions left: the totals' margin; of the costed items. */
  readonly contribution: number | null;
  /** Portion-weighted mean margin of the costed items. */
  readonly margin: number | null;
  readonly coverage: number | null;
  /** Margins are known for less than 90 % of the portions. */
  readonly provisional: boolean;
  readonly menuChanges: readonly MenuChange[];
  /** The same period of the year before; null where nothing was sold in it. */
  readonly yearBefore: Omit<YearPeriod, 'yearBefore' | 'menuChanges'> | null;
}

/** Several periods together. */
export interface YearTotals {
  readonly periods: number;
  readonly totals: MixTotals;
  readonly contribution: number | null;
  readonly margin: number | null;
  readonly coverage: number | null;
}

export interface Year {
  readonly venue: VenueSettings;
  readonly section: string | null;
  readonly range: DayRange;
  /** Oldest first, without a gap between them. */
  readonly periods: readonly YearPeriod[];
  /** The last year's worth of these periods, or as many as there are. */
  readonly last: YearTotals;
  /** The same periods a year before; null unless something was sold in every one of them. */
  readonly lastYearBefore: YearTotals | null;
  readonly issues: readonly Issue[];
}

export interface YearOf {
  readonly venue: VenueSettings;
  readonly section: string | null;
  /** Oldest first, each with the same period of the year before, where that is looked at. */
  readonly periods: readonly (PeriodMix & { readonly yearBefore: PeriodMix | null })[];
  /** Periods in a year: 12, or 13 of four weeks. */
  readonly inYear: number;
  /** The dated menu prices of the venue. */
  readonly menuPrices: readonly MenuPrice[];
}

/**
 * What the menu left through the periods, with the changes of the menu beside it: contribution, food-cost % by recipe, portions and mean
 * margin of each period are those of its menu mix. The first day on which anything was priced is no change: everything came on it.
 */
export function year({ venue, section, periods, inYear, menuPrices }: YearOf): Year {
  const [first, last] = [periods[0], periods.at(-1)];
  if (!first || !last) throw new RangeError('a year has at least one period');
  const range = { from: first.period.range.from, to: last.period.range.to };
  const nameOf = new Map(periods.flatMap(({ mix }) => mix.items.map(({ id, item }) => [id, item] as const)));
  const opening = firstMenuDay(menuPrices);
  const rows = periods.map(({ yearBefore, ...each }): YearPeriod => {
    const changes = menuChanges(menuPrices, nameOf, each.period.range);
    const before = yearBefore && yearBefore.mix.totals.sold > 0 ? figuresOf(yearBefore) : null;
    return { ...figuresOf(each), menuChanges: changes.filter(({ day }) => day !== opening), yearBefore: before };
  });
  const lastRows = rows.slice(-inYear);
  const beforeRows = lastRows.flatMap((row) => row.yearBefore ?? []);
  const isWholeYear = lastRows.length === inYear && beforeRows.length === inYear;
  return {
    ...{ venue, section, range, periods: rows },
    last: together(lastRows),
    lastYearBefore: isWholeYear ? together(beforeRows) : null,
    issues: [
      ...(section === null
        ? waitingIssues(
            venue.name,
            sumOfWaiting(periods.map(({ mix }) => mix.waiting)),
            periods.reduce((sum, { costed }) => sum + portionsSold(costed.things), 0),
          )
        : []),
      ...rows.flatMap(issuesOfPeriod),
    ],
  };
}

function figuresOf({ period, mix }: Omit<PeriodMix, 'costed'>): Omit<YearPeriod, 'yearBefore' | 'menuChanges'> {
  const { totals, thresholds, coverage, tradingDays } = mix;
  const provisional = coverage !== null && coverage < PROVISIONAL_BELOW;
  return { period, tradingDays, totals, contribution: totals.margin, margin: thresholds.margin, coverage, provisional };
}

function together(rows: readonly Pick<YearPeriod, 'totals'>[]): YearTotals {
  const totals = sumOfTotals(rows.map((row) => row.totals));
  const { margin, costedSold, sold } = totals;
  return {
    periods: rows.length,
    totals,
    contribution: margin,
    margin: margin === null || costedSold === 0 ? null : margin / costedSold,
    coverage: sold > 0 ? costedSold / sold : null,
  };
}

function issuesOfPeriod({ period, totals, coverage, provisional }: YearPeriod): readonly Issue[] {
  if (totals.sold === 0) return [{ code: 'no-sales', about: period.name, facts: {} }];
  return provisional ? [{ code: 'coverage-low', about: period.name, facts: { share: coverage } }] : [];
}
