import { expect, test } from 'vitest';
import { costPeriod } from '@/lib/model/costed-period';
import { upward } from '@/lib/model/passes';
import { LARGE, largeBook, MONTH } from '../bench/large-book';
import { medianMs } from '../bench/measure';
import { copyLoop } from '../bench/rivals';

// The full measurement is `npm run bench`. Only the ratio is looked at, and twice more where the machine was busy with something else.
test('upward(40,000 lines) takes at most three times a loop that copies parent, child and amount', { retry: 2 }, () => {
  const { lines, prices } = costPeriod(largeBook(LARGE), MONTH);
  expect(lines.parent.length).toBe(LARGE.lines);
  const taken = medianMs({ upward: () => upward(lines, prices.food, 1), copy: copyLoop(lines) }, 21, 10);
  expect(taken.upward / taken.copy).toBeLessThan(3);
});
