import type { Route } from 'next';
import { cache } from 'react';
import { dishAnswer } from '@/lib/answers/dish';
import { dishCostAnswer } from '@/lib/answers/dish-cost';
import { priceEditText } from '@/lib/format/price-edit-text';
import { currentAsker } from '@/lib/session/asker';
import { dishPage, pageQuery } from '../../../_ui/dish-page';

/** What the address of a dish asks. Null: the only venue; what costs most is followed through the picture. */
export interface DishAsked {
  readonly venue: string | null;
  readonly month: string;
  readonly item: string;
  readonly follow: string | null;
}

/** The address of a dish in a month. */
export function dishHref({
  venue,
  month,
  item,
  follow = null,
}: Omit<DishAsked, 'follow'> & { follow?: string | null }): Route {
  return dishPage(item, pageQuery(month, venue, follow));
}

/** The price changes of the month with the menu price of a dish to be moved. */
export function tryPriceHref({ venue, month }: Pick<DishAsked, 'venue' | 'month'>, item: string): Route {
  const price = priceEditText({ target: { of: 'item', name: item }, step: { how: 'share', by: 0 } });
  return `/menu/prices?${new URLSearchParams({ month, ...(venue && { venue }), price })}` as Route;
}

/** The answers of a request, each asked for once however many panels need it. */
export const dishOf = cache((venue: string | null, month: string, item: string) =>
  dishAnswer(currentAsker(), { venue, month, item }),
);

/** The working of its plate cost: on the last day of the period on which it was on sale; of what was not on sale, on its last day. */
export const workingOf = cache(async (venue: string | null, month: string, item: string) => {
  const dish = await dishOf(venue, month, item);
  if (!dish.ok) return dish;
  const { figures, mixSection, lastDay } = dish.answer;
  const asked = { venue, item, channel: null, section: figures ? mixSection : null };
  return dishCostAnswer(
    currentAsker(),
    figures ? { ...asked, month, date: null } : { ...asked, month: null, date: lastDay },
  );
});
