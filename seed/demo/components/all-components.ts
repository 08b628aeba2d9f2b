import type { Component, Recipe } from '../shapes';
import { BASES_AND_CREAMS } from './bases-and-creams';
import { CHOCOLATE } from './chocolate';
import { CRISP } from './crisp';
import { FRUIT_AND_SYRUPS } from './fruit-and-syrups';
import { ICES } from './ices';
import { PASTRY_AND_SPONGES } from './pastry-and-sponges';
import { SWEETS } from './sweets';

/** Written down a month before the books begin. */
const FROM_THE_BEGINNING = '2025-04-01';

const WRITTEN: readonly Component[] = [
  ...BASES_AND_CREAMS,
  ...CHOCOLATE,
  ...ICES,
  ...PASTRY_AND_SPONGES,
  ...CRISP,
  ...FRUIT_AND_SYRUPS,
  ...SWEETS,
];

export const COMPONENTS: readonly Recipe[] = WRITTEN.map((component) => ({
  ...component,
  kind: 'component',
  from: component.from ?? FROM_THE_BEGINNING,
}));
