import { byText } from '../core/grouped';
import { nameKey } from '../core/name-key';
import { downward } from '../model/passes';
import { spokenAmount } from '../model/price-model/edits';
import type { Goods, PriceModel } from '../model/price-model/price-model';
import { tableAt } from '../model/price-model/price-table';

/** Two prices of a kilogram, litre or piece. */
export interface PriceRange {
  readonly lowest: number;
  readonly highest: number;
}

/** One ingredient at its cheapest and at its dearest all period, everything else as it was. */
export interface TornadoBar {
  readonly goods: Goods;
  readonly range: PriceRange;
  /** Whether the range was named, not what was paid. */
  readonly isNamed: boolean;
  /** Change of what the section left in the period. */
  readonly atLowest: number;
  readonly atHighest: number;
}

export interface Tornado {
  /** The widest first. */
  readonly bars: readonly TornadoBar[];
  /** Goods in use whose price never moved in the time looked at, by name: that is no sign that it will not. */
  readonly unmoved: readonly string[];
}

/**
 * What each ingredient's own spread is worth: the period's contribution with it at the lowest and at the highest price that was in force over
 * eighteen months, or in a range that is named for it (by nameKey).
 *
 * change at x = - sum over segments of need_k (1 + q) (x - p_k), need of the paid portions of the costed items; packaging takes no q.
 */
export function tornado(model: PriceModel, named: ReadonlyMap<string, PriceRange> = new Map()): Tornado {
  const need = needOfPaid(model);
  const inUse = model.goods.filter(({ node, suppliers }) =>
    suppliers.some((supplier, segment) => supplier !== null && need[node * model.segments + segment] !== 0),
  );
  const bars = inUse.flatMap((goods): TornadoBar[] => {
    const range = named.get(nameKey(goods.name)) ?? paidRange(goods);
    if (range === null || range.lowest === range.highest) return [];
    const at = (price: number): number => changeAt(model, goods, need, price / spokenAmount(goods));
    const isNamed = named.has(nameKey(goods.name));
    return [{ goods, range, isNamed, atLowest: at(range.lowest), atHighest: at(range.highest) }];
  });
  const moved = new Set(bars.map(({ goods }) => goods));
  const width = ({ atLowest, atHighest }: TornadoBar): number => Math.abs(atLowest - atHighest);
  return {
    bars: bars.sort((a, b) => width(b) - width(a) || byText(nameKey(a.goods.name), nameKey(b.goods.name))),
    unmoved: inUse.filter((goods) => !moved.has(goods)).map(({ name }) => name),
  };
}

/** Base units of everything for the paid portions of the items whose margin is known. */
function needOfPaid({ items, lines, prices, segments }: PriceModel): Float64Array {
  const wanted = new Float64Array(prices.food.length);
  for (const { isCosted, netPrice, sold, takes } of items) {
    if (!isCosted || netPrice === null) continue;
    for (const { node, segment, amount } of takes) {
      const cell = node * segments + segment;
      wanted[cell] = (wanted[cell] as number) + sold * amount;
    }
  }
  return downward(lines, wanted, segments);
}

function paidRange(goods: Goods): PriceRange | null {
  const spoken = spokenAmount(goods);
  return goods.paid && { lowest: goods.paid.lowest * spoken, highest: goods.paid.highest * spoken };
}

function changeAt(model: PriceModel, goods: Goods, need: Float64Array, price: number): number {
  const { prices, segments, venue } = model;
  let change = 0;
  goods.suppliers.forEach((supplier, segment) => {
    if (supplier === null) return;
    const cell = goods.node * segments + segment;
    const table = tableAt(model, goods, segment);
    const q = table === 'food' ? 1 + venue.qFactor : 1;
    change -= (need[cell] as number) * q * (price - (prices[table][cell] as number));
  });
  return change + 0;
}
