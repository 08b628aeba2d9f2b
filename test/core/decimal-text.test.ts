import { expect, test } from 'vitest';
import { shortestDouble } from '@/lib/core/decimal-text';

test('shortestDouble(text) is the fifteen digits that a spreadsheet shows of what it keeps', () => {
  const read = ['0.30000000000000004', '1E-3', '12.50', '-3', '1.0000000000000002', '43', '1e3', '.5'];
  expect(read.map(shortestDouble)).toEqual(['0.3', '0.001', '12.5', '-3', '1', '43', '1000', '0.5']);
  expect(['', 'a', '1,5', '1e9999', '0x10', '#N/A'].map(shortestDouble)).toEqual([null, null, null, null, null, null]);
});
