import { gzipSync } from 'node:zlib';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { packer, unpacker } from '@/lib/core/byte-pack';
import { costPeriod } from '@/lib/model/costed-period';
import type { FlatLines } from '@/lib/model/flat-lines';
import { amountSource } from '@/lib/model/price-model/amount-source';
import type { AmountSource } from '@/lib/model/price-model/packed-amounts';
import { packAmounts, unpackAmounts } from '@/lib/model/price-model/packed-amounts';
import { packLines, unpackLines } from '@/lib/model/price-model/packed-lines';
import { LARGE, largeBook, MONTH } from '../../bench/large-book';
import { acyclicBooks, BOOK_DAYS, RUNS } from '../../generated-books';

function packed(lines: FlatLines, source: AmountSource): Uint8Array<ArrayBuffer> {
  const to = packer();
  packLines(to, lines, source);
  return to.bytes();
}

test('unpackLines(packLines(lines)) is the same lines, bit for bit, of any book', () => {
  fc.assert(
    fc.property(acyclicBooks, (facts) => {
      const period = costPeriod(facts, BOOK_DAYS);
      const { lines } = period;
      expect(unpackLines(unpacker(packed(lines, amountSource(period))))).toEqual(lines);
    }),
    RUNS,
  );
});

test('unpackAmounts(packAmounts(amounts)) is the same whatever its source says', () => {
  const line = fc.record({
    amount: fc.double({ noNaN: true }),
    child: fc.nat({ max: 9 }),
    made: fc.oneof(fc.double(), fc.integer()),
    usable: fc.double(),
  });
  fc.assert(
    fc.property(fc.array(line), (lines) => {
      const child = Int32Array.from(lines, (each) => each.child);
      const amounts = Float64Array.from(lines, (each) => each.amount);
      const source: AmountSource = {
        made: (index) => lines[index]?.made ?? 1,
        usableYield: (index) => lines[index]?.usable ?? 1,
      };
      const to = packer();
      packAmounts(to, amounts, child, source);
      expect(unpackAmounts(unpacker(to.bytes()), child)).toEqual(amounts);
    }),
  );
});

test('packLines(lines) of 40,000 lines of measured quantities takes less than 160 kB compressed', () => {
  const period = costPeriod(largeBook(LARGE), MONTH);
  const bytes = packed(period.lines, amountSource(period));
  expect(period.lines.parent).toHaveLength(40_000);
  expect(gzipSync(bytes).length).toBeLessThan(160_000);
});
