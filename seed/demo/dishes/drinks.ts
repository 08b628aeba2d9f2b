import type { Line, Recipe } from '../shapes';

function drink(name: string, platingMinutes: number, ...lines: readonly Line[]): Recipe {
  return {
    name,
    kind: 'dish',
    from: '2025-05-01',
    section: 'Drinks',
    department: 'drink',
    plating: [platingMinutes, 'finisher'],
    lines,
  };
}

/** Poured and brewed at the bar: 60 or 75 ml a glass of sweet wine, 9 g of beans a shot. */
export const DRINKS: readonly Recipe[] = [
  drink('Late-harvest white, glass', 0.5, ['Late-harvest white', 75, 'ml']),
  drink('Noble-rot white, glass', 0.5, ['Noble-rot white', 60, 'ml']),
  drink('Fortified red, glass', 0.5, ['Fortified red', 60, 'ml']),
  drink('Ice cider, glass', 0.5, ['Ice cider', 60, 'ml']),
  drink('Espresso', 1, ['Coffee beans', 9, 'g']),
  drink('Flat white', 1.5, ['Coffee beans', 18, 'g'], ['Whole milk', 140, 'ml']),
  drink('Pot of tea', 1, ['Black leaf tea', 4, 'g'], ['Whole milk', 40, 'ml']),
];
