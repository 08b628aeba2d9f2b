import { expect, test } from 'vitest';
import { noSuchPeriod } from '@/lib/format/words/problems';

test('noSuchPeriod(text, refusal) says of A..A that it is empty, of a range turned round that it ends before it begins', () => {
  expect(noSuchPeriod('2026-10-05..2026-10-05', 'no-days').detail).toMatch(
    /^“2026-10-05\.\.2026-10-05” is empty, since its end is excluded\. /,
  );
  expect(noSuchPeriod('2026-10-05..2026-10-01', 'end-before-start').detail).toMatch(/” ends before it begins\. /);
});
