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

describe("issueText('price-waits')", () => {
  const waits = (price: number, last: number) =>
    issueText({ code: 'price-waits', about: 'Double cream', facts: { ...FACTS, price, last } });

  test('says how far the price is from the last one, and to which side', () => {
    expect(waits(12.5, 10)).toContain('at a price 25 % above the last one');
    expect(waits(7, 10)).toContain('at a price 30 % below the last one');
    expect(waits(7, 0)).toContain('at a price far from the last one');
  });
});
