import { expect, test } from 'vitest';
import { tornadoFacts } from '@/app/_ui/tornado/tornado-facts';
import { plainText } from '@/lib/format/phrase';
import { concentrationSentence } from '@/lib/format/words/price-spread';
import type { Goods } from '@/lib/model/price-model/price-model';
import type { TornadoBar } from '@/lib/reports/tornado';

const PURSE = { currency: 'EUR', locale: 'en-GB' };

function bar(name: string, atLowest: number, atHighest: number): TornadoBar {
  const goods: Goods = {
    ...{ node: 0, name, unit: 'g', productGroup: null, isPackaging: false, suppliers: ['Bay Dairy'], need: [1] },
    paid: { lowest: 0.001, highest: 0.002 },
  };
  return { goods, range: { lowest: 1, highest: 2 }, isNamed: false, atLowest, atHighest };
}

test('tornadoFacts(tornado, purse) draws on one axis from the worst to the best, and colours what is not zero', () => {
  const facts = tornadoFacts({ bars: [bar('Cream', 300, -100), bar('Sugar', 0.001, -50)], unmoved: ['Salt'] }, PURSE);
  // from -100 to 300: nothing changes at a quarter
  expect(facts?.zero).toBe(0.25);
  expect(facts?.rows).toEqual([
    {
      ...{ item: 'Cream', prices: '1.00 to 2.00 a kg' },
      dear: { at: 0, text: '\u2212100.00', tone: 'dear' },
      spare: { at: 1, text: '+300.00', tone: 'spare' },
    },
    {
      ...{ item: 'Sugar', prices: '1.00 to 2.00 a kg' },
      dear: { at: 0.125, text: '\u221250.00', tone: 'dear' },
      spare: { at: expect.closeTo(0.25, 4), text: '0.00', tone: 'plain' },
    },
  ]);
  expect(facts?.note).toContain('One good has no bar');
});

test('tornadoFacts(tornado, purse) draws the eight widest and counts the others; nothing where no price moved', () => {
  const bars = Array.from({ length: 10 }, (_, index) => bar(`Good ${index}`, 10 - index, index - 10));
  const facts = tornadoFacts({ bars, unmoved: [] }, PURSE);
  expect([facts?.rows.length, facts?.note.includes('Two more with less')]).toEqual([8, true]);
  expect(tornadoFacts({ bars: [], unmoved: ['Salt'] }, PURSE)).toBeNull();
});

test('concentrationSentence(most, locale) says whether one group carries the menu', () => {
  const most = { group: 'Cocoa', share: 0.307, dishes: 13, of: 17, carries: true };
  expect(plainText(concentrationSentence(most, 'en-GB'))).toBe(
    'Cocoa carries this menu: it is 31\u2009% of the food cost, and 13 of 17 dishes take some of it.',
  );
  expect(plainText(concentrationSentence({ ...most, share: 0.2, dishes: 1, carries: false }, 'en-GB'))).toBe(
    'Cocoa is the largest product group, 20\u2009% of the food cost, and 1 of 17 dishes takes some of it.',
  );
});
