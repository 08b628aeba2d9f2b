import fc from 'fast-check';
import { addDays, type Day, dayText } from '@/lib/core/days';
import type { BaseUnit } from '@/lib/core/units';
import type { Facts, ItemId } from '@/lib/model/facts';
import { Book, day, type Line } from './books';

type Drawn<Arbitrary> = Arbitrary extends fc.Arbitrary<infer Value> ? Value : never;

/** The days that generated books are sold on: 1 October 2026 and the 19 after it. */
export const BOOK_DAYS = { from: day('2026-10-01'), to: day('2026-10-21') } as const;

/** A generated test at full length tries many new books each time; otherwise a hundred, the same every time. */
export const RUNS = process.env.SOAK ? { numRuns: 2000 } : { numRuns: 100, seed: 20261001 };

const inBookDays = fc.integer({ min: 0, max: 19 }).map((later) => addDays(BOOK_DAYS.from, later));
const positive = fc.integer({ min: 1, max: 4000 }).map((count) => count / 8);
const rarely = <T>(value: fc.Arbitrary<T>): fc.Arbitrary<T | null> => fc.option(value, { freq: 1, nil: null });
const often = <T>(value: fc.Arbitrary<T>): fc.Arbitrary<T | null> => fc.option(value, { freq: 12, nil: null });

const price = fc.record({
  price: positive.map((amount) => amount / 100),
  kind: fc.constantFrom('agreed' as const, 'list' as const, 'quote' as const, 'invoice' as const),
  from: fc.option(inBookDays, { nil: addDays(BOOK_DAYS.from, -30) }),
  lasts: fc.option(fc.integer({ min: 0, max: 12 }), { nil: null }),
});

const ingredient = fc.record({
  measure: fc.constantFrom<BaseUnit>('g', 'ml', 'each'),
  density: often(fc.integer({ min: 3, max: 14 }).map((tenths) => tenths / 10)),
  gramsEach: often(positive),
  usableYield: fc.constantFrom(1, 1, 0.9, 0.64, 0.51),
  changes: rarely(
    fc.record({ from: inBookDays, density: fc.constantFrom(0.4, 1.1), usableYield: fc.constantFrom(1, 0.75) }),
  ),
  department: fc.constantFrom('food' as const, 'food' as const, 'drink' as const, 'packaging' as const),
  standing: often(positive.map((amount) => amount / 100)),
  prices: fc.array(price, { maxLength: 3 }),
});

const line = fc.record({
  /** Which of the things that may be used, counted round. */
  pick: fc.nat(),
  quantity: positive,
  unit: fc.constantFrom('g', 'kg', 'ml', 'tbsp', 'each', 'pod'),
  as: fc.constantFrom('prepared' as const, 'prepared' as const, 'bought' as const),
});
const lines = fc.array(line, { minLength: 1, maxLength: 4 });

const batch = fc.record({
  grams: fc.option(
    positive.map((amount) => amount + 100),
    { freq: 3, nil: null },
  ),
  also: fc.option(fc.tuple(positive, fc.constantFrom('ml', 'each')), { freq: 3, nil: null }),
  alsoFirst: fc.boolean(),
  loss: rarely(fc.integer({ min: 1, max: 90 })),
  breakage: fc.constantFrom(0, 0, 0.05, 0.25),
  lines,
});

const plate = fc.record({
  breakage: fc.constantFrom(0, 0, 0.02),
  estimate: rarely(positive),
  lines: fc.oneof({ weight: 9, arbitrary: lines }, { weight: 1, arbitrary: fc.constant([]) }),
});

const sale = fc.record({
  pick: fc.nat(),
  on: inBookDays,
  sold: fc.integer({ min: 1, max: 30 }),
  comps: fc.integer({ min: 0, max: 2 }),
  net: positive,
});

const written = fc.record({
  q: fc.constantFrom(0, 0.02),
  ingredients: fc.array(ingredient, { minLength: 1, maxLength: 5 }),
  components: fc.array(fc.tuple(batch, batch), { maxLength: 5 }),
  plates: fc.array(fc.tuple(plate, plate), { minLength: 1, maxLength: 4 }),
  /** From this day on components use each other the other way round; null: never. */
  turned: fc.option(inBookDays, { nil: null }),
  sales: fc.array(sale, { maxLength: 12 }),
});

/**
 * Books without a loop on any day: a component uses only those written before it, and from the day they turn only those after it, so
 * that all days together often do have one. Now and then a fact is missing.
 */
export const acyclicBooks: fc.Arbitrary<Facts> = written.map(
  ({ q, ingredients, components, plates, turned, sales }) => {
    const book = new Book({ qFactor: q });
    const bought = ingredients.map((each, index) => {
      const item = book.item('ingredient', `Ingredient ${index}`);
      const stated = { densityGPerMl: each.density, gramsEach: each.gramsEach, department: each.department };
      book.ingredientVersion(item, each.measure, { ...stated, usableYield: each.usableYield });
      if (each.changes) {
        const { from, density, usableYield } = each.changes;
        book.ingredientVersion(item, each.measure, {
          ...stated,
          densityGPerMl: density,
          usableYield,
          from: dayText(from),
        });
      }
      if (index % 2 === 0) book.measure(item, 'pod', 3, 'g');
      const offer = book.offer(item, 2, 0.5, each.measure);
      if (each.standing !== null) book.price(offer, each.standing);
      for (const { price: amount, kind, from, lasts } of each.prices) {
        const to = kind === 'agreed' && lasts !== null ? dayText(addDays(from as Day, lasts)) : undefined;
        book.price(offer, amount, { kind, from: dayText(from as Day), ...(to ? { to } : {}) });
      }
      return item;
    });

    const made = components.map((_, index) => book.item('component', `Component ${index}`));
    const linesOf = (drawn: readonly Drawn<typeof line>[], from: readonly ItemId[]): Line[] =>
      drawn.map(({ pick, quantity, unit, as }) => [quantity, unit, from[pick % from.length] as ItemId, as]);
    const write = (item: ItemId, drawn: Drawn<typeof batch>, from: readonly ItemId[], valid: Day | null): void => {
      const grams = drawn.grams === null ? null : ([drawn.grams, 'g'] as const);
      const [yields, also] = drawn.alsoFirst && drawn.also && grams ? [drawn.also, grams] : [grams, drawn.also];
      book.recipe(
        item,
        {
          ...(yields ? { yields } : {}),
          ...(also ? { also } : {}),
          ...(valid === null ? {} : { from: dayText(valid) }),
          batchLossG: drawn.loss,
          breakage: drawn.breakage,
        },
        ...linesOf(drawn.lines, from),
      );
    };
    components.forEach(([first, second], index) => {
      const item = made[index] as ItemId;
      write(item, first, [...bought, ...made.slice(0, index)], null);
      if (turned !== null) write(item, second, [...bought, ...made.slice(index + 1)], turned);
    });

    const sold = plates.map(([first, second], index) => {
      const item = book.item('dish', `Plate ${index}`);
      const all = [...bought, ...made];
      const recipe = ({ breakage, estimate }: Drawn<typeof plate>) => ({ breakage, estimatedCost: estimate });
      book.recipe(item, recipe(first), ...linesOf(first.lines, all));
      if (turned !== null && index % 2 === 0) {
        book.recipe(item, { ...recipe(second), from: dayText(turned) }, ...linesOf(second.lines, all));
      }
      book.menu(item, 10 + index);
      return item;
    });
    // one row a day, item and channel, as sums of sales are kept
    const rows = new Map(sales.map((each) => [`${each.pick % sold.length} ${each.on}`, each]));
    for (const { pick, on, sold: count, net, comps } of rows.values()) {
      book.sellOn(sold[pick % sold.length] as ItemId, on, count, net, { comps });
    }
    return book.facts();
  },
);
