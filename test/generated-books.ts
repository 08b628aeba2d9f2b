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
const never = fc.constant(null);
const rarely = <T>(value: fc.Arbitrary<T>): fc.Arbitrary<T | null> =>
  fc.oneof({ weight: 9, arbitrary: never }, { weight: 1, arbitrary: value });
const sometimes = <T>(value: fc.Arbitrary<T>): fc.Arbitrary<T | null> =>
  fc.oneof({ weight: 3, arbitrary: never }, { weight: 1, arbitrary: value });
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
  juice: often(fc.constantFrom(0.43, 0.9)),
  /** Output of a yolk and of a white, in which unit, and their shares; now and then shares that do not sum to 1. */
  split: fc.option(
    fc.record({
      outputs: fc.tuple(positive, positive),
      unit: fc.constantFrom('g', 'g', 'each'),
      shares: fc.constantFrom([0.6, 0.4], [0.85, 0.15], [1, 0], [0.6, 0.4], [0.5, 0.4]),
    }),
    { nil: null },
  ),
});

const line = fc.record({
  /** Which of the things that may be used, counted round. */
  pick: fc.nat(),
  quantity: positive,
  unit: fc.constantFrom('g', 'kg', 'ml', 'tbsp', 'each', 'pod'),
  as: fc.constantFrom('prepared' as const, 'prepared' as const, 'bought' as const),
  use: rarely(fc.constant('Juice')),
  part: sometimes(fc.constantFrom('yolk', 'White')),
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
  overrun: rarely(fc.constantFrom(0.2, 0.35)),
  minutes: often(fc.integer({ min: 0, max: 60 })),
  grade: fc.constantFrom('chef', 'chef', 'commis'),
  smallest: often(fc.integer({ min: 1, max: 400 })),
  life: often(fc.integer({ min: 1, max: 5 })),
  /** Which by-product a batch makes, and how much of it. */
  makes: sometimes(fc.record({ pick: fc.nat(), grams: positive })),
  lines,
});

const plate = fc.record({
  breakage: fc.constantFrom(0, 0, 0.02),
  estimate: rarely(positive),
  minutes: fc.constantFrom(null, 0, 3),
  plating: often(fc.integer({ min: 0, max: 6 })),
  packing: sometimes(line),
  lines: fc.oneof({ weight: 9, arbitrary: lines }, { weight: 1, arbitrary: fc.constant([]) }),
});

const sale = fc.record({
  pick: fc.nat(),
  on: inBookDays,
  channel: fc.constantFrom('dine_in', 'dine_in', 'takeaway'),
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
  /** Credit of a gram of each by-product; a second one that a recipe now and then says instead. */
  byProducts: fc.array(fc.record({ credit: fc.constantFrom(0, 0.0005, 0.001), isMade: fc.boolean() }), {
    maxLength: 2,
  }),
  quarrel: rarely(fc.constant(true)),
  /** The shares of a set menu of two courses, of which the second is a choice. */
  set: fc.option(fc.constantFrom([0.7, 0.3], [1, 0], [0.25, 0.75], [0.5, 0.4]), { nil: null }),
  extra: fc.option(plate, { nil: null }),
  covers: fc.array(fc.tuple(inBookDays, fc.integer({ min: 0, max: 60 })), { maxLength: 6 }),
  raise: fc.option(inBookDays, { nil: null }),
});

/**
 * Books without a loop on any day: a component uses only those written before it, and from the day they turn only those after it, so
 * that all days together often do have one. Now and then a fact is missing.
 */
export const acyclicBooks: fc.Arbitrary<Facts> = written.map(
  ({ q, ingredients, components, plates, turned, sales, byProducts, quarrel, set, extra, covers, raise }) => {
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
      if (each.juice !== null) book.yieldFor(item, 'juice', each.juice);
      if (each.split) {
        const { outputs, unit, shares } = each.split;
        ['Yolk', 'white'].forEach((name, at) => {
          book.part(item, name, outputs[at] as number, unit, shares[at] as number);
        });
      }
      return item;
    });
    const leftOver = byProducts.map(({ isMade }, index) => {
      if (!isMade) return book.ingredient(`By-product ${index}`, 'g', index === 0 ? null : 0.02);
      const recipe = { yields: [1, 'kg'], handsOnMinutes: 2, grade: 'chef' } as const;
      return book.component(`By-product ${index}`, recipe, [1, 'kg', bought[0] as ItemId]);
    });
    book.labour('Chef', 24);
    if (raise !== null) book.labour('chef', 27, dayText(raise));
    book.labour('commis', 18, '2026-10-03');

    const made = components.map((_, index) => book.item('component', `Component ${index}`));
    const linesOf = (drawn: readonly Drawn<typeof line>[], from: readonly ItemId[]): Line[] =>
      drawn.map(({ pick, quantity, unit, as, use, part }) => {
        const item = from[pick % from.length] as ItemId;
        return [quantity, unit, item, { as, use, part: bought.includes(item) ? part : null }];
      });
    const making = ({ makes }: Drawn<typeof batch>, isOdd: boolean): Line[] => {
      if (makes === null || leftOver.length === 0) return [];
      const index = makes.pick % leftOver.length;
      const credit = (byProducts[index]?.credit ?? 0) + (isOdd && quarrel ? 0.0002 : 0);
      return [[makes.grams, 'g', leftOver[index] as ItemId, { byProductCredit: credit }]];
    };
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
          overrun: drawn.overrun,
          ...{ handsOnMinutes: drawn.minutes, grade: drawn.grade },
          ...{ smallestBatch: drawn.smallest, shelfLifeDays: drawn.life },
        },
        ...linesOf(drawn.lines, from),
        ...making(drawn, made.indexOf(item) % 2 === 1),
      );
    };
    components.forEach(([first, second], index) => {
      const item = made[index] as ItemId;
      write(item, first, [...bought, ...leftOver, ...made.slice(0, index)], null);
      if (turned !== null) write(item, second, [...bought, ...leftOver, ...made.slice(index + 1)], turned);
    });

    const all = [...bought, ...leftOver, ...made];
    const plateLines = (drawn: Drawn<typeof plate>): Line[] => [
      ...linesOf(drawn.lines, all),
      ...linesOf(drawn.packing ? [drawn.packing] : [], all).map(
        ([quantity, unit, item]): Line => [quantity, unit, item, { channel: 'takeaway' }],
      ),
    ];
    const recipe = ({ breakage, estimate, minutes, plating }: Drawn<typeof plate>) => ({
      ...{ breakage, estimatedCost: estimate, handsOnMinutes: minutes, grade: 'commis' },
      ...{ platingMinutes: plating, platingGrade: 'commis' },
    });
    const sold = plates.map(([first, second], index) => {
      const item = book.item('dish', `Plate ${index}`);
      book.recipe(item, recipe(first), ...plateLines(first));
      if (turned !== null && index % 2 === 0) {
        book.recipe(item, { ...recipe(second), from: dayText(turned) }, ...plateLines(second));
      }
      return item;
    });
    if (set) {
      const courses = [sold[0], sold.at(-1)].map((course, index): Line => {
        return [1, 'each', course as ItemId, { choice: 'Second', choiceShare: set[index] ?? 0 }];
      });
      const first: Line = [1, 'each', sold[0] as ItemId];
      const bag: Line = [2, 'each', bought[0] as ItemId, { channel: 'takeaway' }];
      sold.push(book.recipe(book.item('set_menu', 'Set'), {}, first, ...courses, bag));
    }
    sold.forEach((item, index) => {
      book.menu(item, 10 + index);
      if (index % 2 === 0) book.menu(item, 9 + index, { channel: 'takeaway', commission: 0.2 });
    });
    if (extra) book.recipe(book.item('extra', 'Extra'), recipe(extra), ...linesOf(extra.lines, all));
    for (const [on, guests] of new Map(covers)) book.cover(dayText(on as Day), guests);
    // one row a day, item and channel, as sums of sales are kept
    const rows = new Map(sales.map((each) => [`${each.pick % sold.length} ${each.on} ${each.channel}`, each]));
    for (const { pick, on, sold: count, net, comps, channel } of rows.values()) {
      book.sellOn(sold[pick % sold.length] as ItemId, on, count, net, { comps, channel });
    }
    return book.facts();
  },
);
