import { byText } from '../core/grouped';
import { nameKey } from '../core/name-key';
import type { Goods, PriceModel } from '../model/price-model/price-model';
import { tableAt } from '../model/price-model/price-table';
import { eachReached } from '../model/price-model/reached-goods';

/** What is added up: each ingredient by itself, by product group, or by whose offer was in force. */
export const AT_STAKE_BY = ['ingredient', 'group', 'supplier'] as const;
export type AtStakeBy = (typeof AT_STAKE_BY)[number];

export interface AtStakeRow {
  /** Null: of no product group. */
  readonly name: string | null;
  /** What everything served in the period took of it, at the prices of the days, q included on food. */
  readonly spend: number;
  /** Of the spend on food and drink, its share of the whole; null where there is none, or where it is all packaging. */
  readonly share: number | null;
  /** What 1 % on its price is worth over the twelve months up to the end of the period; null where they are not known. */
  readonly onePercentPerYear: number | null;
  /** Items of the menu that take any of it, by name. */
  readonly dishes: readonly string[];
}

export interface AtStake {
  readonly by: AtStakeBy;
  /** Food and drink of everything served. */
  readonly foodSpend: number;
  /** Items of the menu in all. */
  readonly dishes: number;
  /** The largest spend first. */
  readonly rows: readonly AtStakeRow[];
}

/**
 * At stake with ingredient k: need_k * p_k * (1 + q), need of everything served in the venue: paid portions, comps, extras of each cover.
 * Packaging is counted out and takes no q. `year` is the model of the twelve months up to the end of the period: never a month times twelve.
 */
export function atStake(model: PriceModel, by: AtStakeBy, year: PriceModel | null): AtStake {
  const spent = spendBy(model, by);
  const yearly = year === null ? null : spendBy(year, by);
  const using = dishesBy(model, by);
  const foodSpend = [...spent.values()].reduce((sum, { food }) => sum + food, 0);
  const rows = [...spent].flatMap(([key, { name, all, food, isFood }]): AtStakeRow[] => {
    const dishes = [...(using.get(key) ?? [])].map((item) => model.items[item]?.name ?? '');
    if (all === 0 && dishes.length === 0) return [];
    const inYear = yearly?.get(key)?.all ?? 0;
    return [
      {
        name,
        spend: all,
        share: isFood && foodSpend > 0 ? food / foodSpend : null,
        onePercentPerYear: yearly === null ? null : inYear / 100,
        dishes,
      },
    ];
  });
  return {
    by,
    foodSpend,
    dishes: model.items.length,
    rows: rows.sort((a, b) => b.spend - a.spend || byText(nameKey(a.name ?? ''), nameKey(b.name ?? ''))),
  };
}

interface Spend {
  readonly name: string | null;
  readonly all: number;
  readonly food: number;
  readonly isFood: boolean;
}

/** By what goods are added up in a segment; undefined where they have no price, so that nothing is at stake. */
function nameOf(goods: Goods, segment: number, by: AtStakeBy): string | null | undefined {
  const supplier = goods.suppliers[segment] ?? null;
  if (supplier === null) return undefined;
  return by === 'supplier' ? supplier : by === 'group' ? goods.productGroup : goods.name;
}

const keyOf = (name: string | null): string => (name === null ? '' : nameKey(name));

function spendBy(model: PriceModel, by: AtStakeBy): ReadonlyMap<string, Spend> {
  const { prices, segments, venue } = model;
  const spent = new Map<string, Spend>();
  for (const goods of model.goods) {
    for (let segment = 0; segment < segments; segment++) {
      const name = nameOf(goods, segment, by);
      if (name === undefined) continue;
      const table = tableAt(model, goods, segment);
      const isFood = table === 'food';
      const price = prices[table][goods.node * segments + segment] as number;
      const money = (goods.need[segment] as number) * price * (isFood ? 1 + venue.qFactor : 1);
      const before = spent.get(keyOf(name)) ?? { name, all: 0, food: 0, isFood: false };
      spent.set(keyOf(name), {
        ...before,
        all: before.all + money,
        food: before.food + (isFood ? money : 0),
        isFood: before.isFood || isFood,
      });
    }
  }
  return spent;
}

function dishesBy(model: PriceModel, by: AtStakeBy): ReadonlyMap<string, ReadonlySet<number>> {
  const using = new Map<string, Set<number>>();
  eachReached(model, (item, at, segment) => {
    const goods = model.goods[at];
    const name = goods && nameOf(goods, segment, by);
    if (name === undefined) return;
    using.set(keyOf(name), (using.get(keyOf(name)) ?? new Set()).add(item));
  });
  return using;
}

/** The product group that most of the food cost stands on. */
export interface Concentration {
  readonly group: string;
  readonly share: number;
  /** Items of the menu that take any of it, of how many. */
  readonly dishes: number;
  readonly of: number;
  /** It carries the menu: at least a quarter of the food cost (our own line; none is published). */
  readonly carries: boolean;
}

const CARRIES = 0.25;

/** The largest product group of what is at stake by group; null where no food has one. */
export function concentration({ rows, dishes: of }: AtStake): Concentration | null {
  let most: Concentration | null = null;
  for (const { name, share, dishes } of rows) {
    if (name === null || share === null || (most !== null && most.share >= share)) continue;
    most = { group: name, share, dishes: dishes.length, of, carries: share >= CARRIES };
  }
  return most;
}
