import { PROVISIONAL_BELOW } from '../../model/mix/mix-totals';
import { perCent } from '../figures';
import { type Purse, wholeMoney } from '../money';
import { monthName, periodName } from '../periods';
import { capital, figurePart, type Part, type Phrase } from '../phrase';
import { countWord, portions } from '../portions';

export const YEAR = {
  view: 'The year',
  title: 'The year',
  region: 'The periods of the year, all columns',
  picture:
    'What the menu left, food cost by recipe, portions and what a portion left on average, a column a period; the same in the table below',
  howToRead: 'How to read it',
  against: 'The stroke across a column: the same month a year before.',
  hollow: 'Hollow: provisional, since margins are known for less than 90\u2009% of portions, or still running.',
  menuLine: 'Dotted uprights: the menu changed; beneath, how many dishes came, went or got another price.',
  missing: 'What is missing',
  unknown: 'unknown',
  none: '–',
  running: 'still running',
  provisional: 'provisional',
} as const;

/** What the sentences of the year are made from; a YearAnswer has it all. */
export interface YearFigures {
  readonly month: string;
  readonly section: string | null;
  readonly currency: string;
  readonly locale: string;
  readonly periods: readonly YearRow[];
  readonly last: YearSum;
  readonly lastYearBefore: YearSum | null;
}

interface YearSum {
  readonly periods: number;
  readonly sold: number;
  readonly contribution: string | null;
  readonly foodCostPct: number | null;
  readonly coverage: number | null;
}

export interface YearRow {
  readonly period: string;
  readonly sold: number;
  readonly contribution: string | null;
  readonly foodCostPct: number | null;
  readonly provisional: boolean;
  readonly running: boolean;
  readonly yearBefore: {
    readonly period: string;
    readonly contribution: string | null;
    readonly provisional: boolean;
  } | null;
}

const isMonth = (period: string): boolean => /^\d{4}-\d{2}$/.test(period);

export function yearTitle(period: string): string {
  return `${YEAR.title} to ${period}`;
}

/** What the periods of a year are called: twelve months, thirteen periods. */
export function periodsWord(count: number, period: string, locale: string): string {
  const noun = isMonth(period) ? 'month' : 'period';
  return count === 1 ? noun : `${countWord(count, locale)} ${noun}s`;
}

function opening({ last, month, section, locale }: YearFigures, purse: Purse): Part[] {
  const which =
    last.periods === 1
      ? capital(periodName(month, locale))
      : `The ${periodsWord(last.periods, month, locale)} to ${periodName(month, locale)}`;
  const scope: Part[] = section === null ? [] : [' in ', { name: section }];
  const sold = figurePart(portions(last.sold, locale));
  const were = last.sold === 1 ? ' was sold' : ' were sold';
  if (last.contribution === null || last.coverage === null)
    return [which, ...scope, ': ', sold, `${were}. What they left is not known yet.`];
  const left = figurePart(wholeMoney(last.contribution, purse));
  const cost: Part[] =
    last.foodCostPct === null ? [] : [', at a food cost by recipe of ', figurePart(perCent(last.foodCostPct, locale))];
  if (last.coverage >= 1) return [which, ...scope, ': ', sold, ' left ', left, ' before labour', ...cost, '.'];
  const share = figurePart(perCent(last.coverage, locale, last.coverage > 0.99 ? 1 : 0));
  const known: Part[] = [', with margins known for ', share, ' of them. Those left '];
  return [which, ...scope, ': ', sold, ...known, left, ' before labour', ...cost, '.'];
}

/** How much more or less one sum is than another: 8.2 % more than. */
function against(now: string, before: string, locale: string): Part[] {
  const change = Number(before) === 0 ? null : Number(now) / Number(before) - 1;
  if (change === null || Number(before) < 0) return [];
  if (Math.abs(change) < 0.0005) return [', as much as '];
  return [', ', figurePart(perCent(Math.abs(change), locale)), change > 0 ? ' more than ' : ' less than '];
}

function yearBefore({ last, lastYearBefore, locale }: YearFigures): Part[] {
  if (last.contribution === null || !lastYearBefore || lastYearBefore.contribution === null) return [];
  const [, ...compared] = against(last.contribution, lastYearBefore.contribution, locale);
  return compared.length === 0 ? [] : [' That is ', ...compared, 'the year before.'];
}

/** The last period that is over, against the same one a year before. */
function lastPeriod({ periods, locale }: YearFigures, purse: Purse): Part[] {
  const row = periods.findLast(({ running, sold }) => !running && sold > 0);
  if (!row || row.contribution === null || row.provisional) return [];
  const before = row.yearBefore;
  if (before === null || before.contribution === null || before.provisional) return [];
  const compared = against(row.contribution, before.contribution, locale);
  if (compared.length === 0) return [];
  const left = figurePart(wholeMoney(row.contribution, purse));
  const name = isMonth(row.period) ? (monthName(row.period, locale).split(' ')[0] ?? row.period) : row.period;
  return [` ${name} left `, left, ...compared, `${periodName(before.period, locale)}.`];
}

/** The best and the worst of the periods that the first sentence speaks of, as far as they can be compared. */
function extremes({ periods, last, locale }: YearFigures): Part[] {
  const known = periods
    .slice(-last.periods)
    .filter(({ running, provisional, sold }) => !running && !provisional && sold > 0);
  const ranked = known
    .flatMap(({ period, contribution }) => (contribution === null ? [] : [{ period, left: Number(contribution) }]))
    .sort((a, b) => b.left - a.left);
  const [most, least] = [ranked[0], ranked.at(-1)];
  if (!most || !least || ranked.length < 3 || most.left === least.left) return [];
  return [` ${periodName(most.period, locale)} left most, ${periodName(least.period, locale)} least.`];
}

function doubts({ periods, locale }: YearFigures): Part[] {
  const doubtful = periods.filter(({ provisional }) => provisional);
  const running = periods.filter((row) => row.running);
  const limit = figurePart(perCent(PROVISIONAL_BELOW, locale, 0));
  const names = doubtful.map(({ period }) => periodName(period, locale));
  const which =
    doubtful.length === 1
      ? `${names[0]} is`
      : `${capital(periodsWord(doubtful.length, doubtful[0]?.period ?? '', locale))} are`;
  const share: Part[] =
    doubtful.length === 0 ? [] : [` ${which} provisional: margins are known for less than `, limit, ' of portions.'];
  return [...share, ...running.map(({ period }) => ` ${periodName(period, locale)} is still running.`)];
}

/** What the year comes to in words, made by rule from the same figures as the table. */
export function yearSentences(year: YearFigures): Phrase {
  const purse = { currency: year.currency, locale: year.locale };
  return [...opening(year, purse), ...yearBefore(year), ...lastPeriod(year, purse), ...extremes(year), ...doubts(year)];
}

/** What the figures of the page stand on. */
export function yearBasis({ section }: { readonly section: string | null }): readonly string[] {
  return [
    section === null ? 'whole menu, without set menus and drinks' : `section ${section}`,
    'achieved prices, net',
    'food cost and margins by recipe, at the price in force each day',
    'each period as its own menu mix has it',
  ];
}
