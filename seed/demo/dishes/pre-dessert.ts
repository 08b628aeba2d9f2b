import type { Line, Recipe } from '../shapes';

function spoonful(from: string, ...lines: readonly Line[]): Recipe {
  return { name: 'Pre-dessert', kind: 'extra', from, section: 'Pre-dessert', plating: [0.6, 'finisher'], lines };
}

/** A spoonful that every guest is given before ordering; it changes with the menu. */
export const PRE_DESSERT: readonly Recipe[] = [
  spoonful('2025-05-01', ['Raspberry sorbet', 18, 'ml'], ['Yoghurt cream', 10, 'ml'], ['Oat crunch', 2, 'g']),
  spoonful('2025-10-01', ['Sea buckthorn sorbet', 18, 'ml'], ['Yoghurt cream', 10, 'ml'], ['Milk crumb', 2, 'g']),
  spoonful('2026-03-04', ['Raspberry sorbet', 18, 'ml'], ['Lemon jelly', 6, 'g'], ['Pepper meringue', 1.5, 'g']),
  spoonful('2026-09-02', ['Sea buckthorn sorbet', 18, 'ml'], ['Yoghurt cream', 10, 'ml'], ['Oat crunch', 2, 'g']),
];
