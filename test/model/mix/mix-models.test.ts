import { describe, expect, test } from 'vitest';
import { againstGoalValue, GOAL_VALUE } from '@/lib/model/mix/goal-value';
import { menuAverages } from '@/lib/model/mix/menu-averages';
import { MILLER, miller } from '@/lib/model/mix/miller';
import type { MenuAverages, MixFigures } from '@/lib/model/mix/mix-model';
import { MIX_MODELS } from '@/lib/model/mix/mix-models';
import { pavesic } from '@/lib/model/mix/pavesic';
import { WITH_LABOUR, withLabour } from '@/lib/model/mix/with-labour';

const item = (stated: Partial<MixFigures> = {}): MixFigures => ({
  ...{ sold: 70, expected: 100, margin: 6, netPrice: 10, food: 3, labour: 2 },
  ...stated,
});
const menu = (stated: Partial<MenuAverages> = {}): MenuAverages => ({
  ...{ popularityFactor: 0.7, meanMargin: 6, foodCost: 0.3, meanContribution: 420 },
  ...{ goalValue: 300, variableCost: 0.3, meanLabour: 2 },
  ...stated,
});

describe('miller', () => {
  test('miller(item, menu) wins with a low food cost and many sold, each threshold on the favourable side', () => {
    expect(miller(item(), menu())).toBe('winner');
    expect(miller(item({ food: 3.01 }), menu())).toBe('marginal');
    expect(miller(item({ sold: 69 }), menu())).toBe('marginal');
    expect(miller(item({ food: 3.01, sold: 69 }), menu())).toBe('loser');
  });

  test('miller(no revenue, or no price) is not said', () => {
    expect(miller(item(), menu({ foodCost: null }))).toBeNull();
    expect(miller(item({ netPrice: 0 }), menu())).toBeNull();
  });
});

describe('pavesic', () => {
  // 70 portions at 6 leave 420
  test('pavesic(item, menu) is prime with a low food cost and a contribution of the mean', () => {
    expect(pavesic(item(), menu())).toBe('prime');
    expect(pavesic(item({ food: 3.01 }), menu())).toBe('standard');
    expect(pavesic(item({ sold: 69 }), menu())).toBe('sleeper');
    expect(pavesic(item({ food: 3.01, margin: 5.99 }), menu())).toBe('problem');
    expect(pavesic(item(), menu({ foodCost: null }))).toBeNull();
  });
});

describe('againstGoalValue', () => {
  // (1 - 0.3) * 70 * 10 * (1 - (0.3 + 0.3)) = 196
  test('againstGoalValue(item, menu) is above from the menu’s own on', () => {
    expect(againstGoalValue(item(), menu({ goalValue: 196 }))).toBe('above');
    expect(againstGoalValue(item(), menu({ goalValue: 196.001 }))).toBe('below');
  });

  test('againstGoalValue(no stated variable cost, no price) is not said', () => {
    expect(againstGoalValue(item(), menu({ variableCost: null }))).toBeNull();
    expect(againstGoalValue(item(), menu({ goalValue: null }))).toBeNull();
    expect(againstGoalValue(item({ netPrice: 0 }), menu())).toBeNull();
  });
});

describe('withLabour', () => {
  test('withLabour(item, menu) adds light up to the mean labour, heavy above it', () => {
    expect(withLabour(item(), menu())).toBe('star-light');
    expect(withLabour(item({ labour: 2.01 }), menu())).toBe('star-heavy');
    expect(withLabour(item({ sold: 69, margin: 5 }), menu())).toBe('dog-light');
  });

  test('withLabour(unknown labour) is not said', () => {
    expect(withLabour(item({ labour: null }), menu())).toBeNull();
    expect(withLabour(item(), menu({ meanLabour: null }))).toBeNull();
  });
});

describe('menuAverages', () => {
  /*
   * 60 at 10.00 with 3.00 of food, leaving 6.50, and 40 at 5.00 with 2.00, leaving 2.75. Revenue 800, food 260, left 500, an item 250.
   * Goal value with a variable cost of 30 %: (1 - 0.325) * 50 * 8 * (1 - 0.625) = 101.25. Labour 60 * 2 + 40 * 1 = 160.
   */
  test('menuAverages(items, factor, variable cost) are those of the menu as a whole', () => {
    const two = [
      item({ sold: 60, netPrice: 10, food: 3, margin: 6.5, labour: 2 }),
      null,
      item({ sold: 40, netPrice: 5, food: 2, margin: 2.75, labour: 1 }),
    ];
    const averages = menuAverages(two, 0.7, 0.3);
    expect(averages).toMatchObject({ popularityFactor: 0.7, meanMargin: 5, meanContribution: 250, meanLabour: 1.6 });
    expect(averages?.foodCost).toBeCloseTo(0.325, 12);
    expect(averages?.goalValue).toBeCloseTo(101.25, 9);
    expect(menuAverages(two, 0.7, null)).toMatchObject({ goalValue: null, variableCost: null });
  });

  test('menuAverages(labour known of some, revenue of none, nothing sold) leaves out what it cannot say', () => {
    const some = [item({ sold: 10, labour: null }), item({ sold: 30, labour: 4 })];
    expect(menuAverages(some, 0.7, null)?.meanLabour).toBe(4);
    expect(menuAverages([item({ labour: null })], 0.7, null)?.meanLabour).toBeNull();
    expect(menuAverages([item({ netPrice: 0 })], 0.7, 0.3)).toMatchObject({ foodCost: null, goalValue: null });
    expect(menuAverages([item({ sold: 0 }), null], 0.7, null)).toBeNull();
  });
});

test('MIX_MODELS have each their own name, and classes that their function gives', () => {
  for (const [name, model] of Object.entries(MIX_MODELS)) {
    expect(model.name).toBe(name);
    expect(model.classes).toContain(model.classOf(item(), menu()));
  }
  expect(MILLER.classes).toHaveLength(3);
  expect(GOAL_VALUE.classes).toHaveLength(2);
  expect(WITH_LABOUR.classes).toHaveLength(8);
});
