import { expect, test } from 'vitest';
import { sectionIssues } from '@/lib/model/mix/mix-issues';

test('sectionIssues(no trading day) asks for sales, unless sales wait for a name', () => {
  expect(sectionIssues('Tarts', 8, 0)).toEqual([{ code: 'no-sales', about: 'Tarts', facts: {} }]);
  expect(sectionIssues('Tarts', 8, 0, true)).toEqual([]);
});

test('sectionIssues(few items, few days) names both, from fewer than six and fewer than fourteen on', () => {
  expect(sectionIssues('Tarts', 5, 13).map(({ code, facts }) => [code, facts])).toEqual([
    ['few-items', { items: 5 }],
    ['few-trading-days', { days: 13 }],
  ]);
  expect(sectionIssues('Tarts', 6, 14)).toEqual([]);
});
