import { expect, test } from 'vitest';
import { contributionCurves } from '@/app/_ui/mix-plane/contribution-curves';
import { planeDomain } from '@/app/_ui/mix-plane/plane-domain';
import type { PlaneFacts, PlaneMark } from '@/app/_ui/mix-plane/plane-mark';

const SOLD = 3412;

test('contributionCurves(domain, sold, count) are round sums, and every point on one leaves that sum', () => {
  const curves = contributionCurves({ share: [0, 0.136], margin: [3.35, 12.75] }, SOLD, 6);
  expect(curves.map((curve) => curve.level)).toEqual([500, 1000, 2000, 3000, 4000, 5000]);
  for (const { level, points } of curves) {
    for (const [share, margin] of points) expect(share * SOLD * margin).toBeCloseTo(level, 6);
  }
});

test('contributionCurves(domain, sold, count) start at the top of the plot and stay within it', () => {
  for (const { points } of contributionCurves({ share: [0, 0.136], margin: [-2, 12.75] }, SOLD, 6)) {
    expect(points[0]?.[1]).toBeCloseTo(12.75, 9);
    for (const [share] of points) expect(share).toBeLessThanOrEqual(0.136 + 1e-12);
  }
});

test('contributionCurves(domain, sold, count) are none where nothing is left or sold', () => {
  expect(contributionCurves({ share: [0, 0.5], margin: [-4, -1] }, SOLD, 6)).toEqual([]);
  expect(contributionCurves({ share: [0, 0.5], margin: [1, 4] }, 0, 6)).toEqual([]);
});

function mark(share: number, margin: number, spread: PlaneMark['spread'] = null): PlaneMark {
  return {
    item: 'x',
    label: 'x',
    section: null,
    shape: 'circle',
    share,
    margin,
    popularFrom: null,
    class: null,
    doubtful: false,
    spread,
    reading: [],
  };
}

function facts(marks: readonly PlaneMark[], change: Partial<PlaneFacts> = {}): PlaneFacts {
  return { marks, sold: SOLD, popularity: null, margin: null, currencySign: '€', locale: 'en-GB', ...change };
}

test('planeDomain(facts) holds every mark with its region and both lines', () => {
  const { share, margin } = planeDomain(
    facts([mark(0.1, 8, { share: 0.02, margin: 1 }), mark(0.02, 4)], {
      popularity: { low: 0.2, high: 0.2, words: '', short: '' },
      margin: { value: 12, words: ['', ''], atAxis: '' },
    }),
  );
  expect(share[1]).toBeGreaterThan(0.2);
  expect(margin[0]).toBeLessThan(4);
  expect(margin[1]).toBeGreaterThan(12);
});

test('planeDomain(facts) opens a span where all margins are alike, and where there is nothing', () => {
  const alike = planeDomain(facts([mark(0.5, 8), mark(0.5, 8)])).margin;
  expect(alike[0]).toBeLessThan(8);
  expect(alike[1]).toBeGreaterThan(8);
  const zero = planeDomain(facts([mark(0, 0)]));
  expect(zero.margin[1]).toBeGreaterThan(zero.margin[0]);
  expect(zero.share[1]).toBeGreaterThan(0);
  expect(planeDomain(facts([])).margin).toEqual([0, 1]);
});
