import { expect, test } from 'vitest';
import { declaredIn } from '@/lib/model/allergens/declared';
import { itemAllergens } from '@/lib/model/allergens/item-allergens';
import { costPeriod } from '@/lib/model/costed-period';
import type { ItemId } from '@/lib/model/facts';
import { segmentOf } from '@/lib/model/segments';
import { Book, day, days } from '../books';

function declaredOn(book: Book, item: ItemId, on: string) {
  const period = costPeriod(book.facts(), days('2026-10'));
  return declaredIn(period, period.nodeOf.get(item) ?? -1, segmentOf(period.segments, day(on)));
}

test('declaredIn(a by-product) is of what it is made beside on the day, not of what made it before or will', () => {
  const book = new Book();
  const free = { contains: [], mayContain: [] };
  const flour = book.ingredient('Flour', 'g', 0.01, { ...free, contains: ['wheat'] });
  const almond = book.ingredient('Almonds', 'g', 0.02, { ...free, contains: ['almonds'] });
  const trim = book.component('Trimmings', {});
  const made = [100, 'g', trim, { byProductCredit: 0 }] as const;
  const cake = book.item('component', 'Cake');
  book.recipe(cake, { yields: [10, 'each'] }, [1000, 'g', flour], made);
  book.recipe(cake, { yields: [10, 'each'], from: '2026-10-11' }, [1000, 'g', flour]);
  const torte = book.item('component', 'Torte');
  book.recipe(torte, { yields: [10, 'each'] }, [1000, 'g', almond]);
  book.recipe(torte, { yields: [10, 'each'], from: '2026-10-11' }, [1000, 'g', almond], made);
  const cup = book.dish('Cup', {}, [30, 'g', trim]);
  book.menu(cup, 6);
  const on = (each: string) => [...declaredOn(book, cup, each).contains.keys()];
  expect([on('2026-10-10'), on('2026-10-11')]).toEqual([['wheat'], ['almonds']]);
});

test('declaredIn(a dish that is packed from a day on) is known before that day, too', () => {
  const book = new Book();
  const flour = book.ingredient('Flour', 'g', 0.01, { contains: ['wheat'], mayContain: [] });
  const box = book.ingredient('Box', 'each', 0.2, { department: 'packaging' });
  const dish = book.dish('Tart', {}, [10, 'g', flour]);
  book.recipe(dish, { from: '2026-10-11' }, [10, 'g', flour], [1, 'each', box, { channel: 'takeaway' }]);
  book.menu(dish, 9);
  for (const on of ['2026-10-10', '2026-10-11']) expect(declaredOn(book, dish, on).unknownFrom).toEqual([]);
});

test('itemAllergens(declared) names where an allergen comes from by name, whatever the order of the recipe', () => {
  const book = new Book();
  const [walnut, almond] = ['Walnuts', 'almonds'].map((name) =>
    book.ingredient(name, 'g', 0.02, { contains: [name], mayContain: [] }),
  );
  if (!walnut || !almond) throw new RangeError('two ingredients were made');
  const dish = book.dish('Torte', {}, [10, 'g', walnut], [10, 'g', almond]);
  book.menu(dish, 9);
  const { allergens } = itemAllergens(declaredOn(book, dish, '2026-10-01'), 'eu');
  expect(allergens.find(({ allergen }) => allergen === 'nuts')?.from).toEqual(['almonds', 'Walnuts']);
});

test('declaredIn(ingredients that declare nothing) names them by name, whatever the order of the recipe', () => {
  const book = new Book();
  const dish = book.dish(
    'Cup',
    {},
    ...['Zest', 'Apple'].map((name) => [10, 'g', book.ingredient(name, 'g', 0.01)] as const),
  );
  book.menu(dish, 9);
  expect(declaredOn(book, dish, '2026-10-01').unknownFrom).toEqual(['Apple', 'Zest']);
});
