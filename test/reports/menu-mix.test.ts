import { describe, expect, test } from 'vitest';
import { addDays } from '@/lib/core/days';
import { costPeriod } from '@/lib/model/costed-period';
import type { ItemId } from '@/lib/model/facts';
import { type MenuMix, type MenuMixOptions, type MixItem, menuMix } from '@/lib/reports/menu-mix';
import { Book, day, days } from '../books';

const mixOf = (book: Book, options: Partial<MenuMixOptions> = {}, month = '2026-10'): MenuMix =>
  menuMix(costPeriod(book.facts(), days(month)), { section: null, ...options });

function itemNamed(mix: MenuMix, name: string): MixItem {
  const item = mix.items.find((each) => each.item === name);
  if (!item) throw new RangeError(`${name} is not in the mix`);
  return item;
}
const codes = (mix: MenuMix): string[] => mix.issues.map(({ code, about }) => `${code} ${about}`);

/** A dish on the menu at 10.00 that costs what its one ingredient costs. */
function dish(book: Book, name: string, cost: number | null, price: number | null = 10): ItemId {
  const item = book.dish(name, {}, [1, 'each', book.ingredient(`all of ${name}`, 'each', cost)]);
  book.menu(item, price);
  return item;
}

describe('menuMix: figures', () => {
  test('menuMix(period) sums channels, and takes price and cost as portion-weighted means', () => {
    const book = new Book({ qFactor: 0.1 });
    const butter = book.item('ingredient', 'Butter');
    book.ingredientVersion(butter, 'g');
    const offer = book.offer(butter, 1, 1, 'g');
    book.price(offer, 0.02);
    book.price(offer, 0.05, { from: '2026-10-10' });
    const box = book.ingredient('Box', 'each', 0.2, { department: 'packaging' });
    const tart = book.dish('Tart', { section: 'Tarts' }, [100, 'g', butter], [1, 'each', box]);
    book.menu(tart, 10);
    book.sell(tart, '2026-10-01', 3, 27, { comps: 2 });
    book.sell(tart, '2026-10-10', 1, 10, { channel: 'takeaway' });
    const mix = mixOf(book);
    // cost 2.2 + 0.2 three times and 5.5 + 0.2 once: 12.9 / 4; food 12.1 / 4; price 37 / 4
    const item = itemNamed(mix, 'Tart');
    expect(item).toMatchObject({
      kind: 'dish',
      section: 'Tarts',
      sold: 4,
      comps: 2,
      share: 1,
      revenue: 37,
      netPrice: 9.25,
    });
    expect(item.plateCost).toBeCloseTo(3.225, 12);
    expect(item.foodCost).toBeCloseTo(3.025 / 9.25, 12);
    expect(item.margin).toBeCloseTo(6.025, 12);
    expect(item.contribution).toBeCloseTo(24.1, 12);
    expect(mix.totals).toMatchObject({ sold: 4, comps: 2, revenue: 37, costedSold: 4, costedRevenue: 37 });
    expect(mix.totals.plateCost).toBeCloseTo(12.9, 12);
    expect(mix.totals.foodCost).toBeCloseTo(12.1 / 37, 12);
    expect(mix.totals.margin).toBeCloseTo(24.1, 12);
    expect([mix.coverage, mix.tradingDays]).toEqual([1, 2]);
    expect(mix.thresholds.margin).toBeCloseTo(6.025, 12);
  });

  test('menuMix(an item without cost) keeps it in shares and n, leaves it out of the mean margin, and names what to cost next', () => {
    const book = new Book();
    const [a, b, c, d] = [
      dish(book, 'A', 4),
      dish(book, 'B', 2),
      dish(book, 'C', null),
      dish(book, 'D', null),
    ] as const;
    for (const [item, sold] of [
      [a, 10],
      [b, 30],
      [c, 40],
      [d, 20],
    ] as const)
      book.sell(item, '2026-10-01', sold, sold * 10);
    const mix = mixOf(book);
    expect(mix.items.map(({ item, share, class: mixClass }) => [item, share, mixClass])).toEqual([
      ['B', 0.3, 'star'],
      ['A', 0.1, 'dog'],
      ['C', 0.4, null],
      ['D', 0.2, null],
    ]);
    expect(mix.thresholds.margin).toBeCloseTo((10 * 6 + 30 * 8) / 40, 12);
    expect(mix.thresholds.popularity).toBeCloseTo(0.7 / 4, 12);
    expect(mix.coverage).toBe(0.4);
    expect(mix.totals).toMatchObject({ sold: 100, revenue: 1000, costedSold: 40, costedRevenue: 400 });
    expect(mix.costNext).toEqual([
      { item: 'C', share: 0.4 },
      { item: 'D', share: 0.2 },
    ]);
    expect(itemNamed(mix, 'C')).toMatchObject({
      plateCost: null,
      margin: null,
      contribution: null,
      foodCost: null,
      netPrice: 10,
      halfKnown: { floor: null, lines: 1, missing: 1 },
    });
    expect(codes(mix)).toContain('no-offer all of C');
  });

  test('menuMix(a cost not known on some days) is a floor over all days; not known on days without sales is no matter', () => {
    const book = new Book();
    const leaf = book.item('ingredient', 'Leaf');
    book.ingredientVersion(leaf, 'each');
    book.price(book.offer(leaf, 1, 1, 'each'), 1, { kind: 'agreed', from: '2026-10-01', to: '2026-10-10' });
    const tart = book.dish('Tart', {}, [1, 'each', leaf], [2, 'each', book.ingredient('Plum', 'each', 0.5)]);
    book.menu(tart, 10);
    book.sell(tart, '2026-10-05', 1, 10);
    expect(itemNamed(mixOf(book), 'Tart').plateCost).toBe(2);
    book.sell(tart, '2026-10-11', 3, 30);
    // 2 once and a floor of 1 three times
    expect(itemNamed(mixOf(book), 'Tart')).toMatchObject({
      plateCost: null,
      halfKnown: { floor: 1.25, lines: 2, missing: 1 },
    });
  });

  test('menuMix(an item half known on several days) counts the worst of them, and has a floor if anything is known on any', () => {
    const book = new Book();
    const leaf = book.ingredient('Leaf', 'each', null);
    const plum = book.ingredient('Plum', 'each', 0.5);
    const tart = book.dish('Tart', {}, [1, 'each', leaf]);
    book.recipe(tart, { from: '2026-10-05' }, [1, 'each', leaf], [4, 'each', plum]);
    book.recipe(tart, { from: '2026-10-09' }, [1, 'each', leaf], [1, 'each', leaf], [4, 'each', plum]);
    book.recipe(tart, { from: '2026-10-13' }, [2, 'each', leaf], [2, 'each', leaf]);
    for (const on of ['2026-10-04', '2026-10-05']) book.sell(tart, on, 1, 10);
    expect(itemNamed(mixOf(book), 'Tart').halfKnown).toEqual({ floor: 1, lines: 1, missing: 1 });
    book.sell(tart, '2026-10-09', 1, 10);
    book.sell(tart, '2026-10-13', 1, 10);
    expect(itemNamed(mixOf(book), 'Tart').halfKnown).toEqual({ floor: 1, lines: 3, missing: 2 });
  });

  test('menuMix(an item without recipe, or never served) has neither cost nor floor', () => {
    const book = new Book();
    const pavlova = book.item('dish', 'Pavlova');
    book.menu(pavlova, 12);
    book.sell(pavlova, '2026-10-01', 2, 24);
    const tart = book.dish('Tart', { estimatedCost: 2 });
    book.sell(tart, '2026-10-01', -1, -10); // a void of the month before
    const mix = mixOf(book);
    expect(itemNamed(mix, 'Pavlova')).toMatchObject({ plateCost: null, halfKnown: null });
    expect(itemNamed(mix, 'Tart')).toMatchObject({
      sold: -1,
      netPrice: null,
      plateCost: null,
      halfKnown: null,
      margin: null,
    });
  });

  test('menuMix(on the menu, none sold) counts in n with share 0, at the mean menu price and the mean cost of its days on sale', () => {
    const book = new Book();
    const plum = book.item('ingredient', 'Plum');
    book.ingredientVersion(plum, 'each');
    const offer = book.offer(plum, 1, 1, 'each');
    book.price(offer, 1);
    book.price(offer, 4, { from: '2026-10-03' });
    const unsold = book.dish('Unsold', {}, [1, 'each', plum]);
    book.menu(unsold, 11, { tax: 0.1, taxIncluded: true });
    book.menu(unsold, 14, { from: '2026-10-03' });
    const other = dish(book, 'Other', 3);
    for (const on of ['2026-10-01', '2026-10-02', '2026-10-03']) book.sell(other, on, 5, 50);
    const mix = mixOf(book);
    const item = itemNamed(mix, 'Unsold');
    expect(item).toMatchObject({
      sold: 0,
      share: 0,
      expected: 7.5,
      daysOnSale: 3,
      revenue: 0,
      class: 'puzzle',
      contribution: 0,
    });
    expect(item.netPrice).toBeCloseTo((10 + 10 + 14) / 3, 12);
    expect(item.plateCost).toBeCloseTo((1 + 1 + 4) / 3, 12);
    expect(item.margin).toBeCloseTo(34 / 3 - 2, 12);
    expect(mix.thresholds).toMatchObject({ popularity: 0.35, margin: 7 });
    expect(mix.costNext).toEqual([]);
  });

  test('menuMix(on the menu, none sold) goes by its days on sale, even a single one; by its days on the menu where nothing was traded', () => {
    const book = new Book();
    const unsold = book.dish('Unsold', { estimatedCost: 1 });
    book.menu(unsold, 10, { from: '2026-10-30' });
    book.menu(unsold, 16, { from: '2026-10-31' });
    expect(itemNamed(mixOf(book), 'Unsold').netPrice).toBe(13);
    book.sell(book.dish('Other', { estimatedCost: 1 }), '2026-10-30', 1, 9);
    expect(itemNamed(mixOf(book), 'Unsold').netPrice).toBe(10);
  });

  test('menuMix(nothing sold at all) is an issue, with costs over the days on the menu and no classes', () => {
    const book = new Book();
    dish(book, 'A', 4);
    const mix = mixOf(book);
    expect(codes(mix)).toEqual(['no-sales Marram House']);
    expect(mix).toMatchObject({
      tradingDays: 0,
      coverage: null,
      resamples: null,
      thresholds: { popularity: null, margin: null },
    });
    expect(itemNamed(mix, 'A')).toMatchObject({
      plateCost: 4,
      netPrice: 10,
      margin: 6,
      share: 0,
      class: null,
      daysOnSale: 0,
    });
    expect(mix.totals).toMatchObject({ sold: 0, plateCost: 0, foodCost: null });
  });

  test('menuMix(an item on estimate) is classed, and marked', () => {
    const book = new Book({ qFactor: 0.5 });
    const tart = book.dish('Tart', { estimatedCost: 3 });
    book.menu(tart, 10);
    book.sell(tart, '2026-10-01', 4, 40);
    const item = itemNamed(mixOf(book), 'Tart');
    expect(item).toMatchObject({
      plateCost: 3,
      estimated: true,
      foodCost: 0.3,
      margin: 7,
      class: 'star',
      halfKnown: null,
    });
  });
});

describe('menuMix: revenue', () => {
  test('menuMix(portions without revenue) takes the day’s net menu price of the channel, and says so', () => {
    const book = new Book();
    const tart = dish(book, 'Tart', 4);
    book.menu(tart, 22, { from: '2026-10-05', tax: 0.1, taxIncluded: true });
    book.menu(tart, 9, { channel: 'takeaway' });
    book.sell(tart, '2026-10-04', 3, 8, { soldWithoutRevenue: 2 }); // 8 + 2 * 10
    book.sell(tart, '2026-10-05', 1, 0, { soldWithoutRevenue: 1 }); // 20
    book.sell(tart, '2026-10-05', 1, 0, { soldWithoutRevenue: 1, channel: 'takeaway' }); // 9
    const mix = mixOf(book);
    expect(itemNamed(mix, 'Tart').revenue).toBeCloseTo(57, 12);
    expect(itemNamed(mix, 'Tart').netPrice).toBeCloseTo(57 / 5, 12);
    expect(mix.issues.find(({ code }) => code === 'stand-in-revenue')).toEqual({
      code: 'stand-in-revenue',
      about: 'Tart',
      facts: { portions: 4 },
    });
  });

  test('menuMix(portions without revenue or menu price) has no achieved price, no margin and an issue', () => {
    const book = new Book();
    const tart = dish(book, 'Tart', 4);
    book.sell(tart, '2026-10-04', 3, 30);
    book.sell(tart, '2026-10-04', 2, 5, { channel: 'takeaway', soldWithoutRevenue: 1 });
    const mix = mixOf(book);
    expect(itemNamed(mix, 'Tart')).toMatchObject({
      sold: 5,
      revenue: 35,
      netPrice: null,
      plateCost: 4,
      margin: null,
      class: null,
    });
    expect(mix.issues.find(({ code }) => code === 'no-menu-price')?.facts).toEqual({ portions: 1 });
    expect(codes(mix)).not.toContain('stand-in-revenue Tart');
    expect(mix.costNext).toEqual([]);
    expect(mix.coverage).toBe(0);
    expect(mix.totals).toMatchObject({
      costedSold: 0,
      costedRevenue: 0,
      plateCost: null,
      foodCost: null,
      margin: null,
    });
  });

  test('menuMix(revenue below zero) is an issue; a price of zero has no food-cost %', () => {
    const book = new Book();
    const tart = dish(book, 'Tart', 4);
    const free = dish(book, 'Free', 1, 0);
    book.sell(tart, '2026-10-04', 2, -3);
    book.sell(free, '2026-10-04', 2, 0);
    const mix = mixOf(book);
    expect(mix.issues.find(({ code }) => code === 'revenue-negative')).toMatchObject({
      about: 'Tart',
      facts: { revenue: -3 },
    });
    expect(itemNamed(mix, 'Free')).toMatchObject({ netPrice: 0, foodCost: null, margin: -1 });
    expect(codes(mix).filter((code) => code.startsWith('revenue'))).toEqual(['revenue-negative Tart']);
  });

  test('menuMix(only comps) keeps them apart: no portions, priced by the menu', () => {
    const book = new Book();
    const tart = dish(book, 'Tart', 4);
    book.sell(tart, '2026-10-04', 0, 0, { comps: 3 });
    expect(itemNamed(mixOf(book), 'Tart')).toMatchObject({ sold: 0, comps: 3, netPrice: 10, plateCost: 4, revenue: 0 });
  });
});

describe('menuMix: days on sale', () => {
  /** 24 trading days; early is on the menu on the first `count` of them. */
  function partTime(count: number): MenuMix {
    const book = new Book();
    const always = dish(book, 'Always', 4);
    const early = dish(book, 'Early', 3);
    book.menu(early, null, { from: `2026-10-${String(count + 1).padStart(2, '0')}` });
    for (let index = 0; index < 24; index++) {
      const on = addDays(day('2026-10-01'), index);
      book.sellOn(always, on, 10, 100);
      if (index < count) book.sellOn(early, on, 5, 50);
    }
    return mixOf(book, { resamples: 50 });
  }

  test('menuMix(items on sale on different days) has no common threshold: each has its own expected portions', () => {
    const mix = partTime(10);
    expect(mix.thresholds.popularity).toBeNull();
    // 15 shared by two on 10 days, 10 to the other one on 14
    expect(itemNamed(mix, 'Early')).toMatchObject({ expected: 75, daysOnSale: 10, sold: 50, class: 'puzzle' });
    expect(itemNamed(mix, 'Always')).toMatchObject({ expected: 75 + 140, daysOnSale: 24 });
    expect(codes(mix)).not.toContain('not-classed Early');
  });

  test('menuMix(an item on sale on fewer than ten days) is not classed, and stays in shares and averages', () => {
    const mix = partTime(9);
    expect(itemNamed(mix, 'Early')).toMatchObject({
      class: null,
      classShares: null,
      settled: null,
      spread: null,
      daysOnSale: 9,
    });
    expect(mix.issues.find(({ code }) => code === 'not-classed')).toMatchObject({
      about: 'Early',
      facts: { days: 9, needed: 10 },
    });
    expect(mix.thresholds.margin).toBeCloseTo((240 * 6 + 45 * 7) / 285, 12);
    expect(itemNamed(mix, 'Always').share).toBeCloseTo(240 / 285, 12);
  });

  test('menuMix(a short period) asks for half the trading days', () => {
    const book = new Book();
    const always = dish(book, 'Always', 4);
    const twice = book.dish('Twice', { estimatedCost: 1 });
    const thrice = book.dish('Thrice', { estimatedCost: 1 });
    for (const [index, on] of ['2026-10-01', '2026-10-02', '2026-10-03', '2026-10-04', '2026-10-05'].entries()) {
      book.sell(always, on, 10, 100);
      if (index < 2) book.sell(twice, on, 9, 90);
      if (index < 3) book.sell(thrice, on, 9, 90);
    }
    const mix = mixOf(book);
    expect(mix.issues.filter(({ code }) => code === 'not-classed').map(({ about, facts }) => [about, facts])).toEqual([
      ['Twice', { days: 2, needed: 3 }],
    ]);
    expect([itemNamed(mix, 'Thrice').class, itemNamed(mix, 'Twice').class]).toEqual(['star', null]);
  });
});

describe('menuMix: certainty', () => {
  /** Two items that sell alike every day, and one that sells little, for some days from a date on. */
  function steady(count: number, from = '2026-10-01'): Book {
    const book = new Book();
    const items = [dish(book, 'A', 4), dish(book, 'B', 6), dish(book, 'C', 1)] as const;
    for (let index = 0; index < count; index++) {
      for (const [item, sold] of [
        [items[0], 10],
        [items[1], 10],
        [items[2], 2],
      ] as const) {
        book.sellOn(item, addDays(day(from), index), sold, sold * 10);
      }
    }
    return book;
  }

  test('menuMix(fewer than 14 trading days) says nothing of certainty, with an issue', () => {
    const mix = mixOf(steady(13));
    expect(mix.resamples).toBeNull();
    expect(itemNamed(mix, 'A')).toMatchObject({
      class: 'star',
      classShares: null,
      settled: null,
      between: null,
      spread: null,
    });
    expect(mix.issues.find(({ code }) => code === 'few-trading-days')).toMatchObject({
      about: 'Marram House',
      facts: { days: 13 },
    });
  });

  test('menuMix(14 trading days) says how sure each class is', () => {
    const mix = mixOf(steady(14));
    expect(mix.resamples).toBe(2000);
    expect(itemNamed(mix, 'A')).toMatchObject({
      classShares: { star: 1, plowhorse: 0, puzzle: 0, dog: 0 },
      settled: true,
    });
    expect(itemNamed(mix, 'C')).toMatchObject({ class: 'puzzle', settled: true, between: null });
    expect(codes(mix)).toEqual(['few-items Marram House']);
    expect(mixOf(steady(14), { resamples: 0 })).toMatchObject({ resamples: null });
  });

  test('menuMix(period, previous) is settled only where the period before agrees', () => {
    const before = steady(14, '2026-09-01');
    const previous = mixOf(before, {}, '2026-09');
    expect(itemNamed(mixOf(steady(14), { previous }), 'A').settled).toBe(true);
    const turned: MenuMix = {
      ...previous,
      items: previous.items.map((item) => ({
        ...item,
        class: 'dog',
        classShares: { star: 0, plowhorse: 0, puzzle: 0, dog: 1 },
      })),
    };
    expect(itemNamed(mixOf(steady(14), { previous: turned }), 'A')).toMatchObject({
      settled: false,
      between: ['star', 'dog'],
    });
  });

  test('menuMix(the same facts in another order) gives the same figures to the last bit', () => {
    const facts = steady(20).facts();
    const turned = {
      ...facts,
      items: facts.items.toReversed(),
      sales: facts.sales.toReversed(),
      menuPrices: facts.menuPrices.toReversed(),
      recipeVersions: facts.recipeVersions.toReversed(),
      pricePoints: facts.pricePoints.toReversed(),
      offers: facts.offers.toReversed(),
    };
    const mix = (of: typeof facts) => menuMix(costPeriod(of, days('2026-10')), { section: null });
    expect(mix(turned)).toEqual(mix(facts));
  });
});

describe('menuMix: sections', () => {
  test('menuMix(section) is judged by itself; few items and issues are those of the section', () => {
    const book = new Book();
    for (let index = 0; index < 6; index++) {
      const item = book.dish(`Tart ${index}`, { section: 'Tarts', estimatedCost: 2 });
      book.sell(item, '2026-10-01', 10, 100);
    }
    const wine = book.ingredient('Wine', 'ml', null, { department: 'drink' });
    const glass = book.dish('Glass', { section: 'After' }, [100, 'ml', wine]);
    book.sell(glass, '2026-10-02', 5, 50);
    const tarts = mixOf(book, { section: 'tarts' });
    expect([tarts.items.length, tarts.tradingDays, tarts.section]).toEqual([6, 1, 'tarts']);
    expect(codes(tarts)).toEqual(['few-trading-days tarts']);
    expect(tarts.thresholds.popularity).toBeCloseTo(0.7 / 6, 12);
    const after = mixOf(book, { section: 'After' });
    expect(codes(after)).toEqual(['no-offer Wine', 'few-items After', 'few-trading-days After']);
    expect(after.issues.find(({ code }) => code === 'few-items')?.facts).toEqual({ items: 1 });
    expect(mixOf(book).items.length).toBe(6); // a glass of wine is no food
  });

  test('menuMix(items) stand by what they left, then by name; those without a margin after them, by portions', () => {
    const book = new Book();
    const sold = [
      ['B', 4, 5],
      ['A', 4, 5],
      ['C', 2, 9],
      ['Z', null, 7],
      ['Y', null, 8],
      ['X', null, 7],
    ] as const;
    for (const [name, cost, count] of sold) book.sell(dish(book, name, cost), '2026-10-01', count, count * 10);
    expect(mixOf(book).items.map(({ item }) => item)).toEqual(['C', 'A', 'B', 'Y', 'X', 'Z']);
    expect(mixOf(book).costNext.map(({ item }) => item)).toEqual(['Y', 'X', 'Z']);
  });

  test('menuMix(items without a margin) stand last, whatever their names, and a single portion is a share of all', () => {
    const book = new Book();
    book.sell(dish(book, 'A', null), '2026-10-01', 1, 10);
    expect(mixOf(book)).toMatchObject({ coverage: 0, costNext: [{ item: 'A', share: 1 }], items: [{ share: 1 }] });
    book.sell(dish(book, 'B', 12), '2026-10-01', 1, 10);
    book.sell(dish(book, 'C', null), '2026-10-01', 1, 10);
    book.sell(dish(book, 'D', 4), '2026-10-01', 1, 10);
    expect(mixOf(book).items.map(({ item }) => item)).toEqual(['D', 'B', 'A', 'C']);
  });
});
