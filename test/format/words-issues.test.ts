import { describe, expect, test } from 'vitest';
import { issueText } from '@/lib/format/words/issues';
import { ISSUE_CODES } from '@/lib/model/issue';

const FACTS = {
  setting: 'q_factor_pct',
  value: '0',
  offers: ['Bay Dairy 1042', 'Harbour 7'],
  supplier: 'Bay Dairy',
  code: '1042',
  currency: 'GBP',
  unit: 'pinch',
  where: 'Ganache',
  missing: ['Honey', 'Butter', 'Salt'],
  recipe: 'Ganache',
  outputs: ['g'],
  output: 30,
  loss: 40,
  lines: 2,
  loop: ['Ganache', 'Glaze', 'Ganache'],
  portions: 3,
  items: 4,
  days: 9,
  needed: 10,
  revenue: '-12.00',
  invoice: 'BD-77',
  price: 12.5,
  last: 10,
  covers: 2,
  use: 'zest',
  part: 'yolk',
  sum: 0.9,
  choice: 'First',
  recipes: ['Brownie', 'Gingerbread'],
  minutes: 20,
  word: 'dairy',
  each: 1,
  names: 5,
  rows: 9,
  largest: ['Creme brul#', 'Tarte', 'Tea'],
  share: 0.125,
  from: '2026-10-01',
  until: '2026-10-10',
  begins: '2026-10-10',
};

describe.each(ISSUE_CODES.map((code) => ({ code })))('issueText($code)', ({ code }) => {
  test('is a whole sentence with every particular in place', () => {
    const text = issueText({ code, about: 'Double cream', facts: FACTS });
    expect(text).toMatch(/^[A-Z0-9“].*[.]$/);
    expect(text).not.toMatch(/undefined|null|NaN|\[object|\s\s|“”/);
  });
});

test('issueText(cycle) prints the loop by name', () => {
  const facts = { loop: ['Ganache', 'Glaze', 'Ganache'] };
  expect(issueText({ code: 'cycle', about: 'Ganache', facts })).toContain('Ganache, then Glaze, then Ganache');
});

test('issueText(stand-in-revenue) counts one portion in the singular', () => {
  const about = 'Lemon choux';
  expect(issueText({ code: 'stand-in-revenue', about, facts: { portions: 1 } })).toMatch(/^1 portion of Lemon choux/);
  expect(issueText({ code: 'stand-in-revenue', about, facts: { portions: 2 } })).toMatch(/^2 portions of Lemon choux/);
});

test('issueText(no-price) names the days without one', () => {
  const said = (days: object) =>
    issueText({ code: 'no-price', about: 'Egg', facts: { supplier: 'Farm', code: 'E1', ...days } });
  expect(said({})).toContain('Egg has no price in force: Farm E1.');
  expect(said({ from: null, until: '2026-10-10' })).toContain('Egg has no price before 2026-10-10: Farm E1.');
  expect(said({ from: '2026-10-06', until: null })).toContain('Egg has no price from 2026-10-06 on: Farm E1.');
  expect(said({ from: '2026-10-06', until: '2026-10-20' })).toContain('from 2026-10-06 until 2026-10-20:');
});

test('issueText(begins-late) names the day it begins, the first day on sale and the file', () => {
  const facts = { from: '2026-10-01', begins: '2026-10-10', kind: 'dish' };
  expect(issueText({ code: 'begins-late', about: 'Cake', facts })).toBe(
    'Cake has no recipe before 2026-10-10, and was on sale from 2026-10-01. Give it an earlier valid_from in recipes.csv.',
  );
});

test('issueText(sales-waiting) names the largest and counts the others', () => {
  const facts = { names: 5, rows: 31, portions: 620, largest: ['Creme brul#', 'Tarte', 'Tea'], share: 0.125 };
  expect(issueText({ code: 'sales-waiting', about: 'Marram House', facts })).toBe(
    '620 portions were sold (12.5 % of all) under 5 names that nothing here has, and are in no figure: Creme brul#, Tarte, Tea and 2 others. Write them into menu.csv or recipes.csv as the till spells them.',
  );
});

describe("issueText('price-waits')", () => {
  const waits = (price: number, last: number) =>
    issueText({ code: 'price-waits', about: 'Double cream', facts: { ...FACTS, price, last } });

  test('says how far the price is from the last one, and to which side', () => {
    expect(waits(12.5, 10)).toContain('at a price 25 % above the last one');
    expect(waits(7, 10)).toContain('at a price 30 % below the last one');
    expect(waits(7, 0)).toContain('at a price far from the last one');
  });
});
