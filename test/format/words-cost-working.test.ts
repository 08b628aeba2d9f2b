import { describe, expect, test } from 'vitest';
import {
  meanWords,
  offerWords,
  quantityFigure,
  recipeWords,
  spanWords,
  sumWords,
  type WorkedLine,
  type WorkedRecipeWords,
} from '@/lib/format/words/cost-working';

const EUR = { currency: 'EUR', locale: 'en-GB' };
const spaced = (text: string) => text.replace(/[\u2009\u00a0]/g, ' ');

const line: WorkedLine = {
  ...{ item: 'Hazelnuts', kind: 'ingredient', quantity: 20, unit: 'g', bought: 20 / 0.93, boughtUnit: 'g' },
  ...{ usableYieldPct: 0.93, unitPrice: '0.0164', sharePct: null, use: null, part: null, byProduct: null },
  ...{ department: 'food', estimated: false, offer: null, recipe: null },
};
const sum = (change: Partial<WorkedLine>, breakage = 0) => spaced(sumWords({ ...line, ...change }, breakage, EUR));

describe('sumWords(line, breakage, purse)', () => {
  test('shows each factor that is not 1', () => {
    expect(sum({})).toBe('20 g ÷ 0.93 usable × €16.40 a kg');
    expect(sum({ usableYieldPct: 1, bought: 20 })).toBe('20 g × €16.40 a kg');
    expect(sum({ use: 'juice', usableYieldPct: 0.42 })).toBe('20 g ÷ 0.42 usable as juice × €16.40 a kg');
    expect(sum({ bought: 20 / 0.93 / 0.88 }, 0.12)).toBe('20 g ÷ 0.93 usable ÷ 0.88 served × €16.40 a kg');
  });

  // 2 leaves of 2 g
  test('shows what a quantity in another unit comes to', () => {
    const leaf = { quantity: 2, unit: 'leaf', bought: 4, usableYieldPct: 1, unitPrice: '0.0225' };
    expect(sum(leaf)).toBe('2 leaf = 4 g × €22.50 a kg');
    expect(sum({ ...leaf, bought: -4, byProduct: 'made' })).toBe('−2 leaf = −4 g × €22.50 a kg');
  });

  test('of a choice shows its share, of what is not measured what it is a share of', () => {
    const dish = { quantity: 1, unit: 'each', boughtUnit: 'each', usableYieldPct: 1, unitPrice: '3.18' };
    expect(sum({ ...dish, kind: 'dish', bought: 0.4, sharePct: 0.4 })).toBe('1 × 40 % of guests × €3.18 each');
    const q = { kind: 'not_measured' as const, quantity: 0.02, unit: null, boughtUnit: null, unitPrice: '3.1' };
    expect(sum(q)).toBe('2 % of €3.10 of food and drink');
    expect(sum({ ...q, unitPrice: null })).toBe('2 % of the food and drink');
  });

  test('without a price says so', () => {
    expect(sum({ unitPrice: null })).toBe('20 g ÷ 0.93 usable × price unknown');
  });
});

test('quantityFigure(quantity) keeps four figures', () => {
  expect([137.52, 83.333, 0.021333, 0, 12345.6].map((each) => quantityFigure(each, 'en-GB'))).toEqual([
    '137.5',
    '83.33',
    '0.02133',
    '0',
    '12,346',
  ]);
});

test('offerWords(offer) names supplier, code, pack, price, and which price it is', () => {
  const offer = {
    ...{ supplier: 'Strand Dry Goods', code: '4410', packCount: 4, packSize: 2.5, packUnit: 'kg' },
    ...{ price: '164.00', currency: 'EUR', rate: 1, priceKind: 'invoice', priceFrom: '2026-10-03', priceTo: null },
  };
  expect(spaced(offerWords(offer, EUR))).toBe(
    'Strand Dry Goods, code 4410: 4 × 2.5 kg at €164.00, invoice of 3 October 2026',
  );
  const abroad = { currency: 'GBP', rate: 1.142, priceKind: 'agreed', priceTo: '2027-03-31', packCount: 1 };
  expect(spaced(offerWords({ ...offer, ...abroad }, EUR))).toBe(
    'Strand Dry Goods, code 4410: 2.5 kg at £164.00 × 1.142, agreed price of 3 October 2026, until 31 March 2027',
  );
});

describe('recipeWords(recipe, isBatch)', () => {
  const recipe = {
    ...{ validFrom: '2026-09-01', usable: 960, usableUnit: 'g', batchLossG: 20, breakagePct: 0.12 },
    ...{ overrunPct: null, costSharePct: null },
  };
  const words = (change: Partial<WorkedRecipeWords>, isBatch = true) =>
    spaced(recipeWords({ ...recipe, ...change }, isBatch, 'en-GB'));

  test('says version, what a batch gives, and what is lost', () => {
    expect(words({})).toBe(
      'Version of 1 September 2026 · a batch gives 960 g after 20 g lost in every batch · 12 % breaks or is re-fired',
    );
    expect(words({ batchLossG: null, breakagePct: 0, usable: 40, usableUnit: 'each' })).toBe(
      'Version of 1 September 2026 · a batch gives 40 pieces',
    );
  });

  test('of a plate leaves the batch out, of a part says its share', () => {
    expect(words({ breakagePct: 0 }, false)).toBe('Version of 1 September 2026');
    const part = { ...recipe, usable: 18, costSharePct: 0.45 };
    expect(spaced(recipeWords(part, false, 'en-GB'))).toBe('one of the whole gives 18 g, at 45 % of its price');
  });
});

describe('meanWords(period, working)', () => {
  const one = { channel: null, from: '2026-10-01', sold: 140, plateCost: '3.16' };
  const two = { channel: null, from: '2026-10-15', sold: 172, plateCost: '3.2' };
  const period = { month: '2026-10', sold: 312, plateCost: '3.1821', spans: [one, two] };
  const day = { date: '2026-10-31', channel: 'dine_in' };

  test('says what the mean is a mean of, and which day is worked out', () => {
    expect(meanWords(period, day, EUR)).toBe(
      'October 2026: €3.1821, the mean of 312 portions. Worked out for 31 October 2026, the last day on sale.',
    );
    expect(spanWords(period, EUR)).toEqual([
      'from 1 October 2026 €3.16, 140 portions',
      'from 15 October 2026 €3.20, 172 portions',
    ]);
  });

  test('of one cost all the while says so, and has no parts', () => {
    const same = { ...period, plateCost: '3.16', spans: [one] };
    expect(meanWords(same, day, EUR)).toBe(
      'October 2026: €3.16 on every day on sale. Worked out for 31 October 2026, the last of them.',
    );
    expect(spanWords(same, EUR)).toEqual([]);
  });

  test('names the channel where channels cost differently', () => {
    const apart = {
      ...period,
      spans: [
        { ...one, channel: 'dine_in' },
        { ...two, channel: 'takeaway' },
      ],
    };
    expect(meanWords(apart, day, EUR)).toContain('the last day on sale, dine in.');
    expect(spanWords(apart, EUR)[1]).toBe('takeaway from 15 October 2026 €3.20, 172 portions');
  });
});
