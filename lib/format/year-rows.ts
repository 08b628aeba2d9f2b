import { figure, perCentFigure, signedFigure } from './figures';
import { coinsFigure, moneyFigure, type Purse, printedCoins } from './money';
import { periodName } from './periods';
import { portionsFigure } from './portions';
import { YEAR } from './words/year';
import { lastLabel, type MenuChangeWords, menuChangeWords, type YearColumn } from './words/year-table';

/** What a row of the year is made from; a period of a YearAnswer has it all. */
export interface YearRowFigures {
  readonly period: string;
  readonly tradingDays: number;
  readonly sold: number;
  readonly contribution: string | null;
  readonly foodCostPct: number | null;
  readonly margin: string | null;
  readonly coverage: number | null;
  readonly provisional: boolean;
  readonly running: boolean;
  readonly yearBefore: { readonly contribution: string | null } | null;
  readonly menuChanges: readonly MenuChangeWords[];
}

/** A row as it is printed; `unknown` names the cells that stand for something not known. */
export interface PrintedYearRow {
  readonly period: string;
  readonly cells: Readonly<Record<YearColumn, string>>;
  /** Under the name of the period: only what is out of the ordinary. */
  readonly note: string | null;
}

const change = (now: string | null, before: string | null | undefined): number | null =>
  now === null || before === null || before === undefined || Number(before) <= 0
    ? null
    : Number(now) / Number(before) - 1;

/** The periods as a table prints them, latest first, on page and terminal alike. */
export function yearRows(periods: readonly YearRowFigures[], purse: Purse): readonly PrintedYearRow[] {
  const { locale } = purse;
  return periods.toReversed().map((row) => {
    const isEmpty = row.sold === 0;
    const unknown = isEmpty ? YEAR.none : YEAR.unknown;
    const money = (amount: string | null) => (amount === null ? unknown : moneyFigure(amount, purse));
    const share = (fraction: number | null) => (fraction === null ? unknown : perCentFigure(fraction, locale));
    const grown = change(row.contribution, row.yearBefore?.contribution);
    const notes = [row.running ? YEAR.running : null, row.provisional ? YEAR.provisional : null];
    return {
      period: row.period,
      note: notes.filter((note) => note !== null).join(', ') || null,
      cells: {
        period: periodName(row.period, locale),
        days: isEmpty ? YEAR.none : figure(row.tradingDays, locale, 0),
        sold: isEmpty ? YEAR.none : portionsFigure(row.sold, locale),
        contribution: money(row.contribution),
        foodCost: share(row.foodCostPct),
        margin: money(row.margin),
        known: share(row.coverage),
        before: row.yearBefore === null ? YEAR.none : money(row.yearBefore.contribution),
        change: grown === null ? YEAR.none : signedFigure(grown * 100, locale, 1),
        menu: menuChangeWords(row.menuChanges, purse),
      },
    };
  });
}

/** The last row: the last year's worth of periods. What was left is the sum of the rows as printed. */
export function yearSum(
  answer: {
    readonly month: string;
    readonly periods: readonly YearRowFigures[];
    readonly last: {
      readonly periods: number;
      readonly sold: number;
      readonly contribution: string | null;
      readonly foodCostPct: number | null;
      readonly margin: string | null;
      readonly coverage: number | null;
    };
    readonly lastYearBefore: { readonly contribution: string | null } | null;
  },
  purse: Purse,
): Readonly<Partial<Record<YearColumn, string>>> & { readonly period: string } {
  const { last, lastYearBefore } = answer;
  const { locale } = purse;
  const rows = answer.periods.slice(-last.periods);
  const coins = rows.reduce((sum, row) => sum + printedCoins(row.contribution ?? '0', purse.currency), 0);
  const grown = change(last.contribution, lastYearBefore?.contribution);
  return {
    period: lastLabel(last.periods, answer.month, locale),
    days: figure(
      rows.reduce((sum, row) => sum + row.tradingDays, 0),
      locale,
      0,
    ),
    sold: portionsFigure(last.sold, locale),
    contribution: last.contribution === null ? YEAR.unknown : coinsFigure(coins, purse),
    foodCost: last.foodCostPct === null ? YEAR.unknown : perCentFigure(last.foodCostPct, locale),
    margin: last.margin === null ? YEAR.unknown : moneyFigure(last.margin, purse),
    known: last.coverage === null ? YEAR.unknown : perCentFigure(last.coverage, locale),
    before: lastYearBefore?.contribution ? moneyFigure(lastYearBefore.contribution, purse) : YEAR.none,
    change: grown === null ? YEAR.none : signedFigure(grown * 100, locale, 1),
  };
}
