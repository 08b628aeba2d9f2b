import type { Component, Recipe } from '../shapes';
import { BASES } from './bases';
import { CHOCOLATE } from './chocolate';
import { CREAMS } from './creams';
import { CRISP } from './crisp';
import { FRUIT_AND_SYRUPS } from './fruit-and-syrups';
import { ICES } from './ices';
import { MOUSSES_AND_GANACHES } from './mousses-and-ganaches';
import { PASTRY } from './pastry';
import { SPONGES } from './sponges';
import { SWEETS } from './sweets';

/** Written down a month before the books begin. */
const FROM_THE_BEGINNING = '2025-04-01';

const WRITTEN: readonly Component[] = [
  ...BASES,
  ...CREAMS,
  ...MOUSSES_AND_GANACHES,
  ...CHOCOLATE,
  ...ICES,
  ...PASTRY,
  ...SPONGES,
  ...CRISP,
  ...FRUIT_AND_SYRUPS,
  ...SWEETS,
];

export const COMPONENTS: readonly Recipe[] = WRITTEN.map((component) => ({
  ...component,
  kind: 'component',
  from: component.from ?? FROM_THE_BEGINNING,
}));
