import { expect, test } from 'vitest';
import { seededRandom } from '@/lib/core/random';
import { certainty } from '@/lib/model/mix/certainty';
import { KASAVANA_SMITH } from '@/lib/model/mix/kasavana-smith';
import { mixOf } from './mix-of';

test('certainty(2,000 resamples of a month of sixteen items) takes well under a tenth of a second', () => {
  const random = seededRandom(1);
  const margins = Array.from({ length: 16 }, (_, item) => 4 + item / 4);
  const mix = mixOf(
    Array.from({ length: 30 }, () => margins.map(() => Math.floor(random() * 30))),
    margins,
  );
  certainty(mix, KASAVANA_SMITH, 2000, 1);
  const start = performance.now();
  certainty(mix, KASAVANA_SMITH, 2000, 1);
  expect(performance.now() - start).toBeLessThan(100);
});
