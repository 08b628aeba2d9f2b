import { expect, test } from 'vitest';
import { may } from '@/lib/access/may';

test.each([
  ['owner', 'manage', true],
  ['owner', 'change-kitchen', true],
  ['chef', 'change-kitchen', true],
  ['chef', 'see-wages', false],
  ['chef', 'close', false],
  ['accountant', 'close', true],
  ['accountant', 'change-kitchen', false],
] as const)('may(%s, %s) is %s', (role, action, allowed) => {
  expect(may(role, action)).toBe(allowed);
});
