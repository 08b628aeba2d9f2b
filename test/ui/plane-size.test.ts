import { expect, test } from 'vitest';
import { MIDDLE, NARROW, planeSizeFor, WIDE, withRoomFor } from '@/app/_ui/mix-plane/plane-size';

test('planeSizeFor(width) is the widest drawing that fits, the narrowest where none does', () => {
  expect(planeSizeFor(972)).toBe(WIDE);
  expect(planeSizeFor(971)).toBe(MIDDLE);
  expect(planeSizeFor(690)).toBe(MIDDLE);
  expect(planeSizeFor(358)).toBe(NARROW);
  expect(planeSizeFor(280)).toBe(NARROW);
});

test('withRoomFor(size, left, right) leaves the room there is, and makes more for long figures', () => {
  expect(withRoomFor(WIDE, ['12', '10'], ['high margin', 'from 8.17'])).toEqual(WIDE);
  const won = withRoomFor(WIDE, ['1,228,000'], ['from 1,221,957.48']);
  expect(won.left).toBe(16 + 9 * 7);
  expect(won.right).toBe(10 + 17 * 7);
  expect(withRoomFor(NARROW, ['12', '21,957.48'], ['from 21,957.48'])).toEqual({ ...NARROW, left: 16 + 9 * 7 });
});
