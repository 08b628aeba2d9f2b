/** Base units of the three dimensions: mass in grams, volume in millilitres, count in pieces. */
export type BaseUnit = 'g' | 'ml' | 'each';

/** A unit with its exact size in the base unit of its dimension. */
export interface Unit {
  readonly name: string;
  readonly base: BaseUnit;
  readonly size: number;
}

/** Which cup, tablespoon and teaspoon a bare "cup", "tbsp" or "tsp" means. */
export type KitchenMeasures = 'metric' | 'us';

// NIST Handbook 44, Appendix C: the pound and the US gallon are exact, and everything below them is a whole part of one.
const POUND = 453.59237;
const US_GALLON = 3785.411784;
const IMPERIAL_PINT = 568.26125;

/** name, base unit, size, other spellings */
const TABLE: readonly (readonly [string, BaseUnit, number, ...string[]])[] = [
  ['mg', 'g', 0.001, 'milligram', 'milligrams'],
  ['g', 'g', 1, 'gram', 'grams', 'gramme', 'grammes', 'gr'],
  ['kg', 'g', 1000, 'kilo', 'kilos', 'kilogram', 'kilograms'],
  ['oz', 'g', POUND / 16, 'ounce', 'ounces'],
  ['lb', 'g', POUND, 'lbs', 'pound', 'pounds'],
  ['stone', 'g', POUND * 14],
  ['ml', 'ml', 1, 'millilitre', 'millilitres', 'milliliter', 'milliliters'],
  ['cl', 'ml', 10, 'centilitre', 'centilitres', 'centiliter', 'centiliters'],
  ['dl', 'ml', 100, 'decilitre', 'decilitres', 'deciliter', 'deciliters'],
  ['l', 'ml', 1000, 'litre', 'litres', 'liter', 'liters', 'ltr'],
  ['us gal', 'ml', US_GALLON, 'gal', 'gallon', 'gallons', 'us gallon'],
  ['us qt', 'ml', US_GALLON / 4, 'qt', 'quart', 'quarts', 'us quart'],
  ['us pt', 'ml', US_GALLON / 8, 'us pint', 'pt', 'pint', 'pints'],
  ['us cup', 'ml', US_GALLON / 16, 'us cups'],
  ['us fl oz', 'ml', US_GALLON / 128, 'fl oz', 'floz', 'fluid ounce', 'fluid ounces'],
  ['us tbsp', 'ml', US_GALLON / 256],
  ['us tsp', 'ml', US_GALLON / 768],
  ['us dry pint', 'ml', 550.6104713575, 'dry pint', 'dry pints'],
  ['imperial gal', 'ml', IMPERIAL_PINT * 8, 'imperial gallon', 'imp gal', 'uk gallon'],
  ['imperial qt', 'ml', IMPERIAL_PINT * 2, 'imperial quart', 'imp qt', 'uk quart'],
  ['imperial pint', 'ml', IMPERIAL_PINT, 'imp pint', 'imp pt', 'uk pint'],
  ['imperial fl oz', 'ml', IMPERIAL_PINT / 20, 'imp fl oz', 'uk fl oz'],
  ['metric cup', 'ml', 250],
  ['metric tbsp', 'ml', 15],
  ['metric tsp', 'ml', 5],
  ['each', 'each', 1, 'ea', 'pc', 'pcs', 'piece', 'pieces', 'portion', 'portions', 'unit', 'units'],
  ['dozen', 'each', 12, 'doz'],
];

const BARE: Readonly<Record<string, 'cup' | 'tbsp' | 'tsp'>> = {
  cup: 'cup',
  cups: 'cup',
  tbsp: 'tbsp',
  tablespoon: 'tbsp',
  tablespoons: 'tbsp',
  tsp: 'tsp',
  teaspoon: 'tsp',
  teaspoons: 'tsp',
};

const BY_NAME: ReadonlyMap<string, Unit> = new Map(
  TABLE.flatMap(([name, base, size, ...spellings]) => {
    const unit: Unit = { name, base, size };
    return [name, ...spellings].map((spelling) => [spelling, unit] as const);
  }),
);

/**
 * The unit of that name, or null where there is none (it may still be a measure of its own: a pod, a leaf, a sheet).
 * A bare cup, tbsp or tsp follows the venue's setting. fl oz is a volume, oz a mass.
 *
 * Sizes are exact: NIST Handbook 44, Appendix C; metric kitchen measures are 250, 15 and 5 ml.
 */
export function unitNamed(name: string, measures: KitchenMeasures): Unit | null {
  const key = name.normalize('NFKC').trim().toLowerCase().replaceAll('.', '').replace(/\s+/g, ' ');
  const bare = BARE[key];
  return BY_NAME.get(bare ? `${measures} ${bare}` : key) ?? null;
}
