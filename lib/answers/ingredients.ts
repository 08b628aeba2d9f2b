import { dayText } from '../core/days';
import { recipesUsing } from '../db/where-used';
import { moneyText } from '../format/money-text';
import { ingredients } from '../reports/ingredients';
import type { Asker } from '../session/asker';
import { type KitchenAsked, kitchenOn } from './kitchen-on';
import type { IngredientsAnswer } from './kitchen-shape';
import { type Answered, answered } from './problem';
import { writtenIssues } from './written-issues';

/** Every ingredient on a day: what it costs, what is usable of it, what it contains, what uses it, what is missing. */
export async function ingredientsAnswer(asker: Asker, asked: KitchenAsked): Promise<Answered<IngredientsAnswer>> {
  const kitchen = await kitchenOn(asker, asked, recipesUsing);
  if (!kitchen.ok) return kitchen;
  const { venue, day, costed, read: uses } = kitchen.answer;
  const { currency, locale } = costed.venue;
  const money = (amount: number | null) => (amount === null ? null : moneyText(amount, currency));
  return answered({
    ...{ venue, date: dayText(day), currency, locale },
    items: ingredients(costed, day).map(({ id, item, version, bought, usableCost, issues }) => ({
      ...{ id, item },
      productGroup: version?.productGroup ?? null,
      department: version?.department ?? null,
      measure: version?.measure ?? null,
      unitPrice: money(bought.unitPrice),
      per:
        bought.quantity === null || bought.boughtUnit === null
          ? null
          : { quantity: bought.quantity, unit: bought.boughtUnit },
      price: money(bought.cost),
      usablePrice: money(usableCost),
      usableYieldPct: version?.usableYield ?? null,
      supplier: bought.price?.offer.supplier ?? null,
      contains: version?.contains?.slice() ?? null,
      mayContain: version?.mayContain?.slice() ?? null,
      recipes: uses.get(id) ?? 0,
      issues: writtenIssues(issues),
    })),
  });
}
