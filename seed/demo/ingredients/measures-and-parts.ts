/** A measure of the ingredient's own. */
export const MEASURES: readonly (readonly [ingredient: string, name: string, quantity: number, unit: string])[] = [
  ['Double cream', 'tub', 2, 'l'],
  ['Whole milk', 'bottle', 2, 'l'],
  ['Shell eggs', 'tray', 30, 'each'],
  ['Dark couverture 70 %', 'bag', 3, 'kg'],
  ['Dark couverture 60 %', 'bag', 3, 'kg'],
  ['Milk couverture 40 %', 'bag', 3, 'kg'],
  ['White couverture 34 %', 'bag', 3, 'kg'],
  ['Gelatine leaves', 'leaf', 2, 'g'],
  ['Vanilla pods', 'pod', 1, 'each'],
  ['Cinnamon sticks', 'stick', 4, 'g'],
  ['Star anise', 'star', 1.5, 'g'],
  ['Garden mint', 'bunch', 100, 'g'],
  ['Butter puff pastry', 'sheet', 500, 'g'],
  ['Brownie trimmings', 'tray', 300, 'g'],
];

export interface Part {
  readonly ingredient: string;
  readonly part: string;
  readonly output: readonly [quantity: number, unit: string];
  readonly costSharePct: number;
}

/** 18 g of yolk and 32 g of white an egg, and what each is worth to a pastry kitchen: common practice. A pod is seeds and husk. */
export const PARTS: readonly Part[] = [
  { ingredient: 'Shell eggs', part: 'yolk', output: [18, 'g'], costSharePct: 60 },
  { ingredient: 'Shell eggs', part: 'white', output: [32, 'g'], costSharePct: 40 },
  { ingredient: 'Vanilla pods', part: 'seeds', output: [1, 'each'], costSharePct: 85 },
  { ingredient: 'Vanilla pods', part: 'husk', output: [1, 'each'], costSharePct: 15 },
];

/**
 * Yields by use. Juice: USDA SR28, 48 g a lemon and 86 g an orange, of fruit of 110 g and 180 g (common practice);
 * zest: common practice.
 */
export const YIELDS: readonly (readonly [ingredient: string, use: string, usablePct: number])[] = [
  ['Lemons', 'juice', 43],
  ['Lemons', 'zest', 4],
  ['Oranges', 'juice', 48],
  ['Oranges', 'zest', 4],
];
