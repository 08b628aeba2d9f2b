import { expect } from 'vitest';

/** A printed number, to be within half of its last place of the figure it was made from. */
export function expectPrinted(text: string | undefined, value: number): void {
  const plain = (text ?? '').replaceAll(',', '').replace('\u2212', '-').replace('+', '');
  expect(plain).toMatch(/^-?\d+(\.\d+)?$/);
  const places = plain.split('.')[1]?.length ?? 0;
  expect(Math.abs(Number(plain) - value)).toBeLessThanOrEqual(0.5 * 10 ** -places + 1e-9);
}
