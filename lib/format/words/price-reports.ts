import type { ModelName } from '../../model/mix/mix-model';
import { MODEL_SOURCE, MODEL_SOURCES } from './classes';

/** What the figures of a change of prices stand on, for files and terminals. */
export function priceChangeBasis(edits: readonly string[], section: string | null): readonly string[] {
  return [
    section === null ? 'whole menu, without set menus and drinks' : `section ${section}`,
    edits.length === 0 ? 'no price changed' : `changed: ${edits.join('; ')}`,
    'every other price and all portions as they were',
    MODEL_SOURCE,
  ];
}

export function turningBasis(
  ingredient: string,
  unit: string,
  section: string | null,
  model: ModelName,
): readonly string[] {
  return [
    section === null ? 'whole menu, without set menus and drinks' : `section ${section}`,
    `${ingredient} at one price all period, a ${unit}; every other price and all portions as they were`,
    MODEL_SOURCES[model],
  ];
}

export const AT_STAKE_BASIS: readonly string[] = [
  'what everything served took: paid portions, comps and extras of every cover, by recipe',
  'at the price in force each day, with the share for what is not measured on food and drink',
  'share: of food and drink; 1 % a year: over the twelve months up to the end of the period',
];

export const PRICE_UNITS = { g: 'kg', ml: 'l', each: 'piece' } as const;

/** The plain sentence on what the food cost stands on. */
export function concentrationSentence(
  {
    group,
    dishes,
    of,
    carries,
  }: { readonly group: string; readonly dishes: number; readonly of: number; readonly carries: boolean },
  share: string,
): string {
  const leans = `${dishes} of ${of} dishes lean on it`;
  return carries
    ? `${group} carries the menu: ${share} of the food cost by recipe, and ${leans}.`
    : `No product group carries the menu; the largest is ${group} with ${share} of the food cost by recipe, and ${leans}.`;
}

export const unmovedSentence = (names: number): string =>
  `${names} more ${names === 1 ? 'price' : 'prices'} did not move in the time looked at, which is no sign that ${names === 1 ? 'it' : 'they'} will not.`;

export const UNNAMED_GROUP = 'no product group';

export function changeHeads(sign: string): readonly string[] {
  const each = (what: string): string => `${what}, ${sign}`;
  return [
    'Dish',
    'Class',
    'Sold',
    each('Plate cost was'),
    each('now'),
    'Food cost, %',
    each('Leaves was'),
    each('now'),
    each('In the period'),
    each('To hold the margin'),
    each('To hold food cost'),
    'To earn as before, % of portions',
  ];
}

/** Contribution before, after and its change; food cost before and after, all as they are printed. */
export function periodChangeSentence({
  contribution: [before, after, change],
  foodCost: [costBefore, costAfter],
}: {
  readonly contribution: readonly string[];
  readonly foodCost: readonly string[];
}): string {
  return `Contribution ${before}, with these prices ${after} (${change}); food cost by recipe ${costBefore}, with these prices ${costAfter}.`;
}

export function turningHeads(sign: string, unit: string): readonly string[] {
  return ['Dish', 'Class now', 'Beyond', `Price now, ${sign} a ${unit}`, `Turns at, ${sign} a ${unit}`];
}

export function atStakeHeads(by: 'ingredient' | 'group' | 'supplier', sign: string): readonly string[] {
  const who = { ingredient: 'Ingredient', group: 'Product group', supplier: 'Supplier' }[by];
  return [who, `At stake, ${sign}`, 'Share, %', `1 % a year, ${sign}`, 'Dishes'];
}

export function spreadHeads(sign: string): readonly string[] {
  const each = (what: string): string => `${what}, ${sign}`;
  return ['Own spread', 'of a', each('Lowest'), each('Highest'), each('At lowest'), each('At highest')];
}
