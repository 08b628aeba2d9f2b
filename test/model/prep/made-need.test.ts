import fc from 'fast-check';
import { expect, test } from 'vitest';
import { isNear } from '@/lib/core/near';
import { costPeriod } from '@/lib/model/costed-period';
import { lineList } from '@/lib/model/flat-lines';
import { downward } from '@/lib/model/passes';
import { madeNeed } from '@/lib/model/prep/made-need';
import type { Thing } from '@/lib/model/things';
import { acyclicBooks, BOOK_DAYS, RUNS } from '../../generated-books';

// A plate takes 10 of a base, a base half a unit of sugar: of 3 plates 30 of the base. Where 20 more than needed are made, 50 take 25.
test('madeNeed(period, segment, wanted, passOn) passes on what is made, not what is needed', () => {
  const list = lineList();
  list.add(1, 0, 0.5, 0, 1);
  list.add(2, 1, 10, 0, 1);
  const book = { lines: list.lines(), things: [{}, {}, {}] as Thing[] };
  const { need, passed } = madeNeed(book, 0, Float64Array.of(0, 0, 3), (node, each) => (node === 1 ? each + 20 : each));
  expect([...need]).toEqual([25, 30, 3]);
  expect([...passed]).toEqual([25, 50, 3]);
});

test('madeNeed(period, segment, wanted, passOn) that gives every need back is the downward pass', () => {
  fc.assert(
    fc.property(acyclicBooks, (facts) => {
      const period = costPeriod(facts, BOOK_DAYS, 'everything');
      const { count } = period.segments;
      const wanted = Float64Array.from({ length: period.things.length }, (_, node) => (node % 7) + 1);
      for (const segment of [0, count - 1]) {
        const inSegment = new Float64Array(period.things.length * count);
        wanted.forEach((each, node) => {
          inSegment[node * count + segment] = each;
        });
        const whole = downward(period.lines, inSegment, count);
        const { need } = madeNeed(period, segment, wanted, (_, each) => each);
        const same = [...need].every((each, node) => isNear(each, whole[node * count + segment] as number));
        expect(same).toBe(true);
      }
    }),
    { ...RUNS, numRuns: Math.min(RUNS.numRuns, 40) },
  );
});
