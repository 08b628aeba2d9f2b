import { nameKey } from '../../core/name-key';
import type { Goods, PricedItem, PriceModel } from './price-model';

/**
 * How a price changes: by a share of itself (0.1 is 10 % more), by an amount, or to a flat one.
 *
 * Amounts are venue currency: of goods for a kilogram, a litre or a piece; of a menu price as it stands on the menu. A share scales each
 * day's price, a flat price holds on every day.
 */
export type PriceStep =
  | { readonly how: 'share'; readonly by: number }
  | { readonly how: 'amount'; readonly by: number }
  | { readonly how: 'flat'; readonly to: number };

/** Whose prices change: of what is bought (one ingredient, a product group, what a supplier is bought from), or on the menu. */
export type EditTarget =
  | { readonly of: 'ingredient' | 'group' | 'supplier' | 'item' | 'section'; readonly name: string }
  | { readonly of: 'everything-bought' | 'whole-menu'; readonly name: null };

/** One change of what-if: nothing of it is kept. Edits apply in order, each on what those before it left. */
export interface PriceEdit {
  readonly target: EditTarget;
  readonly step: PriceStep;
}

const isNamed = (name: string, other: string | null): boolean => other !== null && nameKey(name) === nameKey(other);

/** The segments of some goods in which an edit moves their price. */
export function touchesGoods(edit: PriceEdit, goods: Goods, segment: number): boolean {
  return goodsTouchedBy(edit)(goods)?.(segment) ?? false;
}

/** As touchesGoods, for many goods and segments: each name is read once. Null where none of the segments is touched. */
export function goodsTouchedBy({ target }: PriceEdit): (goods: Goods) => ((segment: number) => boolean) | null {
  const wanted = target.name === null ? null : nameKey(target.name);
  const suppliers = new Map<string, boolean>();
  const isSupplier = (name: string): boolean => {
    const known = suppliers.get(name) ?? nameKey(name) === wanted;
    suppliers.set(name, known);
    return known;
  };
  return (goods) => {
    const isPriced = (segment: number): boolean => (goods.suppliers[segment] ?? null) !== null;
    switch (target.of) {
      case 'everything-bought':
        return isPriced;
      case 'ingredient':
        return isNamed(target.name, goods.name) ? isPriced : null;
      case 'group':
        return isNamed(target.name, goods.productGroup) ? isPriced : null;
      case 'supplier':
        return (segment) => {
          const supplier = goods.suppliers[segment] ?? null;
          return supplier !== null && isSupplier(supplier);
        };
      default:
        return null;
    }
  };
}

/** Whether an edit moves the menu price of an item. */
export function touchesItem({ target }: PriceEdit, item: PricedItem): boolean {
  switch (target.of) {
    case 'whole-menu':
      return true;
    case 'item':
      return isNamed(target.name, item.name);
    case 'section':
      return isNamed(target.name, item.section);
    default:
      return false;
  }
}

/** Grams or millilitres of the amount that a price is spoken of: 1,000 for what is weighed or measured, 1 for pieces. */
export function spokenAmount(goods: Pick<Goods, 'unit'>): number {
  return goods.unit === 'each' ? 1 : 1000;
}

/** A price after a step; `spoken` is how many units of the price the amounts of the step are for. */
export function stepped(price: number, step: PriceStep, spoken = 1): number {
  if (step.how === 'share') return price * (1 + step.by);
  return step.how === 'amount' ? price + step.by / spoken : step.to / spoken;
}

/** An edit that cannot be made: it names nothing of the model that has a price, or would leave a price below zero. */
export interface EditTrouble {
  readonly edit: PriceEdit;
  readonly why: 'touches-nothing' | 'below-zero';
}

/** What is wrong with some edits, in their order; empty where all of them can be made. */
export function editTroubles(model: PriceModel, edits: readonly PriceEdit[]): readonly EditTrouble[] {
  return edits.flatMap((edit, index): EditTrouble[] => {
    const before = edits.slice(0, index);
    const prices = [...goodsPrices(model, edit, before), ...menuPrices(model, edit, before)];
    if (prices.length === 0) return [{ edit, why: 'touches-nothing' }];
    return prices.some((price) => price < 0) ? [{ edit, why: 'below-zero' }] : [];
  });
}

function goodsPrices(model: PriceModel, edit: PriceEdit, before: readonly PriceEdit[]): readonly number[] {
  const touchedBy = goodsTouchedBy(edit);
  return model.goods.flatMap((goods) => {
    const touches = touchedBy(goods);
    if (touches === null) return [];
    return goods.suppliers.flatMap((_, segment) => {
      if (!touches(segment)) return [];
      const cell = goods.node * model.segments + segment;
      const now = (model.prices.food[cell] ?? 0) + (model.prices.packaging[cell] ?? 0);
      const so = before.filter((each) => touchesGoods(each, goods, segment));
      return [[...so, edit].reduce((price, { step }) => stepped(price, step, spokenAmount(goods)), now)];
    });
  });
}

function menuPrices({ items }: PriceModel, edit: PriceEdit, before: readonly PriceEdit[]): readonly number[] {
  return items.flatMap((item) => {
    if (!touchesItem(edit, item)) return [];
    const so = before.filter((each) => touchesItem(each, item));
    return item.listings.flatMap(({ price }) =>
      price === null ? [] : [[...so, edit].reduce((now, { step }) => stepped(now, step), price)],
    );
  });
}
