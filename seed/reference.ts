import { readFileSync, writeFileSync } from 'node:fs';
import { foodTable } from './reference/food-table';

/** Writes the built-in reference of dessert ingredients from the figures of USDA SR28: the same bytes every time. */
const figures = readFileSync(new URL('./reference/sr28-figures.csv', import.meta.url), 'utf8');
writeFileSync(new URL('../lib/model/reference/foods.ts', import.meta.url), foodTable(figures));
