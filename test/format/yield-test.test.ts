import { expect, test } from 'vitest';
import { YIELD_TEST_FAULTS } from '@/lib/format/words/yield-test';
import { yieldTestSum } from '@/lib/model/yield-test';

test('YIELD_TEST_FAULTS says what to do about each fault of yieldTestSum', () => {
  const fault = yieldTestSum({ boughtGrams: 100, trimGrams: 100, drainedGrams: null, paid: null });
  expect(typeof fault === 'string' && YIELD_TEST_FAULTS[fault]).toMatch(/^The trim weighs all of it/);
  for (const words of Object.values(YIELD_TEST_FAULTS)) expect(words).toMatch(/^[A-Z].+[.]$/);
});
