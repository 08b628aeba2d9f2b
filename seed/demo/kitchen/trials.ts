import type { Grade } from '../shapes';

/** One try at a new dish: who, how long, what went into it and how it ended. */
export interface Trial {
  readonly recipe: string;
  readonly day: string;
  readonly hours: number;
  readonly grade: Grade;
  readonly outcome: string;
  readonly lines: readonly (readonly [item: string, quantity: number, unit: string])[];
}

const SMOKE = 'Smoke and peat';
const POSSET = 'Sea buckthorn posset';

/** Both came onto the menu on 2 September 2026. */
export const TRIALS: readonly Trial[] = [
  {
    recipe: SMOKE,
    day: '2026-07-28',
    hours: 3.5,
    grade: 'pastry chef',
    outcome: 'Shells collapsed: too much butter, rings pulled too early',
    lines: [
      ['Plain flour', 400, 'g'],
      ['Cocoa powder', 80, 'g'],
      ['Unsalted butter', 320, 'g'],
      ['Icing sugar', 170, 'g'],
      ['Shell eggs', 90, 'g'],
      ['Dark couverture 70 %', 420, 'g'],
      ['Double cream', 600, 'ml'],
      ['Smoked black tea', 44, 'g'],
    ],
  },
  {
    recipe: SMOKE,
    day: '2026-08-04',
    hours: 3,
    grade: 'pastry chef',
    outcome: 'Shells held on one tray of two; the tea is harsh, half of it next time',
    lines: [
      ['Plain flour', 440, 'g'],
      ['Cocoa powder', 70, 'g'],
      ['Unsalted butter', 280, 'g'],
      ['Icing sugar', 170, 'g'],
      ['Shell eggs', 90, 'g'],
      ['Dark couverture 70 %', 420, 'g'],
      ['Double cream', 620, 'ml'],
      ['Smoked black tea', 44, 'g'],
    ],
  },
  {
    recipe: SMOKE,
    day: '2026-08-11',
    hours: 2.5,
    grade: 'pastry chef',
    outcome: 'Ganache split: poured too cold. Shells good',
    lines: [
      ['Plain flour', 440, 'g'],
      ['Cocoa powder', 60, 'g'],
      ['Unsalted butter', 300, 'g'],
      ['Icing sugar', 170, 'g'],
      ['Shell eggs', 90, 'g'],
      ['Dark couverture 70 %', 420, 'g'],
      ['Double cream', 640, 'ml'],
      ['Smoked black tea', 22, 'g'],
      ['Invert sugar', 30, 'g'],
    ],
  },
  {
    recipe: SMOKE,
    day: '2026-08-12',
    hours: 1.5,
    grade: 'pastry chef',
    outcome: 'Ganache good with more invert sugar',
    lines: [
      ['Dark couverture 70 %', 420, 'g'],
      ['Double cream', 640, 'ml'],
      ['Smoked black tea', 22, 'g'],
      ['Invert sugar', 50, 'g'],
      ['Unsalted butter', 40, 'g'],
    ],
  },
  {
    recipe: SMOKE,
    day: '2026-08-18',
    hours: 2,
    grade: 'commis',
    outcome: 'Rye crumb too salty; malt ice right beside it',
    lines: [
      ['Rye flour', 200, 'g'],
      ['Plain flour', 140, 'g'],
      ['Unsalted butter', 200, 'g'],
      ['Muscovado sugar', 120, 'g'],
      ['Sea salt flakes', 9, 'g'],
      ['Malt ice', 400, 'ml'],
    ],
  },
  {
    recipe: SMOKE,
    day: '2026-08-25',
    hours: 3,
    grade: 'pastry chef',
    outcome: 'Whole plate for the owner: more crumb, one sheet instead of two',
    lines: [
      ['Plain flour', 290, 'g'],
      ['Cocoa powder', 30, 'g'],
      ['Unsalted butter', 250, 'g'],
      ['Icing sugar', 85, 'g'],
      ['Shell eggs', 45, 'g'],
      ['Muscovado sugar', 65, 'g'],
      ['Rye flour', 100, 'g'],
      ['Dark couverture 70 %', 210, 'g'],
      ['Double cream', 320, 'ml'],
      ['Smoked black tea', 11, 'g'],
      ['Invert sugar', 25, 'g'],
      ['Malt ice', 400, 'ml'],
      ['Tide sheets', 8, 'each'],
    ],
  },
  {
    recipe: SMOKE,
    day: '2026-08-30',
    hours: 1.5,
    grade: 'finisher',
    outcome: 'Plated eight in a row against the clock: four minutes',
    lines: [
      ['Plain flour', 145, 'g'],
      ['Cocoa powder', 15, 'g'],
      ['Unsalted butter', 135, 'g'],
      ['Icing sugar', 45, 'g'],
      ['Shell eggs', 25, 'g'],
      ['Rye flour', 50, 'g'],
      ['Muscovado sugar', 35, 'g'],
      ['Dark couverture 70 %', 210, 'g'],
      ['Double cream', 320, 'ml'],
      ['Smoked black tea', 11, 'g'],
      ['Invert sugar', 25, 'g'],
      ['Malt ice', 400, 'ml'],
      ['Tide sheets', 8, 'each'],
    ],
  },
  {
    recipe: POSSET,
    day: '2026-08-05',
    hours: 1.5,
    grade: 'pastry chef',
    outcome: 'Did not set: not enough acid',
    lines: [
      ['Double cream', 1000, 'ml'],
      ['Caster sugar', 280, 'g'],
      ['Sea buckthorn purée', 180, 'g'],
    ],
  },
  {
    recipe: POSSET,
    day: '2026-08-11',
    hours: 1.5,
    grade: 'commis',
    outcome: 'Set, but too sharp and grainy at the edge',
    lines: [
      ['Double cream', 1000, 'ml'],
      ['Caster sugar', 220, 'g'],
      ['Sea buckthorn purée', 360, 'g'],
    ],
  },
  {
    recipe: POSSET,
    day: '2026-08-19',
    hours: 1.5,
    grade: 'commis',
    outcome: 'Right; glass too deep, crumb gone soft after an hour',
    lines: [
      ['Double cream', 1000, 'ml'],
      ['Caster sugar', 260, 'g'],
      ['Sea buckthorn purée', 300, 'g'],
      ['Milk crumb', 120, 'g'],
    ],
  },
  {
    recipe: POSSET,
    day: '2026-08-26',
    hours: 2,
    grade: 'commis',
    outcome: 'Shallow glass, crumb on order: ready',
    lines: [
      ['Double cream', 1000, 'ml'],
      ['Caster sugar', 260, 'g'],
      ['Sea buckthorn purée', 300, 'g'],
      ['Sea buckthorn sorbet', 400, 'ml'],
      ['Milk crumb', 120, 'g'],
      ['Shortbread', 140, 'g'],
    ],
  },
];
