import { describe, expect, test } from 'vitest';
import type { ItemId } from '@/lib/model/facts';
import { Book } from '../books';
import { costOn, issuesIn } from './plate';

type Stated = Parameters<Book['component']>[1];

/** A scoop of an ice whose batch costs 20.00 (2,000 g of mix at 0.01). */
function scoop(stated: Stated, quantity: number, unit: string): { cost: number | null; issues: readonly unknown[] } {
  const book = new Book();
  const mix: ItemId = book.ingredient('Mix', 'g', 0.01);
  const ice = book.component('Ice', stated, [2000, 'g', mix]);
  const dish = book.dish('Scoop', {}, [quantity, unit, ice]);
  book.menu(dish, 6);
  const facts = book.facts();
  return {
    cost: costOn(facts, dish),
    issues: issuesIn(facts).map(({ code, about, facts: particulars }) => [code, about, particulars]),
  };
}

describe('costPeriod: overrun', () => {
  // 1,900 ml of mix with 25 % air fill 2,375 ml
  test('costPeriod(overrun) makes more of the volume of the mix', () => {
    expect(scoop({ yields: [1900, 'ml'], overrun: 0.25 }, 95, 'ml').cost).toBeCloseTo((20 * 95) / 2375, 12);
    expect(scoop({ yields: [1900, 'ml'] }, 95, 'ml').cost).toBeCloseTo(1, 12);
  });

  // 2,000 g of it less 100 g in the churn: 5 % of both outputs, 1,900 g and 1,900 * 1.25 * 0.95 ml
  test('costPeriod(overrun with a second output and a loss) leaves the grams alone and loses of both', () => {
    const stated = { yields: [1900, 'ml'], also: [2000, 'g'], overrun: 0.25, batchLossG: 100 } as const;
    expect(scoop(stated, 50, 'g').cost).toBeCloseTo((20 * 50) / 1900, 12);
    expect(scoop(stated, 50, 'ml').cost).toBeCloseTo((20 * 50) / (1900 * 1.25 * 0.95), 12);
    const turned = { yields: [2000, 'g'], also: [1.9, 'l'], overrun: 0.25, batchLossG: 100 } as const;
    expect(scoop(turned, 50, 'ml').cost).toBeCloseTo((20 * 50) / (1900 * 1.25 * 0.95), 12);
  });

  test('costPeriod(overrun without the volume of the mix) asks for it', () => {
    const { cost, issues } = scoop({ yields: [2000, 'g'], overrun: 0.25 }, 50, 'g');
    expect(cost).toBeNull();
    expect(issues).toEqual([['no-mix-volume', 'Ice', { outputs: ['g'] }]]);
    expect(scoop({ overrun: 0.25 }, 50, 'g').issues).toEqual([['no-mix-volume', 'Ice', { outputs: ['g'] }]]);
  });
});
