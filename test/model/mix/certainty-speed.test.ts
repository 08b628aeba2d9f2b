import { expect, test } from 'vitest';
import { certainty } from '@/lib/model/mix/certainty';
import { KASAVANA_SMITH } from '@/lib/model/mix/kasavana-smith';
import { largeMix } from '../../bench/large-mix';
import { medianMs } from '../../bench/measure';
import { plainResamples } from '../../bench/plain-resamples';

const mix = largeMix();

test('certainty(31 days, 200 dishes) has the class shares of a plain loop over objects', () => {
  const plain = plainResamples(mix, 50, 7)();
  certainty(mix, KASAVANA_SMITH, 50, 7).forEach((sure, item) => {
    for (const mixClass of KASAVANA_SMITH.classes) {
      expect(sure?.classShares[mixClass]).toBe((plain[item]?.get(mixClass) ?? 0) / 50);
    }
  });
});

// The full measurement is `npm run bench`. Only the ratio is looked at, and twice more where the machine was busy with something else.
test('certainty(200 resamples of 31 days, 200 dishes) takes at most a fifth of a plain loop', { retry: 2 }, () => {
  const plain = plainResamples(mix, 200, 7);
  const taken = medianMs({ certainty: () => certainty(mix, KASAVANA_SMITH, 200, 7), plain }, 5, 1);
  expect(taken.certainty / taken.plain).toBeLessThan(0.2);
});
