import { dayText } from '../core/days';
import { recipesUsing } from '../db/where-used';
import { moneyText } from '../format/money-text';
import { recipes } from '../reports/recipes';
import type { Asker } from '../session/asker';
import { type KitchenAsked, kitchenOn } from './kitchen-on';
import type { RecipesAnswer } from './kitchen-shape';
import { type Answered, answered } from './problem';

/** Everything that is made, on a day: the version in force, what it costs, what uses it. */
export async function recipesAnswer(asker: Asker, asked: KitchenAsked): Promise<Answered<RecipesAnswer>> {
  const kitchen = await kitchenOn(asker, asked, recipesUsing);
  if (!kitchen.ok) return kitchen;
  const { venue, day, costed, read: uses } = kitchen.answer;
  const { currency, locale } = costed.venue;
  const money = (amount: number | null) => (amount === null ? null : moneyText(amount, currency));
  return answered({
    ...{ venue, date: dayText(day), currency, locale },
    items: recipes(costed, day).map(({ id, item, kind, version, onMenu, cost }) => ({
      ...{ id, item, kind, section: version?.section ?? null },
      validFrom: version === null || version.validFrom === null ? null : dayText(version.validFrom),
      hasVersion: version !== null,
      onMenu,
      per: cost.per,
      plateCost: money(cost.plateCost),
      floor: money(cost.halfKnown?.floor ?? null),
      linesMissing: cost.halfKnown?.missing ?? null,
      linesTotal: cost.halfKnown?.lines ?? null,
      estimated: cost.estimated,
      recipeLabour: money(cost.recipeLabour),
      recipes: uses.get(id) ?? 0,
    })),
  });
}
