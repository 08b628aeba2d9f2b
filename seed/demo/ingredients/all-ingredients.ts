import type { Ingredient } from '../shapes';
import { CELLAR_AND_BOXES } from './cellar-and-boxes';
import { COCOA_AND_NUTS } from './cocoa-and-nuts';
import { DAIRY_AND_EGGS } from './dairy-and-eggs';
import { DRY_STORE } from './dry-store';
import { FRUIT_AND_HERBS } from './fruit-and-herbs';
import { SUGARS } from './sugars';

export const INGREDIENTS: readonly Ingredient[] = [
  ...DAIRY_AND_EGGS,
  ...COCOA_AND_NUTS,
  ...SUGARS,
  ...DRY_STORE,
  ...FRUIT_AND_HERBS,
  ...CELLAR_AND_BOXES,
];
