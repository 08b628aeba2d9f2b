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
