import { describe, expect, test } from 'vitest';
import { costPeriod } from '@/lib/model/costed-period';
import { MIX_MODELS } from '@/lib/model/mix/mix-models';
import { menuMix } from '@/lib/reports/menu-mix';
import { menuModels } from '@/lib/reports/menu-models';
import { Book, days } from '../books';
import { EIGHT_ITEMS } from '../published-folders';

/** The published eight items, sold on each of so many days. */
function eightItems(onDays: number, settings: ConstructorParameters<typeof Book>[0] = {}) {
  const book = new Book(settings);
  for (const { name, sold, price, cost } of EIGHT_ITEMS.items) {
    const dish = book.dish(name, {}, [1, 'each', book.ingredient(`${name}, all of it`, 'each', Number(cost))]);
    book.menu(dish, Number(price));
    for (let date = 1; date <= onDays; date++) {
      book.sell(dish, `2026-10-${String(date).padStart(2, '0')}`, sold, sold * Number(price));
    }
  }
  return costPeriod(book.facts(), days('2026-10'));
}

describe('menuModels', () => {
  test('menuModels(period) has of every model what the menu mix by that model has', () => {
    const period = eightItems(21, { variableCost: 0.3 });
    const side = menuModels(period, { section: null, previous: period });
    expect(side.models).toEqual(Object.keys(MIX_MODELS));
    for (const [at, model] of Object.values(MIX_MODELS).entries()) {
      const mix = menuMix(period, { section: null, model, previous: menuMix(period, { section: null, model }) });
      for (const item of mix.items) {
        const own = side.items.find((each) => each.item === item.item);
        expect(own?.standings[at]).toMatchObject({
          model: model.name,
          class: item.class,
          classShares: item.classShares,
          settled: item.settled,
          between: item.between,
        });
        expect(own).toMatchObject({ margin: item.margin, foodCost: item.foodCost, contribution: item.contribution });
      }
    }
  });

  // by the published tables: lamb chops puzzle, loser, problem; fried scallops star, winner, prime
  test('menuModels(eight items) agree over fried scallops and part over lamb chops; what nobody stated is not said', () => {
    const side = menuModels(eightItems(1), { section: null });
    const of = (name: string) => side.items.find(({ item }) => item === name);
    expect(of('Fried Scallops')).toMatchObject({ agree: true });
    expect(of('Fried Scallops')?.standings.map((each) => each.class)).toEqual(['star', 'winner', 'prime', null, null]);
    expect(of('Lamb Chops')).toMatchObject({ agree: false, goalValue: null, recipeLabour: null });
    expect(of('Lamb Chops')?.popularity).toBeCloseTo(55 / (629 / 8), 12);
    expect(side.items[0]?.item).toBe('Fried Scallops');
    expect(side.issues.map(({ code }) => code)).toContain('no-variable-cost');
  });

  // (1 - 5.9 / 18.5) * 92 * 18.5 * (1 - (0.3 + 5.9 / 18.5)) = 442.65...
  test('menuModels(a stated variable cost) gives each its goal value', () => {
    const side = menuModels(eightItems(1, { variableCost: 0.3 }), { section: null });
    const scallops = side.items.find(({ item }) => item === 'Fried Scallops');
    const share = 5.9 / 18.5;
    expect(scallops?.goalValue).toBeCloseTo((1 - share) * 92 * 18.5 * (0.7 - share), 9);
    expect(scallops?.standings[3]?.class).toBe('above');
  });

  test('menuModels(nothing costed) says nothing of anything, uncosted last', () => {
    const book = new Book();
    const plain = book.dish('Plain', {}, [1, 'each', book.ingredient('Costed', 'each', 1)]);
    const bare = book.dish('Bare', {}, [1, 'each', book.ingredient('Without price', 'each', null)]);
    for (const dish of [plain, bare]) {
      book.menu(dish, 0);
      book.sell(dish, '2026-10-01', 5, 0);
    }
    const side = menuModels(costPeriod(book.facts(), days('2026-10')), { section: null });
    expect(side.items.map(({ item }) => item)).toEqual(['Plain', 'Bare']);
    expect(side.items[1]).toMatchObject({ agree: null, contribution: null, foodCost: null });
  });
});
