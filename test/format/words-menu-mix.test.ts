import { expect, test } from 'vitest';
import { plainText } from '@/lib/format/phrase';
import { type MixFigures, mixBasis, mixSentences, onTheLine } from '@/lib/format/words/menu-mix';
import { october } from './october';

const OVER = { locale: 'en-GB', running: false };

function told(change: Partial<MixFigures>, telling = OVER): string {
  return plainText(mixSentences({ ...october, ...change }, telling)).replaceAll('\u2009', ' ');
}

const allCosted = { totals: { ...october.totals, costedSold: october.totals.sold, estimatedSold: 0 }, coverage: 1 };

test('mixSentences(mix) of a month with every cost tells portions, what they left, food cost, and what is on the line', () => {
  expect(told(allCosted)).toBe(
    'October 2026: 3,412 portions left €26,955 before labour. Food cost was 25.3 % by recipe only, as no stock was counted. Six dishes are on the line, Rye choux most of all.',
  );
});

// 3,412 portions, 96 of them without a cost: 97 % known, so the margin line is not provisional.
test('mixSentences(mix) with a few costs missing says for how many portions margins are known', () => {
  expect(told({})).toContain(
    'October 2026: 3,412 portions, with margins known for 97 % of them. Those 3,316 left €26,955 before labour. Their food cost was 25.3 %',
  );
});

test('mixSentences(mix) below nine tenths of the portions calls the margin line provisional', () => {
  const half = { totals: { ...october.totals, costedSold: 2661 }, coverage: 0.78 };
  expect(told(half)).toContain(
    'with margins known for 78 % of them. Those 2,661 left €26,955 before labour, and the margin line is provisional.',
  );
});

test('mixSentences(mix) of fewer than fourteen trading days does not speak of certainty', () => {
  const items = october.items.map((item) => ({ ...item, classShares: null, settled: null, between: null }));
  const text = told({ items, resamples: null, tradingDays: 9 });
  expect(text).toContain(' Nine trading days are too few to say how sure the classes are: it takes 14.');
  expect(text).not.toContain('on the line');
});

test('mixSentences(mix) counts one dish on the line, and none', () => {
  const settled = october.items.map((item) => ({ ...item, settled: item.class === null ? null : true, between: null }));
  expect(told({ items: settled })).toContain('. Every dish with a class is settled.');
  const first = october.items.find((item) => item.settled === false);
  expect(told({ items: first ? [first] : [] })).toContain('. One dish is on the line, Baked chocolate.');
});

test('mixSentences(mix) where nothing has a cost, and where nothing was sold, says so and stops', () => {
  const totals = { ...october.totals, costedSold: 0, foodCostPct: null, margin: null };
  const items = october.items.map((item) => ({ ...item, plateCost: null }));
  expect(told({ totals, items, coverage: 0 })).toBe(
    'October 2026: 3,412 portions brought in €37,189 net. What they left is not known: no dish has a cost yet.',
  );
  expect(told({ totals: { ...totals, sold: 0 }, coverage: null })).toBe('October 2026: nothing was sold.');
});

// 74 of the 3,316 costed portions are the iced pear's, which is on estimate: 2.2 %.
test('mixSentences(mix) marks what stands on the owner’s estimate, and never calls that a recipe', () => {
  expect(told({})).toContain(
    '25.3 % by recipe, and by the owner’s estimate for 2 % of these portions, as no stock was counted.',
  );
  const all = { ...october.totals, estimatedSold: october.totals.costedSold };
  expect(told({ totals: all, stockCounted: true })).toContain(
    'Their food cost was 25.3 % by the owner’s estimates. Six',
  );
  expect(told({ totals: all })).not.toContain('recipe');
  expect(mixBasis({ ...october, totals: all }, OVER).at(-1)).toBe('costs by the owner’s estimates');
});

test('mixSentences(mix) speaks of no count only where none was made', () => {
  expect(told({ ...allCosted, stockCounted: true })).toContain('was 25.3 % by recipe only. Six dishes');
});

test('mixSentences(mix) of sales that wait for a name says how many portions, and the largest names', () => {
  const largest = ['Creme brul#', 'Tarte', 'Tea'];
  expect(told({ waiting: { rows: 31, portions: 620, names: 5, largest } })).toMatch(
    / most of all\. 620 more portions wait for a name: Creme brul#, Tarte, Tea and two more\.$/,
  );
  const one = { rows: 1, portions: 1, names: 1, largest: ['Tea'] };
  expect(told({ waiting: one })).toMatch(/ 1 more portion waits for a name: Tea\.$/);
  expect(told({ waiting: one, section: 'Cold' })).not.toContain('wait');
  const nothing = { ...october.totals, sold: 0, costedSold: 0, foodCostPct: null, margin: null };
  const two = { rows: 2, portions: 9, names: 2, largest: ['Tarte', 'Tea'] };
  expect(told({ totals: nothing, coverage: null, waiting: two })).toBe(
    'October 2026: nothing was sold under a name that is known. 9 portions wait for a name: Tarte and Tea.',
  );
});

test('mixSentences(mix) without any price blames the price, not the cost', () => {
  const totals = { ...october.totals, costedSold: 0, estimatedSold: 0, foodCostPct: null, margin: null };
  expect(told({ totals: { ...totals, revenue: null }, coverage: 0 })).toBe(
    'October 2026: 3,412 portions were sold. What they brought in is not known: none has a price.',
  );
  const unpriced = october.items.map((item) => ({ ...item, netPrice: null }));
  expect(told({ totals, coverage: 0, items: unpriced })).toMatch(
    /€37,189 net\. What they left is not known: portions of every dish have no price\.$/,
  );
});

test('mixSentences(mix) of a section, of a running month and of a loss', () => {
  expect(told({ section: 'Cold' })).toMatch(/^October 2026 in Cold: /);
  expect(told({}, { locale: 'en-GB', running: true })).toMatch(/^October 2026 so far: .*Their food cost is /);
  expect(told({ totals: { ...allCosted.totals, margin: '-210.40' }, coverage: 1 })).toContain(
    '3,412 portions cost €210 more than they brought in, before labour.',
  );
});

test('onTheLine(items) starts with the dish nearest to a coin’s toss', () => {
  expect(onTheLine(october.items).map((item) => item.item)[0]).toBe('Rye choux, hay cream');
});

test('mixBasis(mix) names model, scope, valuation and days', () => {
  expect(mixBasis(october, OVER).join(' · ').replaceAll('\u2009', ' ')).toBe(
    'Kasavana & Smith, 1982 · whole menu, sections by shape · achieved prices, net · 31 business days with sales · costs by the price in force each day, for 2 % of the costed portions by the owner’s estimate',
  );
});
