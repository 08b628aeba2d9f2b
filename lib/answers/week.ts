import { type DayRange, dayText } from '../core/days';
import { type Period, periodsUpTo } from '../core/periods';
import { openDatabase } from '../db/database';
import { inVenue } from '../db/in-venue';
import { salesDays } from '../db/load-sales';
import { loadClosedThrough, loadVenue } from '../db/load-venue';
import { moneyText } from '../format/money-text';
import { noSalesToTell, noWeekIn, whichWeek } from '../format/words/problems';
import { menuMix } from '../reports/menu-mix';
import { type DayFigures, type Week, type WeekFigures, week } from '../reports/week';
import type { Asker } from '../session/asker';
import { askedPeriod } from './asked-period';
import { askedVenue } from './asked-venue';
import { costedPeriods } from './costed-periods';
import { latestWeek, weeksBeside, weekWithin } from './latest-week';
import { type Answered, answered, refused } from './problem';
import { type Standing, standingOf } from './standing';
import type { WeekAnswer } from './week-shape';
import { writtenIssues } from './written-issues';
import { yearBefore } from './year-before';

/** A question about a week. Null: the only venue; the latest week whose sales are all in. A month stands for its last week. */
export interface WeekAsked {
  readonly venue: string | null;
  readonly month: string | null;
}

/** So many weeks before it are a week held against. */
const WEEKS_BEFORE = 4;

/** A week at a glance, the same for page, command and HTTP. */
export async function weekAnswer(asker: Asker, asked: WeekAsked): Promise<Answered<WeekAnswer>> {
  const db = await openDatabase();
  const venue = await askedVenue(db, asker, asked.venue);
  if (!venue.ok) return venue;
  const who = { venue: venue.answer.id, person: asker.person };
  const { settings, closedThrough, sold } = await inVenue(db, who, 'read', async (tx) => ({
    settings: await loadVenue(tx),
    closedThrough: await loadClosedThrough(tx),
    sold: await salesDays(tx),
  }));
  const standing = standingOf(settings, closedThrough);
  const latest = latestWeek(sold, ({ range }) => standing(range).running);
  if (latest === null) return refused(404, noSalesToTell);
  const found =
    asked.month === null ? answered({ period: latest }) : await askedPeriod(db, asker, venue.answer, asked.month);
  if (!found.ok) return found;
  const { period } = found.answer;
  const isWeek = /^\d{4}-W\d{2}$/.test(period.name);
  if (!isWeek && period.name.includes('..')) return refused(400, whichWeek(period.name));
  const now = isWeek ? period : weekWithin(sold, period, latest);
  if (now === null) return refused(404, noWeekIn(period.name));
  const weeks = periodsUpTo(now, WEEKS_BEFORE + 1);
  const earlier = yearBefore(now, settings.periods);
  const asking = earlier === null ? weeks : [...weeks, earlier];
  const ranges = asking.map(({ range }) => range);
  const { periods } = await costedPeriods(db, asker, venue.answer.id, ranges);
  const mixes = asking.flatMap((each, at) => {
    const costed = periods[at];
    return costed ? [{ period: each, costed, mix: menuMix(costed, { section: null, resamples: 0 }) }] : [];
  });
  const mixOf = mixes[WEEKS_BEFORE];
  if (!mixOf) throw new Error('a week was asked for');
  const report = week({
    now: mixOf,
    before: mixes.slice(0, WEEKS_BEFORE),
    yearBefore: mixes[WEEKS_BEFORE + 1] ?? null,
  });
  return answered(written(report, weeksBeside(sold, now), standing));
}

/** The report as the interface writes it: money as decimal text, days as ISO text, issues in words. */
function written(
  report: Week,
  [previous, next]: readonly [Period | null, Period | null],
  standing: (range: DayRange) => Standing,
): WeekAnswer {
  const { currency, locale, name } = report.venue;
  const { range } = report.period;
  const money = (amount: number | null) => (amount === null ? null : moneyText(amount, currency));
  const figures = (of: WeekFigures) => ({
    tradingDays: of.tradingDays,
    covers: of.covers,
    spendPerCover: money(of.spendPerCover),
    sold: of.totals.sold,
    revenue: money(of.totals.revenue),
    contribution: money(of.contribution),
    foodCostPct: of.totals.foodCost,
    coverage: of.coverage,
    provisional: of.provisional,
  });
  const ofDay = ({ covers, spendPerCover, sold, contribution }: DayFigures) => ({
    ...{ covers, spendPerCover: money(spendPerCover), sold, contribution: money(contribution) },
  });
  const { before, yearBefore: earlier } = report;
  return {
    ...{ venue: name, month: report.period.name, currency, locale },
    period: { from: dayText(range.from), to: dayText(range.to) },
    ...standing(range),
    ...{ previous: previous?.name ?? null, next: next?.name ?? null },
    week: figures(report.now),
    before: before && { weeks: before.weeks, ...figures(before) },
    yearBefore: earlier && { month: earlier.period.name, ...figures(earlier) },
    days: report.days.map(({ day, usual, yearBefore: dayBefore, ...each }) => ({
      ...{ day: dayText(day), ...ofDay(each) },
      ...{ usual: usual && ofDay(usual), yearBefore: dayBefore && ofDay(dayBefore) },
    })),
    unsold: report.unsold.map(({ item, section, sold, daysOnSale, daysWithoutSale }) => ({
      ...{ item, section, sold, daysOnSale, daysWithoutSale },
    })),
    issues: writtenIssues(report.issues),
  };
}
