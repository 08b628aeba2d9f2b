import { weekday } from '../core/days';
import type { Period } from '../core/periods';
import type { VenueSettings } from '../model/facts';
import type { Issue } from '../model/issue';
import { type DayOfMix, mixByDay, type UnsoldItem, unsoldItems } from '../model/mix/mix-by-day';
import { type MixTotals, meanOfTotals, PROVISIONAL_BELOW } from '../model/mix/mix-totals';
import type { PeriodMix } from '../model/mix/period-mix';
import { portionsSold, waitingIssues } from '../model/waiting-sales';

/** What a week came to, or several together. Money is venue currency net of sales tax. */
export interface WeekFigures {
  readonly tradingDays: number;
  /** Of the days of which they are known; null where that is none. */
  readonly covers: number | null;
  /** Revenue at the tables over covers, of the days of which both are known. */
  readonly spendPerCover: number | null;
  readonly totals: MixTotals;
  readonly contribution: number | null;
  readonly coverage: number | null;
  readonly provisional: boolean;
}

/** A day of the week beside the mean of the same weekday before, and the same one a year before. */
export interface WeekDay extends DayOfMix {
  /** Mean of the weekdays before that traded; null where none did. */
  readonly usual: DayFigures | null;
  readonly yearBefore: DayFigures | null;
}

export type DayFigures = Pick<DayOfMix, 'covers' | 'spendPerCover' | 'sold' | 'contribution'>;

export interface Week {
  readonly venue: VenueSettings;
  readonly period: Period;
  readonly now: WeekFigures;
  /** A mean week of those before that traded, and how many they are; null where none did. */
  readonly before: (WeekFigures & { readonly weeks: number }) | null;
  readonly yearBefore: (WeekFigures & { readonly period: Period }) | null;
  /** Monday to Sunday. */
  readonly days: readonly WeekDay[];
  /** On sale on days without a portion sold, most such days first. */
  readonly unsold: readonly UnsoldItem[];
  readonly issues: readonly Issue[];
}

export interface WeekOf {
  readonly now: PeriodMix;
  /** The weeks before it that are looked at. */
  readonly before: readonly PeriodMix[];
  readonly yearBefore: PeriodMix | null;
}

const isTraded = ({ mix }: PeriodMix): boolean => mix.totals.sold > 0;

/**
 * A week at a glance: covers, spend per cover, portions, food cost by recipe and what was left, beside the mean of the weeks before and the
 * same week a year before, by day too; and what was on sale without selling. Weeks without a sale are in no mean.
 */
export function week({ now, before: all, yearBefore }: WeekOf): Week {
  const before = all.filter(isTraded);
  const daysBefore = before.map(mixByDay);
  const earlier = yearBefore && isTraded(yearBefore) ? yearBefore : null;
  const daysYearBefore = earlier ? mixByDay(earlier) : [];
  const days = mixByDay(now).map((each): WeekDay => {
    const sameWeekday = (of: readonly DayOfMix[]) =>
      of.filter(({ day, sold }) => weekday(day) === weekday(each.day) && sold > 0);
    return {
      ...each,
      usual: meanDay(daysBefore.flatMap(sameWeekday)),
      yearBefore: meanDay(sameWeekday(daysYearBefore)),
    };
  });
  const { venue } = now.costed;
  return {
    ...{ venue, period: now.period, now: figuresOf(now), days, unsold: unsoldItems(now) },
    before: before.length === 0 ? null : { ...meanWeek(before), weeks: before.length },
    yearBefore: earlier && { ...figuresOf(earlier), period: earlier.period },
    issues: issuesOf(now, days),
  };
}

function figuresOf(one: PeriodMix): WeekFigures {
  const { mix } = one;
  const { coverage } = mix;
  return {
    ...{ tradingDays: mix.tradingDays, totals: mix.totals, contribution: mix.totals.margin, coverage },
    ...guests(mixByDay(one)),
    provisional: coverage !== null && coverage < PROVISIONAL_BELOW,
  };
}

/** Covers, and spend over those days of which covers and revenue are known. */
function guests(days: readonly DayOfMix[]): Pick<WeekFigures, 'covers' | 'spendPerCover'> {
  const covers = days.flatMap((day) => day.covers ?? []);
  const spent = days.filter(({ spendPerCover }) => spendPerCover !== null);
  const sum = (of: (day: DayOfMix) => number | null) => spent.reduce((all, day) => all + (of(day) ?? 0), 0);
  return {
    covers: covers.length === 0 ? null : covers.reduce((all, each) => all + each, 0),
    spendPerCover: spent.length === 0 ? null : sum((day) => day.seatedRevenue) / sum((day) => day.covers),
  };
}

/** The mean of some weeks; shares and spend as of all of them together. */
function meanWeek(weeks: readonly PeriodMix[]): WeekFigures {
  const totals = meanOfTotals(weeks.map(({ mix }) => mix.totals));
  const coverage = totals.sold > 0 ? totals.costedSold / totals.sold : null;
  const each = weeks.map(figuresOf);
  return {
    tradingDays: each.reduce((sum, one) => sum + one.tradingDays, 0) / weeks.length,
    covers: mean(each.map(({ covers }) => covers)),
    spendPerCover: guests(weeks.flatMap(mixByDay)).spendPerCover,
    totals,
    contribution: totals.margin,
    coverage,
    provisional: coverage !== null && coverage < PROVISIONAL_BELOW,
  };
}

/** The mean of what is known; null where nothing is. */
function mean(values: readonly (number | null)[]): number | null {
  const known = values.filter((value) => value !== null);
  return known.length === 0 ? null : known.reduce((sum, each) => sum + each, 0) / known.length;
}

function meanDay(days: readonly DayOfMix[]): DayFigures | null {
  if (days.length === 0) return null;
  return {
    covers: mean(days.map(({ covers }) => covers)),
    spendPerCover: guests(days).spendPerCover,
    sold: mean(days.map(({ sold }) => sold)) ?? 0,
    contribution: mean(days.map(({ contribution }) => contribution)),
  };
}

function issuesOf({ period, costed, mix }: PeriodMix, days: readonly DayOfMix[]): readonly Issue[] {
  const { name } = period;
  const missing = days.filter(({ covers, seatedRevenue }) => covers === null && seatedRevenue !== 0).length;
  const waiting = waitingIssues(costed.venue.name, mix.waiting, portionsSold(costed.things));
  if (mix.totals.sold === 0 && mix.waiting.rows === 0) return [{ code: 'no-sales', about: name, facts: {} }];
  const isLow = mix.coverage !== null && mix.coverage < PROVISIONAL_BELOW;
  return [
    ...waiting,
    ...(isLow ? [{ code: 'coverage-low' as const, about: name, facts: { share: mix.coverage } }] : []),
    ...(missing > 0 ? [{ code: 'covers-missing' as const, about: name, facts: { days: missing } }] : []),
  ];
}
