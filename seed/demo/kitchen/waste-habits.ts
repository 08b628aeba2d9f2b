/** Thrown at close: how often, and how much of it. */
export const OVER_PRODUCTION = [
  { item: 'Soft whipped cream', chance: 0.85, from: 80, to: 240 },
  { item: 'Italian meringue', chance: 0.7, from: 60, to: 160 },
  { item: 'Dressed strawberries', chance: 0.6, from: 60, to: 260, dish: 'Strawberries, crème fraîche ice' },
] as const;

/** Gone off, while the dish that uses it is on the menu: how often, and how much. */
export const SPOILED = [
  { item: 'Double cream', chance: 0.025, from: 1, to: 2, step: 0.5, unit: 'l', dish: 'Marram slate' },
  { item: 'Whole milk', chance: 0.03, from: 1, to: 2, step: 1, unit: 'l', dish: 'Marram slate' },
  { item: 'Custard base', chance: 0.03, from: 400, to: 900, step: 50, unit: 'g', dish: 'Marram slate' },
  { item: 'Raspberries', chance: 0.14, from: 125, to: 250, step: 125, unit: 'g', dish: 'Three scoops' },
  {
    item: 'Strawberries',
    chance: 0.12,
    from: 200,
    to: 800,
    step: 100,
    unit: 'g',
    dish: 'Strawberries, crème fraîche ice',
  },
  { item: 'Black cherries', chance: 0.06, from: 200, to: 500, step: 100, unit: 'g', dish: 'Black cherry trifle' },
  { item: 'Rhubarb', chance: 0.06, from: 200, to: 600, step: 100, unit: 'g', dish: 'Rhubarb custard slice' },
  { item: 'Pineapple', chance: 0.05, from: 400, to: 1200, step: 100, unit: 'g', dish: 'Passion fruit pavé' },
  { item: 'Figs', chance: 0.12, from: 2, to: 6, step: 1, unit: 'each', dish: 'Figs, fig leaf cream' },
] as const;

/** Fragile things: the share of the allowed breakage that was written down; above 1 where the cooks were still learning. */
export const BROKEN: Readonly<Record<string, readonly [from: number, to: number]>> = {
  'Tide sheets': [0.55, 1],
  'Nib tuiles': [0.55, 1.05],
  'Tart shells': [0.5, 1],
  'Choux buns': [0.5, 1],
  'Dulse glass': [0.6, 1.1],
  'Sesame brittle': [0.5, 1],
  'Cocoa shells': [1.5, 2.3],
};

export const STAFF_FOOD = [
  { weekday: 3, item: 'Madeleine batter', quantity: 220, unit: 'g' },
  { weekday: 6, item: 'Brownie', quantity: 5, unit: 'each' },
  { weekday: 7, item: 'Whole milk', quantity: 3, unit: 'l' },
  { weekday: 7, item: 'Coffee beans', quantity: 250, unit: 'g' },
] as const;

/** Everyone who serves tastes a new dish on its first day. */
export const TASTED_ON = ['2025-05-01', '2025-10-01', '2026-03-04', '2026-09-02'] as const;
export const TASTED = [
  'Black cherry trifle',
  'Mint and nib iced sandwich',
  'Strawberries, crème fraîche ice',
  'Chestnut dome',
  'Hot orange pudding',
  'Ginger cake, poached quince',
  'Driftwood',
  'Passion fruit pavé',
  'Raspberry and pistachio sablé',
  'Rhubarb custard slice',
  'Smoke and peat',
  'Sea buckthorn posset',
  'Figs, fig leaf cream',
] as const;
