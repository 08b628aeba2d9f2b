import { figure } from './figures';
import { coinsFigure, moneyFigure, type Purse, printedCoins } from './money';
import { weekdayName } from './periods';
import { portionsFigure } from './portions';
import { WEEK } from './words/week';
import { WEEK_TOTAL, type WeekColumn } from './words/week-table';

interface Figures {
  readonly covers: number | null;
  readonly spendPerCover: string | null;
  readonly sold: number;
  readonly contribution: string | null;
}

/** What the rows of a week are made from; a WeekAnswer has it all. */
export interface WeekTold {
  readonly week: Figures;
  readonly before: Figures | null;
  readonly yearBefore: Figures | null;
  readonly days: readonly (Figures & {
    readonly day: string;
    readonly usual: Figures | null;
    readonly yearBefore: Figures | null;
  })[];
}

export type WeekCells = Readonly<Record<WeekColumn, string>>;

/** Means of counts keep one decimal. */
const MEAN = { least: 0, most: 1 } as const;

/** The days as a table prints them, on page and terminal alike: a day on which nothing was sold is a dash. */
export function weekRows(
  { days }: WeekTold,
  purse: Purse,
): readonly { readonly day: string; readonly cells: WeekCells }[] {
  return days.map(({ day, usual, yearBefore, ...own }) => ({
    day,
    cells: { day: weekdayName(day, purse.locale), ...cells(own, usual, yearBefore, purse) },
  }));
}

/** The last row: the week. What was left is the sum of the days as printed. */
export function weekSum(told: WeekTold, purse: Purse): WeekCells {
  const coins = told.days.reduce((sum, each) => sum + printedCoins(each.contribution ?? '0', purse.currency), 0);
  const left = told.week.contribution === null ? WEEK.unknown : coinsFigure(coins, purse);
  return { day: WEEK_TOTAL, ...cells(told.week, told.before, told.yearBefore, purse), left };
}

function cells(own: Figures, usual: Figures | null, yearBefore: Figures | null, purse: Purse): Omit<WeekCells, 'day'> {
  const { locale } = purse;
  const isClosed = own.sold === 0 && own.covers === null;
  const money = (amount: string | null, isNothing: boolean) =>
    amount === null ? (isNothing ? WEEK.none : WEEK.unknown) : moneyFigure(amount, purse);
  const count = (value: number | null, isNothing: boolean) =>
    value === null ? (isNothing ? WEEK.none : WEEK.unknown) : figure(value, locale, 0);
  const mean = (value: number | null | undefined) =>
    value === null || value === undefined ? WEEK.none : figure(value, locale, MEAN);
  const meanMoney = (amount: string | null | undefined) =>
    amount === null || amount === undefined ? WEEK.none : moneyFigure(amount, purse);
  return {
    covers: count(own.covers, isClosed),
    coversUsual: mean(usual?.covers),
    spend: money(own.spendPerCover, isClosed),
    spendUsual: meanMoney(usual?.spendPerCover),
    sold: own.sold === 0 ? WEEK.none : portionsFigure(own.sold, locale),
    soldUsual: mean(usual?.sold),
    left: money(own.contribution, own.sold === 0),
    leftUsual: meanMoney(usual?.contribution),
    leftBefore: meanMoney(yearBefore?.contribution),
  };
}
