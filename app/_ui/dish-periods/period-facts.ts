import type { DishAnswer, DishPeriodAnswer } from '@/lib/answers/dish-shape';
import { currencySign, moneyFigure, type Purse } from '@/lib/format/money';
import { periodName, shortPeriod } from '@/lib/format/periods';
import { portionsFigure } from '@/lib/format/portions';
import { PERIODS } from '@/lib/format/words/dish-periods';

/** One period in the picture. */
export interface PeriodMark {
  readonly name: string;
  /** Under the axis: Oct, W41. */
  readonly short: string;
  /** Under it, where a new year begins or the picture does. */
  readonly year: string | null;
  readonly price: number | null;
  readonly cost: number | null;
  readonly sold: number | null;
  readonly estimated: boolean;
  /** What happened on the menu. */
  readonly events: readonly string[];
}

/** All that the picture of a dish through the periods is drawn from. */
export interface PeriodsFacts {
  readonly marks: readonly PeriodMark[];
  readonly sign: string;
  readonly locale: string;
  readonly countName: string;
  /** Nobody pays for it: there is no price in the picture. */
  readonly isExtra: boolean;
  /** Of the last period in which it was on sale: what stands at the right end. */
  readonly last: {
    readonly at: number;
    readonly price: string | null;
    readonly cost: string | null;
    readonly leaves: string | null;
    readonly sold: string;
  } | null;
}

export function periodFacts(
  answer: Pick<DishAnswer, 'periods' | 'kind'>,
  purse: Purse,
  eventsIn: (row: DishPeriodAnswer) => readonly string[],
): PeriodsFacts {
  const { locale } = purse;
  const isExtra = answer.kind === 'extra';
  const number = (amount: string | null) => (amount === null ? null : Number(amount));
  const periods = shownPeriods(answer.periods);
  const at = periods.findLastIndex(({ onSale }) => onSale);
  const last = periods[at];
  const text = (amount: string | null) => (amount === null ? null : moneyFigure(amount, purse));
  return {
    marks: periods.map((row, index) => ({
      name: periodName(row.month, locale),
      ...shortPeriod(row.month, index === 0, locale),
      price: number(row.netPrice),
      cost: number(row.plateCost),
      sold: row.onSale ? row.sold : null,
      estimated: row.estimated,
      events: eventsIn(row),
    })),
    ...{ sign: currencySign(purse), locale, countName: isExtra ? PERIODS.guests : PERIODS.portions, isExtra },
    last: last
      ? {
          ...{ at, price: text(last.netPrice), cost: text(last.plateCost), leaves: text(last.margin) },
          sold: portionsFigure(last.sold, locale),
        }
      : null,
  };
}

/** As many periods are drawn at the least, where there are so many. */
const LEAST_DRAWN = 6;

/** From the period before the dish first came to the menu on: what lies before it says nothing. */
function shownPeriods(periods: readonly DishPeriodAnswer[]): readonly DishPeriodAnswer[] {
  const first = periods.findIndex(({ onSale }) => onSale);
  return periods.slice(Math.max(0, Math.min(first - 1, periods.length - LEAST_DRAWN)));
}
