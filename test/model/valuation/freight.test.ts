import { describe, expect, test } from 'vitest';
import type { OfferId, PurchaseKind, PurchaseLine } from '@/lib/model/facts';
import { freightShares } from '@/lib/model/valuation/freight';
import { day } from '../../books';

const line = (kind: PurchaseKind, amount: number | null, stated: Partial<PurchaseLine> = {}): PurchaseLine => ({
  day: day('2026-10-05'),
  deliveredOn: null,
  supplier: 'Bay Dairy',
  invoice: 'I1',
  kind,
  offer: kind === 'goods' ? (1 as OfferId) : null,
  packs: 1,
  quantity: null,
  unit: null,
  amount,
  ...stated,
});
const spread = (...lines: PurchaseLine[]): (number | undefined)[] => {
  const shares = freightShares(lines);
  return lines.map((each) => shares.get(each));
};

describe('freightShares', () => {
  // 8.00 and a surcharge of 2.00 over 30.00 and 10.00 of goods: 7.50 and 2.50
  test('freightShares(lines) spreads the freight of an invoice over its goods by value', () => {
    expect(spread(line('goods', 30), line('freight', 8), line('goods', 10), line('freight', 2))).toEqual([
      7.5, 0, 2.5, 0,
    ]);
  });

  test('freightShares(lines) takes nothing to other invoices and other suppliers', () => {
    const other = [line('goods', 30, { invoice: 'I2' }), line('goods', 30, { supplier: 'Harbour' })];
    expect(spread(line('goods', 30), line('freight', 8), ...other)).toEqual([8, 0, undefined, undefined]);
  });

  test('freightShares(freight alone, without an invoice, or with goods of no value) spreads nothing', () => {
    expect(spread(line('freight', 8))).toEqual([undefined]);
    expect(spread(line('goods', 30, { invoice: null }), line('freight', 8, { invoice: null }))).toEqual([
      undefined,
      undefined,
    ]);
    expect(spread(line('goods', 0), line('goods', null), line('freight', 8))).toEqual([
      undefined,
      undefined,
      undefined,
    ]);
  });

  test('freightShares(lines) gives none to credits, deposits, returned goods and goods of no offer', () => {
    const others = [line('credit', -5), line('deposit', 7), line('goods', -6), line('goods', 9, { offer: null })];
    expect(spread(line('goods', 30), line('freight', 8), ...others)).toEqual([8, 0, ...others.map(() => undefined)]);
  });
});
