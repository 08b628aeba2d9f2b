import { describe, expect, test } from 'vitest';
import { pairInPerCent, type Standing } from '@/lib/format/words/classes';
import { onTheLine } from '@/lib/format/words/menu-mix';
import { classWords, missingLines, sureness } from '@/lib/format/words/mix-table';

describe('sureness', () => {
  const split = (star: number, dog: number) =>
    sureness(
      {
        class: 'star',
        classShares: { star, plowhorse: 0, puzzle: 1 - star - dog, dog },
        settled: false,
        between: ['star', 'dog'],
      },
      'en-GB',
    );

  // 55.5 and 44.5 each round up: 56 and 45 would be 101
  test('sureness(standing) prints two shares that add up to a hundred at most', () => {
    expect(split(0.555, 0.445)).toEqual({ text: '56 : 44 dog', bar: [0.555, 0.445], share: 0.555 });
    expect(split(0.81, 0.19).text).toBe('81 : 19 dog');
    expect(split(0.5, 0.3).text).toBe('50 : 30 dog');
  });

  test('sureness(standing) of a class that only the period before doubts says which it was, and is not on the line', () => {
    const dog = (between: Standing['between']): Standing => ({
      class: 'dog',
      classShares: { star: 0, plowhorse: 0.01, puzzle: 0, dog: 0.99 },
      settled: false,
      between,
    });
    // most resamples of both periods named plowhorse: so did the period before
    expect(sureness(dog(['plowhorse', 'dog']), 'en-GB')).toEqual({
      text: '99, plowhorse before',
      bar: null,
      share: 0.99,
    });
    expect(sureness(dog(['dog', 'plowhorse']), 'en-GB').text).toBe('99, also plowhorse before');
    expect(classWords(dog(['plowhorse', 'dog']))).toBe('dog');
    expect(onTheLine([{ item: 'Smoke', ...dog(['plowhorse', 'dog']) }])).toEqual([]);
    const doubtful: Standing = { ...dog(['dog', 'plowhorse']), classShares: { plowhorse: 0.11, dog: 0.89 } };
    expect(classWords(doubtful)).toBe('dog, on the line');
    expect(onTheLine([doubtful])).toEqual([doubtful]);
  });

  test('pairInPerCent(first, second) of every whole in two adds up to 100', () => {
    const sums = Array.from({ length: 2001 }, (_, n) => pairInPerCent(n / 2000, 1 - n / 2000)).map(([a, b]) => a + b);
    expect(Math.max(...sums)).toBe(100);
    expect(Math.min(...sums)).toBeGreaterThanOrEqual(99);
  });
});

test('missingLines(missing, lines) counts what is not known, whatever the reason', () => {
  expect([missingLines(1, 2), missingLines(2, 7), missingLines(1, 1)]).toEqual([
    '1 of 2 lines is not known',
    '2 of 7 lines are not known',
    '1 of 1 line is not known',
  ]);
});
