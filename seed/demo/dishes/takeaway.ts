import type { Recipe } from '../shapes';

/** Four of each sweet in a printed box; a bag goes with it when a rider carries it. */
export const TAKEAWAY: readonly Recipe[] = [
  {
    name: 'Twelve sweets in a box',
    kind: 'dish',
    from: '2025-05-01',
    section: 'Takeaway',
    plating: [3, 'commis'],
    lines: [
      ['Sea salt bonbons', 4, 'each'],
      ['Praline squares', 4, 'each'],
      ['Chewy caramels', 4, 'each'],
      ['Gift box for twelve', 1, 'each', { channel: 'takeaway' }],
      ['Paper cases', 12, 'each', { channel: 'takeaway' }],
      ['Gift box for twelve', 1, 'each', { channel: 'delivery' }],
      ['Paper cases', 12, 'each', { channel: 'delivery' }],
      ['Paper bag', 1, 'each', { channel: 'delivery' }],
    ],
  },
];
