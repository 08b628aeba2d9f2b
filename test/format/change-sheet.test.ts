import { describe, expect, test } from 'vitest';
import { changeSheet, contributionAccount } from '@/lib/format/change-sheet';

const PURSE = { currency: 'EUR', locale: 'en' };
const row = (item: string, before: number, price: number, recipe: number) => ({
  ...{ item, isEstimate: false, before: String(before), price: String(price), recipe: String(recipe) },
});

describe('changeSheet', () => {
  test('changeSheet(change, purse) prints rows that moved, and one for those that did not', () => {
    const ingredients = [
      row('Cream', 0.6, 0.05, -0.13),
      row('Sugar', 0.02, 0, 0),
      row('Honey', 0, 0, 0.22),
      row('Salt', 0.001, 0, 0),
    ];
    const sheet = changeSheet({ before: '0.621', after: '0.761', price: '0.05', recipe: '0.09', ingredients }, PURSE);
    expect(sheet.rows).toEqual([
      { item: 'Cream', isEstimate: false, before: '0.600', price: '+0.050', recipe: '−0.130', after: '0.520' },
      { item: 'Honey', isEstimate: false, before: '0.000', price: '0.000', recipe: '+0.220', after: '0.220' },
    ]);
    expect(sheet.rest).toEqual({ count: 2, before: '0.021', price: '0.000', recipe: '0.000', after: '0.021' });
    expect(sheet.total).toEqual({ before: '0.621', price: '+0.050', recipe: '+0.090', after: '0.761' });
  });

  // three thirds of a thousandth: one is printed, so that the column sums to what stands under it
  test('changeSheet(change, purse) adds up as printed, whatever rounding does', () => {
    const ingredients = ['A', 'B', 'C'].map((item) => row(item, 1 / 3, 0.001 / 3, 0.001 / 3));
    const sheet = changeSheet({ before: '1', after: '1.002', price: '0.001', recipe: '0.001', ingredients }, PURSE);
    const steps = (text: string) => Math.round(Number(text.replace('−', '-')) * 1000);
    const rows = [...sheet.rows, ...(sheet.rest ? [sheet.rest] : [])];
    for (const each of [...rows, sheet.total]) {
      expect(steps(each.before) + steps(each.price) + steps(each.recipe)).toBe(steps(each.after));
    }
    for (const of of ['before', 'price', 'recipe', 'after'] as const) {
      expect(rows.reduce((sum, each) => sum + steps(each[of]), 0)).toBe(steps(sheet.total[of]));
    }
    expect(steps(sheet.total.after)).toBe(1002);
  });

  test('changeSheet(change, purse) of a currency without decimals prints one', () => {
    const sheet = changeSheet(
      { before: '300', after: '320', price: '20', recipe: '0', ingredients: [row('Cream', 300, 20, 0)] },
      { currency: 'JPY', locale: 'en' },
    );
    expect(sheet.total).toEqual({ before: '300.0', price: '+20.0', recipe: '0.0', after: '320.0' });
  });
});

describe('contributionAccount', () => {
  test('contributionAccount(contribution, purse) goes from what was left before to what is now, in parts that sum as printed', () => {
    const account = contributionAccount(
      {
        ...{ before: '733.285', after: '673.196', volume: '90.359', mix: '-148.441', menuPrice: '0' },
        ...{ discounts: '0', ingredientPrice: '-2.008', recipe: '0.001' },
      },
      PURSE,
    );
    expect(account.before).toBe('733.29');
    expect(account.after).toBe('673.20');
    const figures = account.parts.map(({ figure }) => Number(figure.replace('−', '-')));
    expect(figures.reduce((sum, each) => sum + Math.round(each * 100), 0)).toBe(67320 - 73329);
    expect(account.parts.map(({ part }) => part)[0]).toBe('volume');
  });
});
