import type { Component } from '../shapes';

/** What goes into the box to take away. */
export const SWEETS: readonly Component[] = [
  {
    name: 'Sea salt bonbons',
    gives: [84, 'each'],
    also: [960, 'g'],
    breakagePct: 5,
    handsOn: [55, 'pastry chef'],
    keepsDays: 14,
    smallestBatch: 84,
    lines: [
      ['Dark couverture 60 %', 560, 'g'],
      ['Cocoa butter', 20, 'g'],
      ['Dulse caramel', 400, 'g'],
    ],
  },
  {
    name: 'Praline squares',
    gives: [80, 'each'],
    also: [940, 'g'],
    breakagePct: 3,
    handsOn: [40, 'pastry chef'],
    keepsDays: 14,
    smallestBatch: 80,
    lines: [
      ['Hazelnut praline', 420, 'g'],
      ['Milk couverture 40 %', 320, 'g'],
      ['Dark couverture 60 %', 220, 'g'],
    ],
  },
  {
    name: 'Chewy caramels',
    gives: [82, 'each'],
    also: [1150, 'g'],
    breakagePct: 2,
    handsOn: [35, 'commis'],
    keepsDays: 21,
    smallestBatch: 82,
    lines: [
      ['Caster sugar', 460, 'g'],
      ['Glucose syrup', 240, 'g'],
      ['Double cream', 480, 'ml'],
      ['Unsalted butter', 160, 'g'],
      ['Barley malt extract', 60, 'g'],
      ['Sea salt flakes', 6, 'g'],
    ],
  },
];
