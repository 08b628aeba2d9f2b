import { addDays, type Day, type DayRange } from '@/lib/core/days';
import { seededRandom } from '@/lib/core/random';
import type { Facts, ItemId } from '@/lib/model/facts';
import { Book, day, type Line } from '../books';

export interface BookSize {
  readonly dishes: number;
  readonly components: number;
  readonly ingredients: number;
  readonly lines: number;
}

/** The size at which the passes are measured. */
export const LARGE: BookSize = { dishes: 1000, components: 3000, ingredients: 2000, lines: 40_000 };

/** October 2026. */
export const MONTH: DayRange = { from: day('2026-10-01'), to: day('2026-11-01') };

/**
 * A book of that size, every dish on the menu: a recipe has as many lines as another give or take one, a third of them to components
 * made before it, in turn, so that none is left unused. Quantities are as a kitchen weighs them, to 0.1 g. With `priceDays` some prices change on each of the first so many days of the month after the first one.
 */
export function largeBook(size: BookSize, priceDays = 0, seed = 7): Facts {
  const random = seededRandom(seed);
  const among = (count: number): number => Math.floor(random() * count);
  const book = new Book();
  const ingredients: ItemId[] = [];
  for (let index = 0; index < size.ingredients; index++) {
    const item = book.item('ingredient', `ingredient ${index}`);
    book.ingredientVersion(item, 'g', { usableYield: rounded(0.6 + 0.4 * random(), 2) });
    const offer = book.offer(item, 1, 1, 'kg');
    book.price(offer, rounded(1 + 9 * random(), 2));
    if (index < priceDays * 10) {
      book.price(offer, rounded(1 + 9 * random(), 2), { kind: 'agreed', from: text(1 + (index % priceDays)) });
    }
    ingredients.push(item);
  }

  const recipes = size.components + size.dishes;
  const components: ItemId[] = [];
  let written = 0;
  let picked = 0;
  for (let index = 0; index < recipes; index++) {
    const target = Math.round((size.lines * (index + 1)) / recipes);
    const lines: Line[] = [];
    for (; written < target; written++) {
      const made = components.length > 0 && random() < 1 / 3 ? components[picked++ % components.length] : undefined;
      const item = made ?? (ingredients[among(ingredients.length)] as ItemId);
      lines.push([rounded(5 + 200 * random(), 1), 'g', item, random() < 0.1 ? 'bought' : 'prepared']);
    }
    if (index < size.components) {
      components.push(
        book.component(`component ${index}`, { yields: [rounded(800 + 400 * random(), 0), 'g'] }, ...lines),
      );
    } else {
      book.menu(book.dish(`dish ${index}`, { breakage: 0.02 }, ...lines), 10);
    }
  }
  return book.facts();
}

/** A large book of which every dish is sold at 30.00 with tax on every day of the month, so many portions as are said. */
export function soldDaily(facts: Facts, portions: (item: ItemId, day: Day) => number): Facts {
  const dishes = facts.items.filter(({ kind }) => kind === 'dish');
  const days = Array.from({ length: MONTH.to - MONTH.from }, (_, index) => addDays(MONTH.from, index));
  const sales = days.flatMap((date) =>
    dishes.map(({ id: item }) => {
      const sold = portions(item, date);
      const net = (sold * 30) / 1.1;
      return { day: date, item, channel: 'dine_in', sold, comps: 0, net, soldWithoutRevenue: 0 };
    }),
  );
  return { ...facts, sales };
}

/** As somebody writes it down: so many decimals. */
function rounded(value: number, decimals: number): number {
  return Number(value.toFixed(decimals));
}

function text(later: number): string {
  const date = new Date(addDays(MONTH.from, later) * 86_400_000);
  return date.toISOString().slice(0, 10);
}
