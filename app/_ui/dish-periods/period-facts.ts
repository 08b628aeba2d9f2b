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
  const number = (amount: string | null) => (amount === null ? null : Number(amount));
  const at = answer.periods.findLastIndex(({ onSale }) => onSale);
  const last = answer.periods[at];
  const text = (amount: string | null) => (amount === null ? null : moneyFigure(amount, purse));
  return {
    marks: answer.periods.map((row, index) => ({
      name: periodName(row.month, locale),
      ...shortPeriod(row.month, index === 0, locale),
      price: number(row.netPrice),
      cost: number(row.plateCost),
      sold: row.onSale ? row.sold : null,
      estimated: row.estimated,
      events: eventsIn(row),
    })),
    ...{ sign: currencySign(purse), locale, countName: answer.kind === 'extra' ? PERIODS.guests : PERIODS.portions },
    last: last
      ? {
          ...{ at, price: text(last.netPrice), cost: text(last.plateCost), leaves: text(last.margin) },
          sold: portionsFigure(last.sold, locale),
        }
      : null,
  };
}
