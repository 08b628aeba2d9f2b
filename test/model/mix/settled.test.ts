import { describe, expect, test } from 'vitest';
import { verdict } from '@/lib/model/mix/settled';

const shares = (star: number, plowhorse: number, puzzle = 0, dog = 0) => ({ star, plowhorse, puzzle, dog });

describe('verdict', () => {
  test('verdict(now) is settled from 90 % in the class of the period on', () => {
    expect(verdict({ class: 'star', classShares: shares(0.9, 0.1) }, null)).toEqual({ settled: true, between: null });
    expect(verdict({ class: 'star', classShares: shares(0.8995, 0.1005) }, null)).toEqual({
      settled: false,
      between: ['star', 'plowhorse'],
    });
  });

  test('verdict(now) is not settled in another class than the period gives', () => {
    expect(verdict({ class: 'plowhorse', classShares: shares(0.95, 0.05) }, null)).toEqual({
      settled: false,
      between: ['star', 'plowhorse'],
    });
  });

  test('verdict(now) near both lines lies between the class of the period and the likeliest other one', () => {
    expect(verdict({ class: 'dog', classShares: shares(0.1555, 0.2985, 0.2525, 0.2935) }, null).between).toEqual([
      'plowhorse',
      'dog',
    ]);
    expect(verdict({ class: 'dog', classShares: shares(0.4, 0.35, 0, 0.25) }, null).between).toEqual(['star', 'dog']);
  });

  test('verdict(now, before) asks the period before as well, where it says', () => {
    const now = { class: 'star', classShares: shares(0.95, 0.05) } as const;
    expect(verdict(now, { class: 'star', classShares: shares(0.92, 0.08) }).settled).toBe(true);
    expect(verdict(now, { class: 'star', classShares: shares(0.7, 0, 0.3) })).toEqual({
      settled: false,
      between: ['star', 'puzzle'],
    });
    expect(verdict(now, { class: 'dog', classShares: shares(0, 0, 0, 1) })).toEqual({
      settled: false,
      between: ['dog', 'star'],
    });
    expect(verdict(now, { class: null, classShares: null }).settled).toBe(true);
  });

  test('verdict(now) breaks a tie in favour of the class of the period', () => {
    expect(verdict({ class: 'plowhorse', classShares: shares(0.5, 0.5) }, null).between).toEqual(['plowhorse', 'star']);
    expect(verdict({ class: 'dog', classShares: shares(1, 0) }, null).between).toEqual(['star', 'dog']);
  });

  test('verdict(no class or no resamples) says nothing', () => {
    expect(verdict({ class: null, classShares: shares(1, 0) }, null)).toEqual({ settled: null, between: null });
    expect(verdict({ class: 'star', classShares: null }, null)).toEqual({ settled: null, between: null });
  });
});
