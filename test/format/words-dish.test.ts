import { describe, expect, test } from 'vitest';
import { plainText } from '@/lib/format/phrase';
import {
  type DishFigures,
  dishBasis,
  dishHead,
  dishSentences,
  dishState,
  dishSum,
  isRoundedApart,
  shareWords,
  standingPhrase,
} from '@/lib/format/words/dish';

const PURSE = { currency: 'EUR', locale: 'en-GB' };
const STAR: DishFigures['standings'][number] = {
  model: 'kasavana-smith',
  class: 'star',
  settled: true,
  between: null,
  classShares: { star: 0.996, plowhorse: 0.004, puzzle: 0, dog: 0 },
};

const FIGURES: NonNullable<DishFigures['figures']> = {
  ...{ sold: 312, comps: 4, netPrice: '15', plateCost: '3.18', floor: null, linesMissing: null, linesTotal: null },
  ...{ estimated: false, foodCostPct: 0.212, margin: '11.82', contribution: '3687.84', contributionPct: 0.132 },
};

const DUNE: DishFigures = {
  ...{ item: 'Dune', month: '2026-10', currency: 'EUR', kind: 'dish', section: 'Cold', mixSection: null },
  ...{ components: 10, onSale: true, onMenuSince: '2025-09-12', menuPrice: '16.50', figures: FIGURES, given: null },
  standings: [STAR],
  turning: [],
  bought: [
    { item: 'Couverture', isEstimate: false, cost: '0.94' },
    { item: 'Double cream', isEstimate: false, cost: '0.35' },
  ],
  change: null,
};

const change = (
  moved: { readonly before: string; readonly after: string; readonly price: string; readonly recipe: string },
  ...ingredients: { readonly item: string; readonly price: string; readonly recipe: string }[]
): DishFigures['change'] => ({ month: '2026-09', plateCost: { ...moved, ingredients } });

const said = (dish: Partial<DishFigures>) => plainText(dishSentences({ ...DUNE, ...dish }, PURSE)).trim();

describe('dishHead', () => {
  test('dishHead(dish) says section, components, since when it is on the menu, and how it stands', () => {
    expect(dishHead(DUNE, 'en-GB').map(plainText)).toEqual([
      'Cold',
      'ten components',
      'on the menu since 12 September 2025',
      'sells well, leaves much (star), settled in 100 of 100 resamples',
    ]);
  });

  test('dishHead(dish) says so of an extra, a set menu, and what is off the menu', () => {
    const bare = { section: null, components: null, onMenuSince: null, standings: [] };
    const head = (more: Partial<DishFigures>) => dishHead({ ...DUNE, ...bare, ...more }, 'en-GB').map(plainText);
    expect(head({ kind: 'extra' })).toEqual(['given to every guest']);
    expect(head({ kind: 'set_menu', components: 1 })).toEqual(['set menu', 'one component']);
    expect(head({ onSale: false })).toEqual(['not on the menu in this period: October 2026']);
  });
});

describe('standingPhrase', () => {
  const phrase = (more: object) => plainText(standingPhrase({ ...STAR, isCosted: true, ...more }, 'en-GB'));

  test('standingPhrase(standing) says between which two a dish lies, or that only the period before is in doubt', () => {
    const shares = { star: 0.65, plowhorse: 0.35, puzzle: 0, dog: 0 };
    expect(phrase({ settled: false, classShares: shares, between: ['star', 'plowhorse'] })).toBe(
      'sells well, leaves much (star), on the line: 65 of 100 resamples, plowhorse in 35',
    );
    expect(phrase({ settled: false, between: ['star', 'plowhorse'] })).toBe(
      'sells well, leaves much (star), in 100 of 100 resamples, but also plowhorse in the period before',
    );
    expect(phrase({ classShares: null, settled: null })).toContain('too few days to say how sure');
  });

  test('standingPhrase(standing) says why there is no class', () => {
    const none = { class: null, classShares: null, settled: null };
    expect(phrase({ ...none, isCosted: false })).toBe('not classed: what it costs is not known');
    expect(phrase(none)).toBe('not classed: it was on sale on too few days');
    expect(phrase({ ...none, model: 'labour' })).toContain('its labour is not known');
    expect(phrase({ ...none, model: 'goal-value' })).toContain('variable cost is not stated');
  });
});

describe('dishSum', () => {
  test('dishSum(dish) is the sum of the head, term by term', () => {
    expect(dishSum(DUNE, PURSE).map(({ operator, figure, labels }) => [operator, figure, ...labels])).toEqual([
      [null, '15.00', 'net price', '16.50 on the menu'],
      ['−', '3.18', 'plate cost', '21.2\u2009% food cost'],
      ['=', '11.82', 'leaves', 'a portion, before labour'],
      ['×', '312', 'sold in October', '4 on the house'],
      ['=', '3,687.84', 'in the period', '13.2\u2009% of what all left'],
    ]);
    expect(isRoundedApart(DUNE)).toBe(false);
    expect(isRoundedApart({ ...DUNE, figures: { ...FIGURES, contribution: '3688.91' } })).toBe(true);
    expect(isRoundedApart({ ...DUNE, figures: { ...FIGURES, margin: '11.824' } })).toBe(false);
  });

  test('dishSum(dish) of a half-known plate has a floor and words, never a nought', () => {
    const half = { ...FIGURES, plateCost: null, floor: '2.84', linesMissing: 3, linesTotal: 11, foodCostPct: null };
    const figures = { ...half, margin: null, contribution: null, contributionPct: null };
    expect(dishSum({ ...DUNE, figures }, PURSE).map(({ figure }) => figure)).toEqual([
      ...['15.00', 'at least 2.84', 'unknown', '312', 'unknown'],
    ]);
    expect(dishSum({ ...DUNE, figures }, PURSE)[1]?.labels).toContain('3 of 11 lines are not known');
    expect(said({ figures, bought: [] })).toBe(
      'The plate costs at least €2.84: three of its eleven lines have no cost, so what it leaves is not known.',
    );
  });

  test('dishSum(dish) of an extra is what it cost for all guests', () => {
    const extra = { ...DUNE, figures: null, given: { covers: 2437, perCover: '0.179', cost: '436.36' } };
    expect(dishSum(extra, PURSE).map(({ operator, figure }) => [operator, figure])).toEqual([
      [null, '0.18'],
      ['×', '2,437'],
      ['=', '436.36'],
    ]);
  });
});

describe('dishSentences', () => {
  test('dishSentences(dish) says on what the plate hangs', () => {
    expect(said({})).toBe('Three tenths of the plate hangs on one price: Couverture is €0.94 of €3.18.');
    expect(
      said({
        bought: [
          { item: 'Cream', isEstimate: false, cost: '0.5' },
          { item: 'Sugar', isEstimate: false, cost: '0.3' },
        ],
      }),
    ).toBe('No price carries the plate: Cream is €0.50 of €3.18, then Sugar with €0.30.');
    expect(said({ bought: [{ item: 'Dune', isEstimate: true, cost: '3.2' }] })).toContain(
      'is the owner’s estimate, €3.20',
    );
  });

  test('dishSentences(dish) says what changed, and whose doing it was', () => {
    const cream = { item: 'Double cream', price: '0.02', recipe: '0' };
    expect(said({ change: change({ before: '3.16', after: '3.18', price: '0.02', recipe: '0' }, cream) })).toContain(
      'Since September the plate costs €0.02 more, all of it Double cream.',
    );
    const cheaper = { item: 'Double cream', price: '-0.3', recipe: '0' };
    expect(
      said({
        change: change({ before: '3.5', after: '3.1', price: '-0.4', recipe: '0' }, cheaper, {
          item: 'Egg',
          price: '-0.1',
          recipe: '0',
        }),
      }),
    ).toContain('the plate costs €0.40 less, most of it cheaper Double cream.');
    const honey = { item: 'Honey', price: '0', recipe: '0.5' };
    expect(said({ change: change({ before: '3', after: '3.5', price: '0', recipe: '0.5' }, honey) })).toContain(
      '€0.50 more, all of it Honey in the recipe.',
    );
    expect(said({ change: change({ before: '3.18', after: '3.1801', price: '0.0001', recipe: '0' }) })).toContain(
      'costs the same',
    );
  });

  test('dishSentences(dish) says up to which price it stays what it is, where that is near', () => {
    const turning = (turningPrice: string) => [
      { ingredient: 'Couverture', unit: 'kg', priceNow: '36.5', turningPrice, classBeyond: 'plowhorse' } as const,
    ];
    expect(said({ turning: turning('121.08') })).toContain('It stays a star until Couverture reaches €121.08 a kg.');
    expect(said({ turning: turning('20') })).toContain('It becomes a plowhorse where Couverture falls to €20.00 a kg.');
    expect(said({ turning: turning('900') })).not.toContain('until');
  });

  test('shareWords(share) says a share as a fraction that it is nearest to', () => {
    expect([0.98, 0.75, 0.667, 0.6, 0.5, 0.46, 0.4, 0.333, 0.3, 0.25].map(shareWords)).toEqual([
      ...['nearly all', 'three quarters', 'two thirds', 'three fifths', 'half', 'nearly half', 'two fifths'],
      ...['a third', 'three tenths', 'a quarter'],
    ]);
  });
});

test('dishState(dish, latest) says what there is instead, and where to go', () => {
  expect(dishState(DUNE, '2026-09', 'en-GB')).toMatchObject({
    title: 'Dune was not on sale in October 2026',
    action: 'September 2026',
  });
  expect(dishState(DUNE, null, 'en-GB')).not.toHaveProperty('action');
});

test('dishBasis(dish, source) names model, scope and valuation', () => {
  expect(dishBasis({ ...DUNE, mixSection: 'Drinks' }, 'Kasavana & Smith, 1982')).toEqual([
    'Kasavana & Smith, 1982',
    'class and shares in the section Drinks',
    'achieved price, net',
    'all channels together',
    'cost by the price in force each day',
  ]);
});
