import type { Day, DayRange } from '../core/days';
import { grouped } from '../core/grouped';
import type { MenuPrice } from './facts';
import { netPrice } from './menu-price';

/** What happened to an item on the menu of a channel on a day. */
export interface MenuEvent {
  readonly day: Day;
  readonly channel: string;
  readonly kind: 'came' | 'went' | 'price';
  /** As listed (with sales tax where the menu has it inside); null where it went. */
  readonly price: number | null;
  /** The price before; null where it was not on the menu. */
  readonly before: number | null;
}

const start = ({ validFrom }: MenuPrice): number => validFrom ?? Number.NEGATIVE_INFINITY;
const byStart = (a: MenuPrice, b: MenuPrice): number => start(a) - start(b);

/** The dated menu prices of one item as what they changed, by day; what has stood since the beginning is no event. */
export function menuEvents(prices: readonly MenuPrice[]): readonly MenuEvent[] {
  const events = [...grouped(prices, ({ channel }) => channel)].flatMap(([channel, stated]) =>
    [...stated].sort(byStart).flatMap((each, index, dated): readonly MenuEvent[] => {
      const before = dated[index - 1]?.price ?? null;
      const { validFrom: day, price } = each;
      if (day === null || price === before) return [];
      return [{ day, channel, kind: price === null ? 'went' : before === null ? 'came' : 'price', price, before }];
    }),
  );
  return events.sort((a, b) => a.day - b.day);
}

/**
 * The first day of the run of days, up to the one asked about, on which an item has been on some menu without a break. A `from` of null:
 * from the beginning. Null where it is on none that day.
 */
export function onMenuSince(prices: readonly MenuPrice[], day: Day): { readonly from: Day | null } | null {
  const spans = [...grouped(prices, ({ channel }) => channel).values()].flatMap((stated) =>
    [...stated].sort(byStart).flatMap((each, index, dated) => {
      const next = dated[index + 1];
      return netPrice(each) === null ? [] : [{ from: start(each), to: next ? start(next) : Number.POSITIVE_INFINITY }];
    }),
  );
  let from = Number.NaN;
  for (let reached = day as number; ; ) {
    const holding = spans.filter((span) => span.from <= reached && reached < span.to);
    if (holding.length === 0) break;
    from = Math.min(...holding.map((span) => span.from));
    if (from === Number.NEGATIVE_INFINITY) return { from: null };
    reached = from - 1;
  }
  return Number.isNaN(from) ? null : { from: from as Day };
}

/** The price as listed on the last day of some days on which an item had one: in dine_in, where it was sold there; null where it had none. */
export function lastMenuPrice(prices: readonly MenuPrice[], { from, to }: DayRange): number | null {
  const inRange = [...grouped(prices, ({ channel }) => channel)].flatMap(([channel, stated]) => {
    const dated = [...stated].sort(byStart);
    const last = dated.findLast((each, index) => {
      const next = dated[index + 1];
      return each.price !== null && start(each) < to && (next === undefined || start(next) > from);
    });
    return last ? [{ channel, price: last.price }] : [];
  });
  return (inRange.find(({ channel }) => channel === 'dine_in') ?? inRange[0])?.price ?? null;
}
