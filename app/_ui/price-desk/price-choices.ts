import { byText } from '@/lib/core/grouped';
import { nameKey } from '@/lib/core/name-key';
import { targetText } from '@/lib/format/price-edit-text';
import { CHOICES } from '@/lib/format/words/price-changes';
import type { EditTarget } from '@/lib/model/price-model/edits';
import type { PriceModel } from '@/lib/model/price-model/price-model';
import type { PriceChoice } from '../price-picker/found-choices';

export interface TargetChoice extends PriceChoice {
  readonly target: EditTarget;
}

/** Everything whose price can be moved: ingredients, then groups and suppliers of them, then what is on the menu. */
export function priceChoices({ goods, items }: PriceModel): readonly TargetChoice[] {
  const priced = goods.filter(({ suppliers }) => suppliers.some((supplier) => supplier !== null));
  const of = (kind: 'ingredient' | 'group' | 'supplier' | 'item' | 'section', names: readonly (string | null)[]) =>
    [...new Set(names.flatMap((name) => name ?? []))]
      .sort((a, b) => byText(nameKey(a), nameKey(b)))
      .map((name) => choice({ of: kind, name }, name));
  return [
    ...of(
      'ingredient',
      priced.map(({ name }) => name),
    ),
    ...of(
      'group',
      priced.map(({ productGroup }) => productGroup),
    ),
    ...of(
      'supplier',
      priced.flatMap(({ suppliers }) => suppliers),
    ),
    choice({ of: 'everything-bought', name: null }, CHOICES.everything),
    ...of(
      'item',
      items.filter(({ menuPrice }) => menuPrice !== null).map(({ name }) => name),
    ),
    ...of(
      'section',
      items.map(({ section }) => section),
    ),
    choice({ of: 'whole-menu', name: null }, CHOICES.menu),
  ];
}

function choice(target: EditTarget, name: string): TargetChoice {
  return { key: targetText(target), name, what: CHOICES.of[target.of], target };
}
