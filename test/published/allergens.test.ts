import { describe, expect, test } from 'vitest';
import { EU_ALLERGENS, readAllergen, US_ALLERGENS } from '@/lib/model/allergens/allergen-lists';

// Regulation (EU) No 1169/2011, Annex II, as listed by the Food Allergy Research and Resource Program, University of Nebraska-Lincoln
const ANNEX_II = [
  'cereals containing gluten',
  'crustaceans',
  'eggs',
  'fish',
  'peanuts',
  'soybeans',
  'milk',
  'nuts',
  'celery',
  'mustard',
  'sesame seeds',
  'sulphur dioxide and sulphites',
  'lupin',
  'molluscs',
];
const ANNEX_II_CEREALS = ['wheat', 'spelt', 'khorasan wheat', 'rye', 'barley', 'oats'];
const ANNEX_II_NUTS = [
  ...['almonds', 'hazelnuts', 'walnuts', 'cashews', 'pecan nuts', 'Brazil nuts', 'pistachio nuts'],
  ...['macadamia nuts', 'Queensland nuts'],
];
// FDA, questions and answers on food allergens (January 2025): FALCPA 2004 with the FASTER Act 2021
const US_LAW = [
  ...['milk', 'egg', 'fish', 'crustacean shellfish', 'tree nuts', 'peanuts', 'wheat', 'soybeans', 'sesame'],
];
// FDA, the same guidance, 5th edition: tree nuts on the list, and some that it no longer holds
const US_TREE_NUTS = [
  ...['almond', 'black walnut', 'Brazil nut', 'cashew', 'filbert', 'hazelnut', 'heartnut', 'Japanese walnut'],
  ...['macadamia', 'bush nut', 'pecan', 'pine nut', 'pistachio', 'walnut'],
];
const US_DROPPED = ['coconut', 'beech nut', 'butternut', 'chestnut', 'hickory', 'kola nut', 'shea'];

describe('allergen lists as published', () => {
  test('EU_ALLERGENS are the 14 of Annex II, in its order, each read from its name there', () => {
    expect(ANNEX_II.map((word) => readAllergen(word, 'eu'))).toEqual(
      EU_ALLERGENS.map((allergen) => ({ is: allergen })),
    );
    for (const word of ANNEX_II_CEREALS) expect(readAllergen(word, 'eu')).toEqual({ is: 'gluten' });
    for (const word of ANNEX_II_NUTS) expect(readAllergen(word, 'eu')).toEqual({ is: 'nuts' });
  });

  test('US_ALLERGENS are the 9 of US law, each read from its name there', () => {
    expect(US_LAW.map((word) => readAllergen(word, 'us'))).toEqual(US_ALLERGENS.map((allergen) => ({ is: allergen })));
    for (const word of US_TREE_NUTS) expect(readAllergen(word, 'us')).toEqual({ is: 'tree nuts' });
    for (const word of US_DROPPED) expect(readAllergen(word, 'us')).toEqual({ is: null });
  });

  test('readAllergen(word, list) differs where the lists do', () => {
    for (const word of ['rye', 'barley', 'oats', 'celery', 'mustard', 'lupin', 'molluscs', 'sulphites']) {
      expect(readAllergen(word, 'us')).toEqual({ is: null });
    }
    expect(readAllergen('pine nuts', 'eu')).toEqual({ is: null });
    expect(readAllergen('chestnuts', 'eu')).toEqual({ is: null });
    expect(readAllergen(' SPELT ', 'us')).toEqual({ is: 'wheat' });
  });

  test('readAllergen(gluten, us) leaves open whether it is wheat; a word that nobody knows is null', () => {
    expect(readAllergen('gluten', 'us')).toEqual({ open: 'wheat' });
    expect(readAllergen('dairy', 'eu')).toBeNull();
    expect(readAllergen('dairy', 'us')).toBeNull();
  });
});
