import { describe, expect, test } from 'vitest';
import type { ItemId, MenuPrice } from '@/lib/model/facts';
import { netPrice } from '@/lib/model/menu-price';

function gross(price: number, percent: number): MenuPrice {
  return {
    item: 1 as ItemId,
    channel: 'dine_in',
    validFrom: null,
    price,
    tax: percent / 100,
    taxIncluded: true,
    commission: null,
  };
}

// HM Revenue & Customs' guide and Leicester City Council: tax inside a gross price is gross * r / (100 + r); fractions 1/6 and 1/21.
describe('netPrice', () => {
  test.each([
    [105, 5, 5],
    [60, 20, 10],
    [80, 5, 3.81],
  ])('netPrice(%d with %d per cent inside) leaves out %d of tax', (price, percent, tax) => {
    expect(price - (netPrice(gross(price, percent)) ?? 0)).toBeCloseTo(tax, 2);
  });

  // The same source's fractions: a sixth of a gross price at 20 per cent is tax, a twenty-first at 5 per cent.
  test.each([
    [20, 6],
    [5, 21],
  ])('netPrice(gross with %d per cent inside) leaves out one part in %d', (percent, parts) => {
    for (const price of [1, 13.5, 84, 9999.99]) {
      expect(price - (netPrice(gross(price, percent)) ?? 0)).toBeCloseTo(price / parts, 9);
    }
  });

  test('netPrice(100 without 20 per cent) is 100: a guest pays 120', () => {
    expect(netPrice({ ...gross(100, 20), taxIncluded: false })).toBe(100);
    expect(netPrice(gross(120, 20))).toBeCloseTo(100, 10);
  });

  test('netPrice(off the menu) is no price', () => {
    expect(netPrice({ ...gross(0, 20), price: null })).toBeNull();
  });
});
