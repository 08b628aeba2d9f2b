import { capital } from '../phrase';
import { countWord } from '../portions';

/** Where the set menus of a mix stand, and the link that puts them elsewhere. */
export interface SetMenusWords {
  readonly where: string;
  readonly action: string;
}

/** Of so many set menus sold; null where there are none. */
export function setMenusWords(sold: number, isSpread: boolean, locale: string): SetMenusWords | null {
  if (sold <= 0) return null;
  const counted = `${capital(countWord(sold, locale))} ${sold === 1 ? 'set menu' : 'set menus'}`;
  const verb = sold === 1 ? 'is' : 'are';
  return isSpread
    ? { where: `${counted} ${verb} counted among the courses.`, action: 'Leave set menus in a section of their own' }
    : { where: `${counted} ${verb} not in these figures.`, action: 'Spread set menus over their courses' };
}
