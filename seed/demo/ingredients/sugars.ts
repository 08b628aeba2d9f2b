import type { Ingredient } from '../shapes';

export const SUGARS: readonly Ingredient[] = [
  { name: 'Caster sugar', measure: 'g', group: 'Sugars', contains: 'none', mayContain: 'none', place: 'Dry store' },
  { name: 'Icing sugar', measure: 'g', group: 'Sugars', contains: 'none', mayContain: 'none', place: 'Dry store' },
  { name: 'Muscovado sugar', measure: 'g', group: 'Sugars', contains: 'none', mayContain: 'none', place: 'Dry store' },
  // glucose and dextrose made from wheat stand among the exemptions of Annex II: not declared as gluten
  {
    name: 'Glucose syrup',
    measure: 'g',
    group: 'Sugars',
    contains: 'none',
    mayContain: 'sulphites',
    place: 'Dry store',
  },
  { name: 'Dextrose', measure: 'g', group: 'Sugars', contains: 'none', mayContain: 'none', place: 'Dry store' },
  { name: 'Invert sugar', measure: 'g', group: 'Sugars', contains: 'none', mayContain: 'none', place: 'Dry store' },
  { name: 'Isomalt', measure: 'g', group: 'Sugars', contains: 'none', mayContain: 'none', place: 'Dry store' },
  { name: 'Heather honey', measure: 'g', group: 'Sugars', contains: 'none', mayContain: 'none', place: 'Dry store' },
  { name: 'Golden syrup', measure: 'g', group: 'Sugars', contains: 'none', mayContain: 'none', place: 'Dry store' },
  {
    name: 'Black treacle',
    measure: 'g',
    group: 'Sugars',
    contains: 'none',
    mayContain: 'sulphites',
    place: 'Dry store',
  },
  {
    name: 'Barley malt extract',
    measure: 'g',
    group: 'Sugars',
    contains: 'gluten',
    mayContain: 'none',
    place: 'Dry store',
  },
];
