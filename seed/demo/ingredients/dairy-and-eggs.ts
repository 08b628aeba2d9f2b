import type { Ingredient } from '../shapes';

// Densities: USDA SR28, grams of a US cup / 236.588 ml: cream 238 g, milk 244 g. Eggs: SR28, shell 12 % of the bought weight,
// 56.8 g in the shell for a large one (derived from 50 g edible).
export const DAIRY_AND_EGGS: readonly Ingredient[] = [
  {
    name: 'Double cream',
    measure: 'ml',
    group: 'Dairy',
    gramsPerMl: 1.006,
    contains: 'milk',
    mayContain: 'none',
    place: 'Walk-in',
  },
  {
    name: 'Whole milk',
    measure: 'ml',
    group: 'Dairy',
    gramsPerMl: 1.031,
    contains: 'milk',
    mayContain: 'none',
    place: 'Walk-in',
  },
  { name: 'Unsalted butter', measure: 'g', group: 'Dairy', contains: 'milk', mayContain: 'none', place: 'Walk-in' },
  { name: 'Crème fraîche', measure: 'g', group: 'Dairy', contains: 'milk', mayContain: 'none', place: 'Walk-in' },
  { name: 'Mascarpone', measure: 'g', group: 'Dairy', contains: 'milk', mayContain: 'none', place: 'Walk-in' },
  { name: 'Natural yoghurt', measure: 'g', group: 'Dairy', contains: 'milk', mayContain: 'none', place: 'Walk-in' },
  {
    name: 'Skimmed milk powder',
    measure: 'g',
    group: 'Dairy',
    contains: 'milk',
    mayContain: 'none',
    place: 'Dry store',
  },
  {
    name: 'Shell eggs',
    measure: 'each',
    group: 'Eggs',
    gramsEach: 57,
    usablePct: 88,
    contains: 'eggs',
    mayContain: 'none',
    place: 'Walk-in',
  },
  {
    name: 'Egg yolk, pasteurised',
    measure: 'g',
    group: 'Eggs',
    contains: 'eggs',
    mayContain: 'none',
    place: 'Walk-in',
  },
];
