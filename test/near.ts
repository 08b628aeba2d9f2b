import { expect } from 'vitest';

/** Two figures agree to a relative 1e-9 of a scale (their own size where none is named), or neither is known. */
export function expectNear(actual: number | null, expected: number | null, what: string, scale?: number): void {
  if (actual === null || expected === null) {
    expect(actual, what).toBe(expected);
    return;
  }
  const size = scale ?? Math.max(Math.abs(actual), Math.abs(expected));
  expect(Math.abs(actual - expected), `${what}: ${actual}, expected ${expected}`).toBeLessThanOrEqual(1e-9 * size);
}
