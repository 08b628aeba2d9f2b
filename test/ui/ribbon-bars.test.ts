import { expect, test } from 'vitest';
import { ribbonBars, ribbonStart } from '@/app/_ui/period-ribbon/ribbon-bars';

test('ribbonBars(costs, line, height) stand on the line: above it costs more, below less', () => {
  const { lineY, bars } = ribbonBars([0.27, 0.24, null], 0.255, 40);
  expect(bars[0]?.y).toBeLessThan(lineY);
  expect((bars[0]?.y ?? 0) + (bars[0]?.height ?? 0)).toBeCloseTo(lineY, 9);
  expect(bars[1]?.y).toBeCloseTo(lineY, 9);
  expect(bars[0]?.height).toBeCloseTo(bars[1]?.height ?? 0, 9);
  expect(bars[2]).toBeNull();
});

test('ribbonBars(costs, line, height) stay within the height', () => {
  for (const costs of [[0.4, 0.1, 0.26], [0.9, 0.8], [0.01], [0.255]]) {
    const { lineY, bars } = ribbonBars(costs, 0.255, 40);
    expect(lineY).toBeGreaterThanOrEqual(0);
    expect(lineY).toBeLessThanOrEqual(40);
    for (const bar of bars) {
      expect(bar?.y).toBeGreaterThanOrEqual(0);
      expect((bar?.y ?? 0) + (bar?.height ?? 0)).toBeLessThanOrEqual(40);
    }
  }
});

// A tenth of a point of 34 px a 3 points is 1.1 px.
test('ribbonBars(costs, line, height) do not blow up a small departure', () => {
  expect(ribbonBars([0.256], 0.255, 40).bars[0]?.height).toBeCloseTo((34 * 0.001) / 0.03, 9);
});

test('ribbonStart(count, chosen, size) shows the latest months, or those from the chosen one on', () => {
  expect(ribbonStart(18, 16, 18)).toBe(0);
  expect(ribbonStart(30, 29, 18)).toBe(12);
  expect(ribbonStart(30, 3, 18)).toBe(3);
  expect(ribbonStart(30, null, 18)).toBe(12);
  expect(ribbonStart(5, 2, 18)).toBe(0);
});
