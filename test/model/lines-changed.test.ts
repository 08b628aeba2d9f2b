import { expect, test } from 'vitest';
import type { ItemId, RecipeLine } from '@/lib/model/facts';
import { linesChanged } from '@/lib/model/lines-changed';

const [SUGAR, CREAM, EGG] = [1, 2, 3] as ItemId[] as [ItemId, ItemId, ItemId];

function line(position: number, item: ItemId, quantity: number, more: Partial<RecipeLine> = {}): RecipeLine {
  const nothing = { use: null, part: null, choice: null, choiceShare: null, channel: null, byProductCredit: null };
  return { position, item, quantity, unit: 'g', as: 'prepared', ...nothing, ...more };
}
const told = (...given: Parameters<typeof linesChanged>) =>
  linesChanged(...given).map(({ item, before, after }) => [item, before?.quantity ?? null, after?.quantity ?? null]);

test('linesChanged(before, after) names what was added, altered and taken away, not what only moved', () => {
  const before = [line(1, SUGAR, 100), line(2, CREAM, 50), line(3, EGG, 2)];
  expect(told(before, [line(1, CREAM, 50), line(2, SUGAR, 120)])).toEqual([
    [SUGAR, 100, 120],
    [EGG, 2, null],
  ]);
  expect(told(before, before.toReversed())).toEqual([]);
  expect(told([], [line(1, EGG, 2)])).toEqual([[EGG, null, 2]]);
});

test('linesChanged(before, after) of several lines to one thing tells the altered one', () => {
  const before = [line(1, SUGAR, 100), line(2, SUGAR, 30)];
  expect(told(before, [line(1, SUGAR, 100), line(2, SUGAR, 40)])).toEqual([[SUGAR, 30, 40]]);
  expect(told(before, [line(1, SUGAR, 30)])).toEqual([[SUGAR, 100, null]]);
  // another part is another thing, and so is what a channel alone takes
  expect(told([line(1, EGG, 1, { part: 'yolk' })], [line(1, EGG, 1, { part: 'white' })])).toEqual([
    [EGG, null, 1],
    [EGG, 1, null],
  ]);
  expect(told([line(1, SUGAR, 1)], [line(1, SUGAR, 1, { as: 'bought' })])).toEqual([[SUGAR, 1, 1]]);
});
