import type { Day } from '../../core/days';
import { isByProduct } from '../by-products';
import { commissionPerPortion } from '../commission';
import type { CostedPeriod } from '../costed-period';
import type { ItemId } from '../facts';
import { onDay } from '../in-force';
import { itemFigures, rowRevenue } from '../item-figures';
import { type ChannelMenu, isOnMenu, menuDays, netPrice } from '../menu-price';
import { daysForClass } from '../mix/mix-issues';
import { sectionNodes } from '../mix/section';
import { daysOnSale, expectedByDay, sectionDays } from '../mix/section-days';
import { itemSection } from '../offered';
import { portionOf } from '../plate-cost';
import { type PortionWeight, portionWeights } from '../portion-weights';
import { needOfServed } from '../served';
import type { Thing } from '../things';
import { usualChannel } from '../usual-channel';
import type { Goods, Listing, MenuPriceNow, PricedItem, PriceModel, Take } from './price-model';

/** The price model of a section of a period (null: the whole menu). `paid` is what each ingredient cost over a longer time. */
export function priceModelOf(
  period: CostedPeriod,
  section: string | null,
  paid: ReadonlyMap<ItemId, Goods['paid']> = pricesPaid(period),
): PriceModel {
  const { currency, locale, qFactor, popularityFactor, targetFoodCost, variableCost, priceStep } = period.venue;
  return {
    venue: { currency, locale, qFactor, popularityFactor, targetFoodCost, variableCost, priceStep },
    segments: period.segments.count,
    lines: period.lines,
    prices: period.prices,
    goods: goodsOf(period, paid),
    items: itemsOf(period, section),
  };
}

/** The lowest and the highest price in force of each ingredient over the days of a period. */
export function pricesPaid({ things }: Pick<CostedPeriod, 'things'>): ReadonlyMap<ItemId, Goods['paid']> {
  return new Map(
    things.flatMap(({ id, part, channel, prices }) => {
      const known = prices.flatMap(({ fact }) => fact.price ?? []);
      if (part !== null || channel !== null || known.length === 0) return [];
      return [[id, { lowest: Math.min(...known), highest: Math.max(...known) }] as const];
    }),
  );
}

function goodsOf(period: CostedPeriod, paid: ReadonlyMap<ItemId, Goods['paid']>): readonly Goods[] {
  const { count, cuts } = period.segments;
  const need = needOfServed(period);
  return period.things.flatMap((thing, node): Goods[] => {
    const [version] = thing.versions.slice(-1);
    if (thing.kind !== 'ingredient' || thing.part !== null || thing.channel !== null || !version) return [];
    const { measure, productGroup, department } = version.fact;
    const segments = Array.from({ length: count }, (_, segment) => segment);
    const suppliers = segments.map((segment) => {
      if (isByProduct(period.makings, node, segment)) return null;
      const price = onDay(thing.prices, cuts[segment] as Day);
      return price?.issue === null ? price.offer.supplier : null;
    });
    return [
      {
        node,
        name: thing.name,
        unit: measure,
        productGroup,
        isPackaging: department === 'packaging',
        suppliers,
        need: segments.map((segment) => need[node * count + segment] as number),
        paid: paid.get(thing.id) ?? null,
      },
    ];
  });
}

function itemsOf(period: CostedPeriod, section: string | null): readonly PricedItem[] {
  const nodes = sectionNodes(period, section);
  const trading = sectionDays(period, nodes);
  const byDay = expectedByDay(trading);
  const needed = daysForClass(trading.days.length);
  return nodes.flatMap((node, item): PricedItem[] => {
    const thing = period.things[node];
    if (!thing) return [];
    const onSale = daysOnSale(trading, item);
    const days = onSale.length > 0 ? onSale : menuDays(thing.menu, period.range);
    const channels = thing.menu.map(({ channel }) => channel);
    const figures = itemFigures(period, node, thing.sales, days, channels);
    const kept = commissionPerPortion(period, node, thing.sales, days, channels);
    const { sold, comps, revenue, netPrice: achieved, plateCost, estimated } = figures;
    return [
      {
        node,
        name: thing.name,
        kind: thing.kind,
        section: itemSection(thing),
        ...{ sold, comps, revenue, netPrice: achieved, estimated },
        expected: trading.days.reduce((sum, _, day) => sum + (byDay[day * nodes.length + item] ?? 0), 0),
        hasDays: onSale.length >= needed,
        isCosted: plateCost !== null,
        takes: takesOf(period, node, portionWeights(period, node, thing.sales, days, channels)),
        listings: listingsOf(period, node, thing, days),
        menuPrice: menuPriceNow(period, thing),
        commission: kept === null || !achieved ? 0 : kept / achieved,
      },
    ];
  });
}

function takesOf(period: CostedPeriod, node: number, weights: readonly PortionWeight[]): readonly Take[] {
  const whole = weights.reduce((sum, { weight }) => sum + weight, 0);
  const takes = new Map<string, Take>();
  for (const { segment, channel, weight } of weights) {
    const packing = channel === null ? undefined : period.packings.get(node)?.get(channel);
    const amount = (weight / whole) * (portionOf(period, node, segment) ?? 0);
    for (const each of packing === undefined ? [node] : [node, packing]) {
      const key = `${each} ${segment}`;
      takes.set(key, { node: each, segment, amount: amount + (takes.get(key)?.amount ?? 0) });
    }
  }
  return [...takes.values()];
}

function listingsOf(period: CostedPeriod, node: number, thing: Thing, days: readonly Day[]): readonly Listing[] {
  const found = new Map<string, Listing>();
  const add = (channel: string, day: Day, weight: number, revenue: (net: number | null) => number): void => {
    const listed = listedOn(thing.menu, channel, day);
    const key = JSON.stringify([channel, listed]);
    const before = found.get(key) ?? { channel, ...listed, weight: 0, revenue: 0 };
    const more = revenue(listed.price === null ? null : listed.price / listed.grossed);
    found.set(key, { ...before, weight: before.weight + weight, revenue: before.revenue + more });
  };
  const isSold = thing.sales.some(({ sold }) => sold > 0);
  if (isSold) {
    for (const row of thing.sales) add(row.channel, row.day, row.sold, () => rowRevenue(period, node, row) ?? row.net);
  } else {
    for (const day of days) {
      for (const { channel } of thing.menu) {
        if (listedOn(thing.menu, channel, day).price !== null) add(channel, day, 1, (net) => net ?? 0);
      }
    }
  }
  return [...found.values()];
}

function listedOn(
  menu: readonly ChannelMenu[],
  channel: string,
  day: Day,
): { readonly price: number | null; readonly grossed: number } {
  const inForce = onDay(menu.find((each) => each.channel === channel)?.prices ?? [], day);
  if (inForce === null) return { price: null, grossed: 1 };
  return {
    price: netPrice(inForce) === null ? null : inForce.price,
    grossed: inForce.taxIncluded ? 1 + inForce.tax : 1,
  };
}

function menuPriceNow({ range }: CostedPeriod, thing: Thing): MenuPriceNow | null {
  for (let day = (range.to - 1) as Day; day >= range.from; day = (day - 1) as Day) {
    if (!isOnMenu(thing.menu, day)) continue;
    const channel = usualChannel({ ...thing, sales: [] }, day);
    if (channel === null) continue;
    const { price, grossed } = listedOn(thing.menu, channel, day);
    return price === null ? null : { channel, price, grossed };
  }
  return null;
}
