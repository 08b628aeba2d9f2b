import fc from 'fast-check';
import { addDays, dayText } from '@/lib/core/days';
import type { Facts } from '@/lib/model/facts';
import { Book } from './books';
import { BOOK_DAYS } from './generated-books';

const grams = fc.integer({ min: 5, max: 250 });
/** Venue currency a kilogram. */
const price = fc.integer({ min: 50, max: 4000 }).map((cents) => cents / 100);

const menu = fc.record({
  q: fc.constantFrom(0, 0.02),
  ingredients: fc.array(fc.record({ price, later: fc.option(price), isPacking: fc.boolean() }), {
    minLength: 2,
    maxLength: 5,
  }),
  bases: fc.array(fc.record({ first: fc.nat(), grams, second: fc.nat(), breakage: fc.constantFrom(0, 0.05) }), {
    minLength: 1,
    maxLength: 3,
  }),
  dishes: fc.array(
    fc.record({
      base: fc.nat(),
      ofBase: grams,
      own: fc.nat(),
      ofOwn: grams,
      price: fc.integer({ min: 10, max: 60 }).map((quarters) => quarters / 4),
      later: fc.option(fc.constantFrom(0.5, 1)),
      tax: fc.constantFrom(0, 0.09, 0.135),
      discount: fc.constantFrom(0, 0.04),
      commission: fc.constantFrom(null, 0.3),
      sold: fc.array(fc.integer({ min: 1, max: 30 }), { minLength: 12, maxLength: 12 }),
    }),
    { minLength: 2, maxLength: 7 },
  ),
});

/**
 * Menus on which everything is costed and classed: dishes of a component and an ingredient, prices of both sides that change on the way,
 * tax inside, discounts, a channel with a commission. Every pack holds a gram.
 */
export const costedMenus: fc.Arbitrary<Facts> = menu.map(({ q, ingredients, bases, dishes }) => {
  const book = new Book({ qFactor: q, variableCost: 0.3 });
  const bought = ingredients.map((each, index) => {
    const department = each.isPacking && index > 0 ? ('packaging' as const) : ('food' as const);
    const item = book.item('ingredient', `Ingredient ${index}`);
    book.ingredientVersion(item, 'g', { department });
    const offer = book.offer(item, 1, 1, 'g');
    book.price(offer, each.price / 1000);
    if (each.later !== null) book.price(offer, each.later / 1000, { from: '2026-10-08' });
    return item;
  });
  const picked = <Of>(of: readonly Of[], pick: number): Of => of[pick % of.length] as Of;
  const made = bases.map(({ first, grams: weight, second, breakage }, index) =>
    book.component(
      `Base ${index}`,
      { yields: [weight + 100, 'g'], breakage },
      [weight, 'g', picked(bought, first)],
      [100, 'g', picked(bought, second)],
    ),
  );
  dishes.forEach((each, index) => {
    const dish = book.dish(
      `Plate ${index}`,
      {},
      [each.ofBase, 'g', picked(made, each.base)],
      [each.ofOwn, 'g', picked(bought, each.own)],
    );
    const channel = each.commission === null ? 'dine_in' : 'delivery';
    const stated = { tax: each.tax, taxIncluded: true, commission: each.commission, channel };
    book.menu(dish, each.price, stated);
    if (each.later !== null) book.menu(dish, each.price + each.later, { ...stated, from: '2026-10-06' });
    each.sold.forEach((sold, later) => {
      const listed = each.price + (later >= 5 ? (each.later ?? 0) : 0);
      const net = (sold * listed * (1 - each.discount)) / (1 + each.tax);
      book.sell(dish, dayText(addDays(BOOK_DAYS.from, later)), sold, net, { channel });
    });
  });
  return book.facts();
});
