import { gzipSync } from 'node:zlib';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type CostedPeriod, costPeriod } from '@/lib/model/costed-period';
import { amountSource } from '@/lib/model/price-model/amount-source';
import { type ModelSource, packedModel, unpackedModel } from '@/lib/model/price-model/packed-model';
import { priceModelOf } from '@/lib/model/price-model/price-model-of';
import { served } from '@/lib/model/served';
import { LARGE, largeBook, MONTH, soldDaily } from '../../bench/large-book';
import { acyclicBooks, BOOK_DAYS, RUNS } from '../../generated-books';

const sourceOf = (period: CostedPeriod): ModelSource => ({ amounts: amountSource(period), served: served(period) });

test('unpackedModel(packedModel(model)) is the model, bit for bit, of any book', () => {
  fc.assert(
    fc.property(acyclicBooks, (facts) => {
      const period = costPeriod(facts, BOOK_DAYS);
      const model = priceModelOf(period, null);
      expect(unpackedModel(packedModel(model, sourceOf(period)))).toEqual(model);
    }),
    RUNS,
  );
});

test('packedModel(model) of 1,000 dishes, 40,000 lines and prices that change on 30 days takes at most 300 kB compressed', () => {
  const period = costPeriod(
    soldDaily(largeBook(LARGE, 30), (item, day) => 1 + ((item * 7 + day * 3) % 5)),
    MONTH,
  );
  const model = priceModelOf(period, null);
  expect([model.items.length, model.lines.parent.length, model.segments]).toEqual([1000, 40_000, 31]);
  const bytes = packedModel(model, sourceOf(period));
  expect(gzipSync(bytes).length).toBeLessThanOrEqual(300_000);
  expect(unpackedModel(bytes)).toEqual(model);
});

test('unpackedModel(bytes) of another edition is null', () => {
  const period = costPeriod(largeBook({ dishes: 2, components: 2, ingredients: 2, lines: 12 }), MONTH);
  const bytes = packedModel(priceModelOf(period, null), sourceOf(period));
  bytes[1] = 99 * 2; // three whole numbers follow each other; the first is the edition
  expect(unpackedModel(bytes)).toBeNull();
});
