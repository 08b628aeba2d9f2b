import { nameKey } from '@/lib/core/name-key';
import { currencySign, type Purse } from '@/lib/format/money';
import { priceUnit } from '@/lib/format/words/price-changes';
import { type EditTarget, type PriceEdit, type PriceStep, spokenAmount } from '@/lib/model/price-model/edits';
import type { Goods, PriceModel } from '@/lib/model/price-model/price-model';
import { priceNow } from '@/lib/model/price-model/price-now';

/** What can be said of a price that is moved, or of several together. Prices are for what is spoken of: a kilogram, a litre, a piece. */
export interface TargetFacts {
  readonly target: EditTarget;
  /** As the book spells it. */
  readonly name: string;
  /** The price now; null where several are moved together, or where there is none. */
  readonly now: number | null;
  /** Null of what is moved together, and on the menu. */
  readonly unit: Goods['unit'] | null;
  readonly paid: readonly [number, number] | null;
}

export function targetFacts(model: PriceModel, target: EditTarget): TargetFacts {
  const none = { target, now: null, unit: null, paid: null };
  if (target.of === 'ingredient') {
    const goods = model.goods.find(({ name }) => nameKey(name) === nameKey(target.name));
    if (!goods) return { ...none, name: target.name };
    const spoken = spokenAmount(goods);
    return {
      target,
      name: goods.name,
      now: priceNow(model, goods),
      unit: goods.unit,
      paid: goods.paid && [goods.paid.lowest * spoken, goods.paid.highest * spoken],
    };
  }
  if (target.of === 'item') {
    const item = model.items.find(({ name }) => nameKey(name) === nameKey(target.name));
    return { ...none, name: item?.name ?? target.name, now: item?.menuPrice?.price ?? null };
  }
  return { ...none, name: target.name === null ? '' : spelled(model, target.of, target.name) };
}

function spelled({ goods, items }: PriceModel, of: 'group' | 'supplier' | 'section', name: string): string {
  const names: readonly (string | null)[] =
    of === 'group'
      ? goods.map(({ productGroup }) => productGroup)
      : of === 'supplier'
        ? goods.flatMap(({ suppliers }) => suppliers)
        : items.map(({ section }) => section);
  return names.find((each) => each !== null && nameKey(each) === nameKey(name)) ?? name;
}

/** The ingredient that the period spent most on: what is looked at first. Null where nothing is bought. */
export function dearestGoods(model: PriceModel): EditTarget | null {
  const spent = (goods: Goods): number =>
    ((priceNow(model, goods) ?? 0) / spokenAmount(goods)) * goods.need.reduce((sum, each) => sum + each, 0);
  const dearest = [...model.goods].sort((a, b) => spent(b) - spent(a))[0];
  return dearest ? { of: 'ingredient', name: dearest.name } : null;
}

/** In what the price is counted: per cent where several move together, money a kilogram, or money on the menu. */
export function targetUnit({ now, unit }: TargetFacts, purse: Purse): string {
  return now === null ? '%' : priceUnit(unit, currencySign(purse));
}

/** What the slider stands at: the price after a step, or per cent where several move together. */
export function standsAt({ now }: TargetFacts, step: PriceStep | null): number {
  if (now === null) return step?.how === 'share' ? step.by * 100 : 0;
  if (step === null) return now;
  return step.how === 'share' ? now * (1 + step.by) : step.how === 'amount' ? now + step.by : step.to;
}

/** The step that brings the price to where the slider stands. */
export function stepTo({ now }: TargetFacts, value: number): PriceStep {
  return now === null ? { how: 'share', by: value / 100 } : { how: 'flat', to: value };
}

export function editTo(facts: TargetFacts, value: number): PriceEdit {
  return { target: facts.target, step: stepTo(facts, value) };
}
