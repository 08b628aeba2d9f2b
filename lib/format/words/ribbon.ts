import { perCent, perCentFigure } from '../figures';
import { monthName } from '../periods';

export const RIBBON = {
  name: 'Month',
  region: 'The months of the venue',
  foodCost: 'food cost %',
  month: 'month',
  byRecipe: 'hollow: by recipe only',
  earlier: 'earlier',
  later: 'later',
  waiting: 'Reading the months',
} as const;

export interface MonthState {
  readonly month: string;
  readonly sold: number;
  readonly foodCostPct: number | null;
  readonly coverage: number | null;
  /** Rows of sales that wait for a name. */
  readonly waiting: number;
  readonly closed: boolean;
  readonly running: boolean;
}

/** The key of the line the bars stand on. */
export function ribbonLine(line: number, isTarget: boolean, locale: string): string {
  return `${isTarget ? 'target' : 'mean'} ${perCentFigure(line, locale)}`;
}

export function monthState(month: Pick<MonthState, 'closed' | 'running'>): string {
  if (month.running) return 'still running';
  return month.closed ? 'closed' : 'open';
}

/** What stands in the cell: the figure, a dash where nothing was sold, a question mark where it is not known: a cell has no room for words. */
export function monthFigure(month: MonthState, locale: string): string {
  if (month.foodCostPct !== null) return perCentFigure(month.foodCostPct, locale);
  return month.sold === 0 && month.waiting === 0 ? '–' : '?';
}

/** The full name of the link: month, year, per cent, state. */
export function monthLinkName(month: MonthState, locale: string): string {
  const cost =
    month.foodCostPct !== null
      ? `food cost ${perCent(month.foodCostPct, locale)} by recipe`
      : month.sold > 0
        ? 'food cost unknown'
        : month.waiting > 0
          ? 'all sales wait for a name'
          : 'nothing sold';
  return `${monthName(month.month, locale)}, ${cost}, ${monthState(month)}`;
}

/** Under the name of the chosen month, at the right of the ribbon. */
export function chosenState(month: MonthState, locale: string): string {
  const known = month.coverage;
  const coverage = known === null || known >= 1 ? '' : ` · margins known for ${perCent(known, locale, 0)}`;
  const isWaiting = month.sold === 0 && month.waiting > 0;
  const cost = isWaiting
    ? ' · all sales wait for a name'
    : month.foodCostPct === null && month.sold > 0
      ? ' · food cost unknown'
      : '';
  return `${monthState(month)}${cost || coverage}`;
}
