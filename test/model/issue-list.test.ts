import { describe, expect, test } from 'vitest';
import type { Day } from '@/lib/core/days';
import type { Issue } from '@/lib/model/issue';
import { inOrder, issueList } from '@/lib/model/issue-list';

const density = (about: string, recipe: string, on?: number): Issue => ({
  code: 'no-density',
  about,
  facts: { recipe, unit: 'ml' },
  ...(on === undefined ? {} : { day: on as Day }),
});
function kept(...issues: Issue[]): readonly string[] {
  const list = issueList();
  for (const issue of issues) list.add(issue);
  return list.issues().map(({ about, facts, day }) => `${about} ${facts.recipe} ${day}`);
}

describe('issueList', () => {
  test('issueList() keeps of one missing fact the issue that holds first, whichever comes first', () => {
    expect(kept(density('Milk', 'A', 5), density('Milk', 'B', 3))).toEqual(['Milk B 3']);
    expect(kept(density('Milk', 'B', 3), density('Milk', 'A', 5))).toEqual(['Milk B 3']);
    expect(kept(density('Milk', 'A', 5), density('Milk', 'B'))).toEqual(['Milk B undefined']);
  });

  test('issueList() keeps on the same day the one whose recipe comes first by name', () => {
    expect(kept(density('Milk', 'B', 3), density('Milk', 'A', 3))).toEqual(['Milk A 3']);
    expect(kept(density('Milk', 'A', 3), density('Milk', 'B', 3))).toEqual(['Milk A 3']);
    expect(kept(density('Milk', 'A', 3), density('Cream', 'A', 3))).toEqual(['Cream A 3', 'Milk A 3']);
  });

  test('issueList() keeps issues apart whose particulars differ in more than the recipe', () => {
    const asked = (recipe: string, unit: string): Issue => ({
      code: 'no-output-unit',
      about: 'Foam',
      facts: { recipe, unit, outputs: ['ml'] },
    });
    expect(kept(asked('A', 'g'), asked('B', 'g'), asked('A', 'each'))).toEqual([
      'Foam A undefined',
      'Foam A undefined',
    ]);
  });
});

describe('inOrder', () => {
  test('inOrder(a, b) goes by rule, then by name, then by particulars', () => {
    const issues: Issue[] = [
      { code: 'no-sales', about: 'A', facts: {} },
      density('Milk', 'B'),
      density('Milk', 'A'),
      density('Cream', 'Z'),
      { code: 'no-offer', about: 'Z', facts: {} },
      { code: 'setting-defaulted', about: 'z', facts: {} },
    ];
    const sorted = issues
      .sort(inOrder)
      .map(({ code, about, facts }) => `${code} ${about} ${facts.recipe ?? ''}`.trim());
    expect(sorted).toEqual([
      'no-offer Z',
      'no-density Cream Z',
      'no-density Milk A',
      'no-density Milk B',
      'no-sales A',
      'setting-defaulted z',
    ]);
  });
});
