import { describe, expect, test } from 'vitest';
import { breakEvenSalesChange } from '@/lib/model/break-even-sales';

// A university handout on pricing (Mk 4010): a frozen pop sold at 2.50 with 1.00 of variable cost. The cut by 0.50 needs 50 % more
// portions as printed; what the rise may lose is derived.
describe('breakEvenSalesChange: published price changes', () => {
  test('breakEvenSalesChange(a cut of 0.50 on a margin of 1.50) is 50 % more', () => {
    expect(breakEvenSalesChange(1.5, -0.5)).toBeCloseTo(0.5, 12);
  });

  test('breakEvenSalesChange(a rise of 0.50 on a margin of 1.50) is 25 % less', () => {
    expect(breakEvenSalesChange(1.5, 0.5)).toBeCloseTo(-0.25, 12);
  });

  // Nagle & Hogan / Müller, The Strategy and Tactics of Pricing: %BE = -dP / (CM + dP), and with a change of cost -dCM / new CM, by way of
  // book notes. The table over margins and changes as shares of the old price is derived from that formula.
  const TABLE: readonly (readonly [margin: number, change: number, breakEven: number])[] = [
    [0.2, -0.1, 1],
    [0.2, -0.05, 0.333333],
    [0.2, 0.05, -0.2],
    [0.2, 0.1, -0.333333],
    [0.3, -0.1, 0.5],
    [0.3, -0.05, 0.2],
    [0.3, 0.05, -0.142857],
    [0.3, 0.1, -0.25],
    [0.4, -0.1, 0.333333],
    [0.4, -0.05, 0.142857],
    [0.4, 0.05, -0.111111],
    [0.4, 0.1, -0.2],
    [0.5, -0.1, 0.25],
    [0.5, -0.05, 0.111111],
    [0.5, 0.05, -0.090909],
    [0.5, 0.1, -0.166667],
    [0.6, -0.1, 0.2],
    [0.6, -0.05, 0.090909],
    [0.6, 0.05, -0.076923],
    [0.6, 0.1, -0.142857],
    [0.7, -0.1, 0.166667],
    [0.7, -0.05, 0.076923],
    [0.7, 0.05, -0.066667],
    [0.7, 0.1, -0.125],
    [0.8, -0.1, 0.142857],
    [0.8, -0.05, 0.066667],
    [0.8, 0.05, -0.058824],
    [0.8, 0.1, -0.111111],
  ];
  test.each(TABLE)('breakEvenSalesChange(margin %f, change %f) is %f', (margin, change, breakEven) => {
    expect(breakEvenSalesChange(margin, change)).toBeCloseTo(breakEven, 6);
  });

  // OpenStax, Principles of Accounting vol. 2: Managerial Accounting (Franklin, Graybeal, Cooper), sec. 3.3: a coffee shop of fixed costs 2,475
  // sells 1,500 cups at 3.75 with 1.50 of variable cost and earns 900. At 4.25 it earns 1,650, at a variable cost of 1.55 it earns 825. That
  // the changed portions earn the 900 again is derived.
  test.each([
    ['a price of 4.25', 0.5, 0, 1650],
    ['a variable cost of 1.55', 0, 0.05, 825],
  ])('breakEvenSalesChange(coffee shop, %s) leaves the profit of 900', (_, price, cost, printed) => {
    const margin = 3.75 - 1.5 + price - cost;
    expect(1500 * margin - 2475).toBeCloseTo(printed, 9);
    const change = breakEvenSalesChange(2.25, price, cost) ?? Number.NaN;
    expect(1500 * (1 + change) * margin - 2475).toBeCloseTo(900, 9);
  });

  test('breakEvenSalesChange(a cut by the whole margin, or more) is null', () => {
    expect(breakEvenSalesChange(1.5, -1.5)).toBeNull();
    expect(breakEvenSalesChange(1.5, -1, 1)).toBeNull();
  });

  test('breakEvenSalesChange(price and cost rise alike) is none', () => {
    expect(breakEvenSalesChange(1.5, 0.25, 0.25)).toBe(0);
  });
});
