import { nameKey } from '../../core/name-key';

/** Whose list of allergens is shown: the law differs by country, and the list in force is named on every sheet. */
export type AllergenList = 'eu' | 'us';

/** The 14 of Regulation (EU) No 1169/2011, Annex II, in its order. */
export const EU_ALLERGENS = [
  'gluten',
  'crustaceans',
  'eggs',
  'fish',
  'peanuts',
  'soybeans',
  'milk',
  'nuts',
  'celery',
  'mustard',
  'sesame',
  'sulphites',
  'lupin',
  'molluscs',
] as const;

/** The 9 of US law: Food Allergen Labeling and Consumer Protection Act 2004, with sesame by the FASTER Act 2021. */
export const US_ALLERGENS = [
  'milk',
  'eggs',
  'fish',
  'crustaceans',
  'tree nuts',
  'peanuts',
  'wheat',
  'soybeans',
  'sesame',
] as const;

export type Allergen = (typeof EU_ALLERGENS)[number] | (typeof US_ALLERGENS)[number];

/** Which list is shown: the one of the law where the venue is, as far as its locale says. */
export function listOf({ locale }: { readonly locale: string }): AllergenList {
  return /-US$/i.test(locale) ? 'us' : 'eu';
}

export function allergensOn(list: AllergenList): readonly Allergen[] {
  return list === 'eu' ? EU_ALLERGENS : US_ALLERGENS;
}

/** What a declared word says on one list: the allergen, that it is none of that list, or that it leaves it open whether it is one. */
export type Reading = { readonly is: Allergen | null } | { readonly open: Allergen }; // cereals with gluten may be wheat or not

const is = (allergen: Allergen | null): Reading => ({ is: allergen });

/** Words, what they are on the EU list, and on the US list. */
const TABLE: readonly (readonly [eu: Reading, us: Reading, ...words: string[]])[] = [
  [is('gluten'), { open: 'wheat' }, 'gluten', 'cereals containing gluten', 'cereals'],
  [is('gluten'), is('wheat'), 'wheat', 'spelt', 'khorasan', 'khorasan wheat', 'durum', 'durum wheat'],
  [is('gluten'), is(null), 'rye', 'barley', 'oats', 'oat'],
  [is('crustaceans'), is('crustaceans'), 'crustaceans', 'crustacean', 'crustacean shellfish'],
  [is('eggs'), is('eggs'), 'eggs', 'egg'],
  [is('fish'), is('fish'), 'fish'],
  [is('peanuts'), is('peanuts'), 'peanuts', 'peanut'],
  [is('soybeans'), is('soybeans'), 'soybeans', 'soybean', 'soya', 'soy', 'soya beans'],
  [is('milk'), is('milk'), 'milk', 'lactose'],
  [is('nuts'), is('tree nuts'), 'nuts', 'nut', 'tree nuts', 'tree nut', 'almonds', 'almond', 'hazelnuts', 'hazelnut'],
  [
    is('nuts'),
    is('tree nuts'),
    'walnuts',
    'walnut',
    'cashews',
    'cashew',
    'cashew nuts',
    'pecans',
    'pecan',
    'pecan nuts',
  ],
  [is('nuts'), is('tree nuts'), 'brazil nuts', 'brazil nut', 'pistachios', 'pistachio', 'pistachio nuts'],
  [is('nuts'), is('tree nuts'), 'macadamias', 'macadamia', 'macadamia nuts', 'queensland nuts', 'queensland nut'],
  // other names of the US list for what the EU's calls hazelnuts, walnuts and macadamias, or for their kin: shown on both
  [is('nuts'), is('tree nuts'), 'filbert', 'filberts', 'black walnut', 'heartnut', 'japanese walnut', 'bush nut'],
  // the US list of January 2025 has it, the EU's has not
  [is(null), is('tree nuts'), 'pine nuts', 'pine nut'],
  // on neither: the US list dropped them in January 2025
  [is(null), is(null), 'coconut', 'chestnuts', 'chestnut', 'beech nut', 'butternut', 'hickory', 'kola nut', 'shea'],
  [is('celery'), is(null), 'celery'],
  [is('mustard'), is(null), 'mustard'],
  [is('sesame'), is('sesame'), 'sesame', 'sesame seeds'],
  [is('sulphites'), is(null), 'sulphites', 'sulfites', 'sulphur dioxide', 'sulphur dioxide and sulphites'],
  [is('lupin'), is(null), 'lupin'],
  [is('molluscs'), is(null), 'molluscs', 'mollusc', 'mollusks'],
];

const READINGS: ReadonlyMap<string, Readonly<Record<AllergenList, Reading>>> = new Map(
  TABLE.flatMap(([eu, us, ...words]) => words.map((word) => [word, { eu, us }] as const)),
);

/** What a declared word says on a list; null where it is no word that is known, so that nothing can be said of any of the list. */
export function readAllergen(word: string, list: AllergenList): Reading | null {
  return READINGS.get(nameKey(word))?.[list] ?? null;
}
