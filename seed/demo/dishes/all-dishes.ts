import type { Recipe } from '../shapes';
import { ALL_YEAR_CHOCOLATE } from './all-year-chocolate';
import { ALL_YEAR_FRUIT_AND_CREAM } from './all-year-fruit-and-cream';
import { DRINKS } from './drinks';
import { PRE_DESSERT } from './pre-dessert';
import { SEASONAL } from './seasonal';
import { SET_MENUS } from './set-menus';
import { TAKEAWAY } from './takeaway';

export const DISHES: readonly Recipe[] = [
  ...ALL_YEAR_CHOCOLATE,
  ...ALL_YEAR_FRUIT_AND_CREAM,
  ...SEASONAL,
  ...TAKEAWAY,
  ...DRINKS,
  ...SET_MENUS,
  ...PRE_DESSERT,
];
