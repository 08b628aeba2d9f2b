import { expect, test } from 'vitest';
import { benchAmount, benchMinutes } from '@/lib/format/bench-amount';
import { hasDecimalComma } from '@/lib/format/decimal-comma';
import { allergenStepText, noSuchVersion, stillUsed } from '@/lib/format/words/kitchen';
import { kitchenRefusalText } from '@/lib/format/words/kitchen-refusals';
import { aheadWords, heldWords, prepHead } from '@/lib/format/words/prep-sheet';
import { cardHead, cardLineName, inItWords } from '@/lib/format/words/recipe-card';

const plain = (text: string): string => text.replaceAll('\u00a0', ' ').replaceAll('\u2009', ' ');

test.each([
  [1250, 'g', '1.25 kg'],
  [999.6, 'g', '1,000 g'],
  [36.4, 'g', '36 g'],
  [4.52, 'g', '4.5 g'],
  [-1500, 'ml', '\u22121.5 l'],
  [2.25, 'each', '2.3'],
  [0.0625, 'each', '0.063'],
  [1.5, 'tbsp', '1.5 tbsp'],
] as const)('benchAmount(%d, %s, en-IE) is %s', (quantity, unit, text) => {
  expect(plain(benchAmount(quantity, unit, 'en-IE'))).toBe(text);
});

test.each([
  [12.5, '13 min'],
  [59.4, '59 min'],
  [59.6, '1 h 00'],
  [65, '1 h 05'],
] as const)('benchMinutes(%d, en-IE) is %s', (minutes, text) => {
  expect(plain(benchMinutes(minutes, 'en-IE'))).toBe(text);
});

test('hasDecimalComma(locale) is what a person there writes', () => {
  expect(['en-IE', 'de-DE', 'fr-FR', 'en-US'].map(hasDecimalComma)).toEqual([false, true, true, false]);
});

test('allergenStepText(step) counts and names the plates; components alone are no sentence', () => {
  const items = [
    { item: 'Base', kind: 'component' },
    { item: 'Cup', kind: 'dish' },
    { item: 'Low tide', kind: 'set_menu' },
    { item: 'Tart', kind: 'dish' },
  ];
  const step = { word: 'hazelnut', state: 'contains', added: true, items } as const;
  expect(allergenStepText(step)).toBe('Adds hazelnut to 2 dishes and 1 set menu: Cup, Low tide and Tart.');
  expect(allergenStepText({ ...step, added: false, state: 'may-contain', items: items.slice(0, 2) })).toBe(
    'Takes “may contain hazelnut” out of 1 dish: Cup.',
  );
  expect(allergenStepText({ ...step, word: null, state: 'unknown' })).toMatch(/^No longer known what is in 2 dishes/);
  expect(allergenStepText({ ...step, items: items.slice(0, 1) })).toBeNull();
});

test('stillUsed(name, uses) names the first five of each kind', () => {
  const uses = ['A', 'B', 'C', 'D', 'E', 'F', 'G'].map((name) => ({ kind: 'recipe', in: name }));
  expect(stillUsed('Cream', [...uses, { kind: 'offer', in: 'Bay Dairy, C1' }]).detail).toBe(
    '“Cream” cannot be deleted: it goes into A, B, C, D, E and 2 more; it is bought from Bay Dairy, C1. Take it out there first; nothing was changed.',
  );
  expect(noSuchVersion('Cream', '', []).detail).toBe('“Cream” has no version from the beginning. It has none.');
});

test('kitchenRefusalText(fault) names fields, not columns', () => {
  const fault = {
    rule: 'pair-incomplete',
    column: 'yield_unit',
    value: '',
    facts: { other: 'yield_quantity' },
  } as const;
  expect(kitchenRefusalText(fault)).toBe(
    'yield unit is blank although yield quantity is filled in. Fill in both, or neither.',
  );
});

const DAYS = ['2026-10-24', '2026-10-17'];
test('prepHead(sheet, locale) says what the sheet stands on', () => {
  const sheet = { venue: 'Quay', date: '2026-10-31', like: DAYS, covers: 42.5, expectedCovers: 42.5 };
  expect(prepHead(sheet, 'en-IE')).toEqual([
    'Quay, prep for 31 October 2026',
    'Expected: the mean of 24 October 2026, 17 October 2026. 42.5 guests, the mean of those days.',
  ]);
  expect(prepHead({ ...sheet, covers: 60 }, 'en-IE')[1]).toContain('60 guests, as was said.');
  expect(prepHead({ ...sheet, like: [], covers: null }, 'en-IE')[1]).toBe(
    'There is no day like it to expect anything from.',
  );
});

test('aheadWords and heldWords say when it can be made and what is there', () => {
  expect([null, 0, 48, 72, 144].map((hours) => aheadWords(hours, 'en-IE'))).toEqual([
    ...['unknown', 'that day', '48 h ahead', '72 h ahead', '6 days ahead'],
  ]);
  expect([heldWords(null, false), heldWords('2 kg', false), heldWords('2 kg', true)]).toEqual(['', '2 kg', 'too old']);
});

test('cardHead, cardLineName and inItWords are what stands on a card', () => {
  const card = {
    ...{ venue: 'Quay', date: '2026-10-31', item: 'Curd', kind: 'component', times: 2, gives: 1600, serves: 1440 },
    recipe: { usableUnit: 'g', breakagePct: 0.1, batchLossG: 100 },
    ...{ handsOnMinutes: 60, grade: 'pastry', platingMinutes: null, platingGrade: null },
    ...{ shelfLifeDays: 1, thrownAtClose: false, smallestBatch: { quantity: 450, unit: 'g' } },
  };
  expect(cardHead(card, 'en-IE').map(plain)).toEqual([
    'Curd, 2 batches (Quay, 31 October 2026)',
    'Gives 1.6 kg; 10.0 % of it breaks.',
    'Minutes: hands-on 1 h 00 (pastry).',
    'Keeps 1 day, the day of making with it; never less than 450 g.',
  ]);
  const nothing = { use: null, part: null, choice: null, sharePct: null, channel: null, byProduct: false };
  const line = { item: 'Lemons', as: 'bought', ...nothing } as const;
  expect(cardLineName({ ...line, use: 'zest', channel: 'takeaway' }, 'en-IE')).toBe(
    'Lemons (zest; as bought; takeaway only)',
  );
  expect(cardLineName({ ...line, item: 'Egg', as: 'prepared', part: 'yolk' }, 'en-IE')).toBe('Egg, yolk');
  const allergens = [
    { allergen: 'milk', state: 'contains' },
    { allergen: 'eggs', state: 'unknown' },
  ];
  expect(inItWords({ allergens, unknownFrom: ['Salt'], cautions: [{ caution: 'raw egg', from: ['Curd'] }] })).toEqual([
    'Contains: milk. May contain: none declared.',
    'Not known for Salt: free of nothing because of it.',
    'Caution: raw egg (Curd).',
  ]);
});
