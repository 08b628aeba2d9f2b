import { expect, test } from 'vitest';
import { foundChoices } from '@/app/_ui/price-picker/found-choices';

const choice = (name: string, what = 'ingredient') => ({ key: `${what} ${name}`, name, what });
const CHOICES = [
  choice('Milk couverture 40 %'),
  choice('Dark couverture 70 %'),
  choice('Double cream'),
  choice('Couverture, white'),
  choice('Dark and Sons', 'supplier'),
];

test('foundChoices(choices, typed) finds every word anywhere, whatever its case, and what begins with it first', () => {
  expect(foundChoices(CHOICES, 'COUV').map(({ name }) => name)).toEqual([
    'Couverture, white',
    'Milk couverture 40 %',
    'Dark couverture 70 %',
  ]);
  expect(foundChoices(CHOICES, '70 dark').map(({ name }) => name)).toEqual(['Dark couverture 70 %']);
  expect(foundChoices(CHOICES, 'dark').map(({ name }) => name)).toEqual(['Dark couverture 70 %', 'Dark and Sons']);
});

test('foundChoices(choices, typed) of nothing typed is the beginning of the list, and of what no name holds nothing', () => {
  expect(foundChoices(CHOICES, '')).toEqual(CHOICES);
  expect(foundChoices(CHOICES, 'saffron')).toEqual([]);
  expect(
    foundChoices(
      Array.from({ length: 3000 }, (_, index) => choice(`thing ${index}`)),
      'thing',
    ),
  ).toHaveLength(60);
});
