import { expect, test } from 'vitest';
import { setMenusWords } from '@/lib/format/words/set-menus';

test('setMenusWords(sold, spread) says where they stand and offers the other', () => {
  expect(setMenusWords(314, false, 'en-IE')).toEqual({
    where: '314 set menus are not in these figures.',
    action: 'Spread set menus over their courses',
  });
  expect(setMenusWords(1, true, 'en-IE')).toEqual({
    where: 'One set menu is counted among the courses.',
    action: 'Leave set menus in a section of their own',
  });
  expect(setMenusWords(0, true, 'en-IE')).toBeNull();
});
