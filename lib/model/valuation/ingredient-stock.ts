import type { Calendar } from '../../core/calendar';
import { addDays, type Day, type DayRange } from '../../core/days';
import { calendarPeriodOf } from '../../core/periods';
import type { Layer, Receipt, StockFlow, Valuation, Valued } from './stock-flow';

/** What stood of an ingredient at the end of a day, over all places, in base units. */
export interface CountedDay {
  readonly day: Day;
  readonly quantity: number;
}

/** All that is known of the stock of one ingredient. */
export interface IngredientStock {
  /** By day. */
  readonly counts: readonly CountedDay[];
  /** By day. */
  readonly receipts: readonly Receipt[];
  readonly transfersOut: readonly CountedDay[];
  readonly priceInForce: (day: Day) => number | null;
  readonly lastInvoice: (day: Day) => number | null;
}

/** What an ingredient did in a period, from the last count before it to the last one in it; to its end where there is none in it. */
export interface PeriodStock {
  readonly countedFrom: CountedDay | null;
  readonly countedTo: CountedDay | null;
  readonly flow: StockFlow;
  readonly valued: Valued;
}

/**
 * A period's stock by a valuation.
 *
 * The opening is the last count before the period's first day, as it was valued at the close of the calendar period that it belongs to,
 * period by period from the first count on: what closes one opens the next. The first count ever starts at the price in force, else at
 * the last invoice. What came between that count and the period is in the period, so that nothing falls between two.
 */
export function periodStock(
  stock: IngredientStock,
  range: DayRange,
  valuation: Valuation,
  calendar: Calendar,
): PeriodStock {
  const from = stock.counts.findLast(({ day }) => day < range.from) ?? null;
  const to = stock.counts.findLast(({ day }) => day >= range.from && day < range.to) ?? null;
  const opening = from === null ? null : valuedAt(stock, from, valuation, calendar);
  const days = {
    from: from === null ? range.from : addDays(from.day, 1),
    to: to === null ? range.to : addDays(to.day, 1),
  };
  const flow = flowOf(stock, days, opening, to);
  return { countedFrom: from, countedTo: to, flow, valued: valuation(flow) };
}

function flowOf(
  stock: IngredientStock,
  days: DayRange,
  opening: readonly Layer[] | null,
  closing: CountedDay | null,
): StockFlow {
  const inside = ({ day }: { readonly day: Day }): boolean => day >= days.from && day < days.to;
  const last = addDays(days.to, -1);
  return {
    opening,
    receipts: stock.receipts.filter(inside),
    transferredOut: stock.transfersOut.filter(inside).reduce((sum, { quantity }) => sum + quantity, 0),
    closing: closing?.quantity ?? null,
    priceInForce: stock.priceInForce(last),
    lastInvoice: stock.lastInvoice(last),
  };
}

/** What a count is worth; null where nothing says. */
function valuedAt(
  stock: IngredientStock,
  count: CountedDay,
  valuation: Valuation,
  calendar: Calendar,
): readonly Layer[] | null {
  // the counts that closed a calendar period, down to this one
  const closings = [count];
  for (let earliest = count; ; ) {
    const { range } = calendarPeriodOf(earliest.day, calendar);
    const before = stock.counts.findLast(({ day }) => day < range.from);
    if (before === undefined) break;
    closings.unshift(before);
    earliest = before;
  }
  return closings.reduce<readonly Layer[] | null>((opening, closing, at) => {
    const before = closings[at - 1];
    if (before === undefined || opening === null) return firstCount(stock, closing);
    const days = { from: addDays(before.day, 1), to: addDays(closing.day, 1) };
    return valuation(flowOf(stock, days, opening, closing)).closing;
  }, null);
}

function firstCount(stock: IngredientStock, { day, quantity }: CountedDay): readonly Layer[] | null {
  if (quantity === 0) return [];
  const price = stock.priceInForce(day) ?? stock.lastInvoice(day);
  return price === null ? null : [{ quantity, value: quantity * price }];
}
