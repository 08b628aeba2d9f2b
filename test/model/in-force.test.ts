import { describe, expect, test } from 'vitest';
import type { Day } from '@/lib/core/days';
import { inForce, onDay } from '@/lib/model/in-force';

const range = { from: 10 as Day, to: 20 as Day };
const dated = (name: string, validFrom: number | null) => ({ name, validFrom: validFrom as Day | null });
const written = (facts: readonly ReturnType<typeof dated>[]): string[] =>
  inForce(facts, range).map(({ fact, from, to }) => `${fact.name} ${from}-${to}`);

describe('inForce', () => {
  test('inForce(facts, range) is on every day the latest that has begun, null from the beginning', () => {
    expect(written([dated('c', 15), dated('a', null), dated('b', 12)])).toEqual(['a 10-12', 'b 12-15', 'c 15-20']);
  });

  test('inForce(facts, range) leaves out what ended before the range and what begins after it', () => {
    expect(written([dated('a', 1), dated('b', 10), dated('c', 20)])).toEqual(['b 10-20']);
    expect(written([dated('a', 19)])).toEqual(['a 19-20']);
  });

  test('inForce(facts, range) has no fact on the days before the first one', () => {
    const spans = inForce([dated('a', 14)], range);
    expect([onDay(spans, 13 as Day), onDay(spans, 14 as Day)?.name, onDay(spans, 20 as Day)]).toEqual([
      null,
      'a',
      null,
    ]);
    expect(inForce([], range)).toEqual([]);
  });
});
