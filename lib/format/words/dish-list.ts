import { perCent } from '../figures';
import { namePart, type Part, type Phrase } from '../phrase';
import { countWord } from '../portions';

export const DISH_LIST = {
  title: 'All dishes',
  caption: 'Dishes, set menus and extras of the period',
  region: 'All dishes, all columns',
  find: 'Name contains',
  section: 'Section',
  every: 'every section',
  noMatch: 'No dish has that in its name. Empty the field, or choose every section.',
  none: '–',
  unknown: 'unknown',
  notCosted: 'not costed',
  notClassed: 'not classed',
  perGuest: 'to every guest',
  estimate: 'cost is the owner’s estimate',
  noSection: 'no section',
} as const;

export const LIST_COLUMNS = [
  'item',
  'section',
  'sold',
  'price',
  'plateCost',
  'foodCost',
  'leaves',
  'labour',
  'minute',
  'class',
] as const;

export type ListColumn = (typeof LIST_COLUMNS)[number];

/** Head and unit of each column. */
export function listHeads(sign: string): Readonly<Record<ListColumn, readonly [name: string, unit: string]>> {
  return {
    item: ['Dish', ''],
    section: ['Section', ''],
    sold: ['Sold', 'portions'],
    price: ['Price', `${sign} net`],
    plateCost: ['Plate cost', sign],
    foodCost: ['Food cost', '%'],
    leaves: ['Leaves', `${sign} each`],
    labour: ['Labour', `${sign}, hands-on`],
    minute: ['Leaves', `${sign} a plating minute`],
    class: ['Class', ''],
  };
}

/** What the sorted column adds to its unit. */
export function listSorted(column: ListColumn, falling: boolean): string {
  if (column === 'item' || column === 'section' || column === 'class') return falling ? 'Z to A' : 'A to Z';
  return falling ? 'most first' : 'least first';
}

/** Of how many there are, and between which food costs they lie. */
export function listSentence(
  items: readonly {
    readonly item: string;
    readonly kind: string;
    readonly foodCostPct: number | null;
    readonly plateCost: string | null;
  }[],
  locale: string,
): Phrase {
  const names = new Set(items.map(({ item }) => item)).size;
  const known = items.flatMap(({ item, foodCostPct }) => (foodCostPct === null ? [] : [{ item, foodCostPct }]));
  const sorted = [...known].sort((a, b) => a.foodCostPct - b.foodCostPct);
  const [least, most] = [sorted[0], sorted.at(-1)];
  const sets = new Set(items.flatMap(({ item, kind }) => (kind === 'set_menu' ? [item] : []))).size;
  const counted = (count: number, one: string, more: string) =>
    count === 0 ? [] : [`${countWord(count, locale)} ${count === 1 ? one : more}`];
  const said = [...counted(names - sets, 'dish', 'dishes'), ...counted(sets, 'set menu', 'set menus')].join(' and ');
  const there: Part[] = [`${said.charAt(0).toUpperCase()}${said.slice(1)} on the menu. `];
  if (!least || !most) return [...there, 'What they cost is not known yet.'];
  const without = new Set(items.flatMap(({ item, plateCost }) => (plateCost === null ? [item] : []))).size;
  const missing = without === 0 ? '.' : `; ${countWord(without, locale)} ${without === 1 ? 'is' : 'are'} not costed.`;
  if (names === 1) return [...there, 'Its food cost is ', { figure: perCent(least.foodCostPct, locale) }, '.'];
  return [
    ...there,
    'Food cost by recipe goes from ',
    { figure: perCent(least.foodCostPct, locale) },
    ' (',
    namePart(least.item),
    ') to ',
    { figure: perCent(most.foodCostPct, locale) },
    ' (',
    namePart(most.item),
    ')',
    missing,
  ];
}

/** takeaway, where an item is sold in another channel than the tables, or in several. */
export function channelNote(channel: string, isOneOfSeveral: boolean): string | null {
  return channel === 'dine_in' && !isOneOfSeveral ? null : channel.replaceAll('_', ' ');
}

export function listTitle(period: string): string {
  return `${DISH_LIST.title}, ${period}`;
}
