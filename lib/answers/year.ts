import { periodsInYear } from '../core/calendar';
import { type DayRange, dayText } from '../core/days';
import { calendarPeriodOf, type Period, periodsUpTo } from '../core/periods';
import { type Database, openDatabase } from '../db/database';
import { inVenue } from '../db/in-venue';
import { loadMenuPrices } from '../db/load-menu-prices';
import { salesDays } from '../db/load-sales';
import { loadClosedThrough, loadVenue } from '../db/load-venue';
import type { VenueName } from '../db/venues';
import { moneyText } from '../format/money-text';
import { noSalesToTell, noSuchSection, yearOfWhat } from '../format/words/problems';
import type { PeriodMix } from '../model/mix/period-mix';
import { sectionsOf } from '../model/offered';
import { menuMix } from '../reports/menu-mix';
import { type Year, type YearPeriod, type YearTotals, year } from '../reports/year';
import type { Asker } from '../session/asker';
import { askedPeriod } from './asked-period';
import { askedVenue } from './asked-venue';
import { costedPeriods } from './costed-periods';
import { type Answered, answered, refused } from './problem';
import { type Standing, standingOf } from './standing';
import { writtenIssues } from './written-issues';
import { yearBefore } from './year-before';
import type { YearAnswer } from './year-shape';

/** A question about the year. Null: the only venue; up to the latest period with sales; the whole menu. */
export interface YearAsked {
  readonly venue: string | null;
  readonly month: string | null;
  readonly section: string | null;
}

/** So many periods are looked back on, the one asked about counted. */
const LOOKED_BACK = 18;
const MONTHS_IN_YEAR = 12;

/** What the menu left through the last eighteen periods, the same for page, command and HTTP. */
export async function yearAnswer(asker: Asker, asked: YearAsked): Promise<Answered<YearAnswer>> {
  const db = await openDatabase();
  const venue = await askedVenue(db, asker, asked.venue);
  if (!venue.ok) return venue;
  const { settings, closedThrough, menuPrices, sold } = await statedIn(db, asker, venue.answer);
  const [first, latest] = [sold[0], sold.at(-1)];
  if (first === undefined || latest === undefined) return refused(404, noSalesToTell);
  const calendar = settings.periods;
  const found =
    asked.month === null
      ? answered({ period: calendarPeriodOf(latest, calendar) })
      : await askedPeriod(db, asker, venue.answer, asked.month);
  if (!found.ok) return found;
  const { period } = found.answer;
  if (!/^\d{4}-(\d{2}|P\d{2})$/.test(period.name)) return refused(400, yearOfWhat(period.name));
  const shown = periodsUpTo(period, LOOKED_BACK, calendar).filter(
    ({ range }) => range.to > first || range.to === period.range.to,
  );
  const before = shown.map((each) => {
    const earlier = yearBefore(each, calendar);
    return earlier && earlier.range.to > first ? earlier : null;
  });
  const mixes = await mixesOf(db, asker, venue.answer, [...shown, ...before.flatMap((each) => each ?? [])], asked);
  const mixNamed = (each: Period | null) => (each === null ? null : (mixes.get(each.name) ?? null));
  const periods = shown.flatMap((each, at) => {
    const mix = mixNamed(each);
    return mix ? [{ ...mix, yearBefore: mixNamed(before[at] ?? null) }] : [];
  });
  const { section } = asked;
  if (section !== null && periods.every(({ mix }) => mix.items.length === 0)) {
    const known = new Set(periods.flatMap(({ costed }) => sectionsOf(costed.things)));
    return refused(404, noSuchSection(section, [...known]));
  }
  const inYear = period.name.includes('P') ? periodsInYear(calendar) : MONTHS_IN_YEAR;
  const report = year({ venue: settings, section, periods, inYear, menuPrices });
  return answered(written(report, period.name, standingOf(settings, closedThrough)));
}

/** What is told of a venue's year beside its mixes. */
function statedIn(db: Database, asker: Asker, venue: VenueName) {
  return inVenue(db, { venue: venue.id, person: asker.person }, 'read', async (tx) => {
    const sold = await salesDays(tx);
    const range = { from: sold[0] ?? 0, to: (sold.at(-1) ?? 0) + 366 } as DayRange;
    return {
      settings: await loadVenue(tx),
      closedThrough: await loadClosedThrough(tx),
      menuPrices: await loadMenuPrices(tx, range, (a, b) => a - b),
      sold,
    };
  });
}

/** The mix of each period, by the period's name. */
async function mixesOf(
  db: Database,
  asker: Asker,
  venue: VenueName,
  periods: readonly Period[],
  { section }: YearAsked,
): Promise<ReadonlyMap<string, PeriodMix>> {
  const named = [...new Map(periods.map((period) => [period.name, period])).values()];
  const ranges = named.map(({ range }) => range);
  const costed = (await costedPeriods(db, asker, venue.id, ranges)).periods;
  return new Map(
    named.flatMap((period, at) => {
      const of = costed[at];
      if (!of) return [];
      return [[period.name, { period, costed: of, mix: menuMix(of, { section, resamples: 0 }) }] as const];
    }),
  );
}

/** The report as the interface writes it: money as decimal text, days as ISO text, issues in words. */
function written(report: Year, month: string, standing: (range: DayRange) => Standing): YearAnswer {
  const { currency, locale, name, targetFoodCost } = report.venue;
  const money = (amount: number | null) => (amount === null ? null : moneyText(amount, currency));
  const figures = (row: Omit<YearPeriod, 'yearBefore' | 'menuChanges'>) => ({
    period: row.period.name,
    from: dayText(row.period.range.from),
    to: dayText(row.period.range.to),
    tradingDays: row.tradingDays,
    sold: row.totals.sold,
    comps: row.totals.comps,
    revenue: money(row.totals.revenue),
    contribution: money(row.contribution),
    foodCostPct: row.totals.foodCost,
    margin: money(row.margin),
    coverage: row.coverage,
    provisional: row.provisional,
  });
  const together = ({ periods, totals, contribution, margin, coverage }: YearTotals): YearAnswer['last'] => ({
    ...{ periods, sold: totals.sold, foodCostPct: totals.foodCost, coverage },
    contribution: money(contribution),
    margin: money(margin),
  });
  return {
    ...{ venue: name, month, currency, locale, section: report.section, targetFoodCostPct: targetFoodCost },
    period: { from: dayText(report.range.from), to: dayText(report.range.to) },
    periods: report.periods.map((row) => ({
      ...figures(row),
      ...standing(row.period.range),
      yearBefore: row.yearBefore && figures(row.yearBefore),
      menuChanges: row.menuChanges.map(({ day, item, channels, kind, price, before }) => ({
        ...{ day: dayText(day), item, channels: [...channels], kind },
        ...{ price: money(price), priceBefore: money(before) },
      })),
    })),
    last: together(report.last),
    lastYearBefore: report.lastYearBefore && together(report.lastYearBefore),
    issues: writtenIssues(report.issues),
  };
}
