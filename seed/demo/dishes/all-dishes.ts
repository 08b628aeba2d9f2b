import type { Recipe } from '../shapes';
import { ALL_YEAR } from './all-year';
import { DRINKS } from './drinks';
import { PRE_DESSERT } from './pre-dessert';
import { SEASONAL } from './seasonal';
import { SET_MENUS } from './set-menus';
import { TAKEAWAY } from './takeaway';

export const DISHES: readonly Recipe[] = [
  ...ALL_YEAR,
  ...SEASONAL,
  ...TAKEAWAY,
  ...DRINKS,
  ...SET_MENUS,
  ...PRE_DESSERT,
];
