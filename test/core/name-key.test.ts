import { describe, expect, test } from 'vitest';
import { nameKey } from '@/lib/core/name-key';

describe('nameKey', () => {
  test('nameKey(name) passes over case, surrounding space and Unicode form', () => {
    expect(nameKey('  Crème Brûlée ')).toBe('crème brûlée');
    expect(nameKey('Cre\u0300me Bru\u0302le\u0301e')).toBe(nameKey('CRÈME BRÛLÉE'));
    expect(nameKey('Tart')).not.toBe(nameKey('Tarts'));
  });
});
