/** What the costs of the dishes stand on. */
export const DISH_COSTS_BASIS: readonly string[] = [
  'achieved prices, net',
  'costs by the chosen offer at the price in force each day',
  'small-batch loss and labour stand beside the plate cost, never in it',
];

/** Heads of the dish costs, in the order of their columns. */
export function dishCostHeads(sign: string): readonly string[] {
  return [
    'Dish',
    'Channel',
    'Sold, portions',
    `Price, ${sign} net`,
    `Plate cost, ${sign}`,
    'Food cost, %',
    `Leaves, ${sign} each`,
  ];
}
