import type { Recipe } from '../shapes';

const FRUIT_AND_CREAM = 'Fruit, cream and cheese';
const OPENING = '2025-05-01';

/** The rest of what is there from the first day on. */
export const ALL_YEAR_FRUIT_AND_CREAM: readonly Recipe[] = [
  {
    name: 'Lemon tart, scorched meringue',
    kind: 'dish',
    from: OPENING,
    section: FRUIT_AND_CREAM,
    plating: [3, 'finisher'],
    breakagePct: 3,
    lines: [
      ['Tart shells', 1, 'each'],
      ['Lemon curd', 90, 'g'],
      ['Italian meringue', 90, 'ml'],
      ['Crème fraîche ice', 45, 'ml'],
      ['Raspberries', 18, 'g'],
    ],
  },
  {
    name: 'Burnt honey parfait',
    kind: 'dish',
    from: OPENING,
    section: FRUIT_AND_CREAM,
    plating: [3, 'finisher'],
    breakagePct: 1,
    lines: [
      ['Honey parfait', 150, 'ml'],
      ['Oat crunch', 24, 'g'],
      ['Yoghurt cream', 60, 'ml'],
      ['Blanched hazelnuts', 10, 'g', { note: 'roasted' }],
      ['Heather honey', 12, 'g'],
    ],
  },
  {
    name: 'Three scoops',
    kind: 'dish',
    from: OPENING,
    section: FRUIT_AND_CREAM,
    plating: [2, 'finisher'],
    lines: [
      ['Raspberry sorbet', 70, 'ml'],
      ['Chocolate sorbet', 70, 'ml'],
      ['Milk ice', 70, 'ml'],
      ['Raspberries', 15, 'g'],
    ],
  },
  {
    name: 'Vanilla set cream',
    kind: 'dish',
    from: OPENING,
    section: FRUIT_AND_CREAM,
    plating: [2, 'finisher'],
    breakagePct: 2,
    lines: [
      ['Vanilla set cream mixture', 125, 'g'],
      ['Shortbread', 18, 'g'],
      ['Raspberry conserve', 20, 'g'],
      ['Raspberries', 16, 'g'],
    ],
  },
  {
    // bought in and changed with the season: the owner knows roughly what a plate costs
    name: 'Cheese and oatcakes',
    kind: 'dish',
    from: OPENING,
    section: FRUIT_AND_CREAM,
    plating: [3, 'finisher'],
    estimatedCost: 3.2,
    lines: [],
  },
];
