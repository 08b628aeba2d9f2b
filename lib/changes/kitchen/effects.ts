import { dayText } from '../../core/days';
import { moneyText } from '../../format/money-text';
import { issueText } from '../../format/words/issues';
import { allergenStepText } from '../../format/words/kitchen';
import type { Issue } from '../../model/issue';
import type { ItemCost } from '../../model/item-cost';
import type { AllergenStep, KitchenChange } from '../../reports/kitchen-change';

/** A cost as it is written: money as decimal text, null where it is not known. */
export interface WrittenItemCost {
  readonly per: ItemCost['per'];
  readonly plateCost: string | null;
  readonly floor: string | null;
  readonly recipeLabour: string | null;
}

/** What an edit does on a day, said before it is kept. */
export interface Effects {
  readonly date: string;
  readonly currency: string;
  readonly lines: KitchenChange['lines'];
  readonly items: readonly {
    readonly item: string;
    readonly kind: string;
    readonly before: WrittenItemCost | null;
    readonly after: WrittenItemCost | null;
  }[];
  /** text: “Adds hazelnut to 3 dishes: ...”; null where no plate is touched. */
  readonly allergens: readonly (AllergenStep & { readonly text: string | null })[];
  readonly issuesAdded: readonly { readonly code: string; readonly about: string; readonly text: string }[];
  readonly issuesGone: readonly { readonly code: string; readonly about: string; readonly text: string }[];
}

export function writtenEffects(change: KitchenChange): Effects {
  const { currency } = change.venue;
  const money = (amount: number | null): string | null => (amount === null ? null : moneyText(amount, currency));
  const cost = (of: ItemCost | null): WrittenItemCost | null =>
    of && {
      per: of.per,
      plateCost: money(of.plateCost),
      floor: money(of.halfKnown?.floor ?? null),
      recipeLabour: money(of.recipeLabour),
    };
  const issue = (each: Issue) => ({ code: each.code, about: each.about, text: issueText(each) });
  return {
    date: dayText(change.day),
    currency,
    lines: change.lines,
    items: change.items.map(({ item, kind, before, after }) => ({
      ...{ item, kind, before: cost(before), after: cost(after) },
    })),
    allergens: change.allergens.map((step) => ({ ...step, text: allergenStepText(step) })),
    issuesAdded: change.issuesAdded.map(issue),
    issuesGone: change.issuesGone.map(issue),
  };
}
