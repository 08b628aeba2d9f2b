import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lineText } from '@/lib/intake/line-text';
import { settledLine } from '@/lib/intake/settled-line';
import { typedLine } from '@/lib/intake/typed-line';
import type { TypedLine } from '@/lib/model/line-question';

const METRIC = { measures: 'metric', decimalComma: false } as const;
const US = { measures: 'us', decimalComma: false } as const;
const read = (text: string): TypedLine => typedLine(text, METRIC);
const codes = (line: TypedLine): readonly string[] => line.questions.map(({ code }) => code);
const amount = ({ quantity, upTo, unit, name }: TypedLine) => [quantity, upTo, unit, name];

describe('typedLine: what is certain', () => {
  test.each([
    ['250 g double cream', 250, 'g', 'double cream'],
    ['250g double cream.', 250, 'g', 'double cream'],
    ['2 tbsp honey', 2, 'tbsp', 'honey'],
    ['1 1/2 cups of sugar', 1.5, 'cup', 'sugar'],
    ['2½ tsp salt', 2.5, 'tsp', 'salt'],
    ['¾ kg plums', 0.75, 'kg', 'plums'],
    ['0,5 l milk', 0.5, 'l', 'milk'],
    ['0,250 kg butter', 0.25, 'kg', 'butter'],
    ['1.250 kg butter', 1.25, 'kg', 'butter'],
    ['1,234,567 g flour', 1_234_567, 'g', 'flour'],
    ['one and a half cups milk', 1.5, 'cup', 'milk'],
    ['A quarter of a pound of fresh butter.', 0.25, 'lb', 'fresh butter'],
    ['half a dozen eggs', 0.5, 'dozen', 'eggs'],
    ['Three eggs', 3, 'each', 'eggs'],
    ['- [ ] 3 eggs', 3, 'each', 'eggs'],
    ['• 200 g **caster** [sugar](/sugar)', 200, 'g', 'caster sugar'],
    ['Lemon juice 1 tbsp', 1, 'tbsp', 'Lemon juice'],
    ['Eggs: 5', 5, 'each', 'Eggs'],
    ['milk, 1 l', 1, 'l', 'milk'],
    ['half and half, 1 cup', 1, 'cup', 'half and half'],
    ['1 stone fruit', 1, 'each', 'stone fruit'],
    ['4 us tbsp rum', 4, 'us tbsp', 'rum'],
    ['400 ml can coconut milk', 400, 'ml', 'coconut milk'],
    ['450 g (1 lb) plums', 450, 'g', 'plums'],
    ['1 lb 4 oz plums', 1.25, 'lb', 'plums'],
    ['1 lb (16 oz) butter', 1, 'lb', 'butter'],
    ['1 x vanilla pod', 1, 'each', 'vanilla pod'],
    ['49 figs', 49, 'each', 'figs'],
    ['100g 70% dark chocolate', 100, 'g', '70% dark chocolate'],
    ['100 g dark chocolate (70 %)', 100, 'g', 'dark chocolate'],
  ])('typedLine(%s)', (text, quantity, unit, name) => {
    const line = read(text);
    expect([...amount(line), codes(line)]).toEqual([quantity, null, unit, name, []]);
    expect(line.certain).toBe(true);
    expect(line.written).toBe(text);
  });

  test('typedLine(butter, 100 g, softened) tells what is done to it', () => {
    expect(read('butter, 100 g, softened')).toMatchObject({ quantity: 100, unit: 'g', name: 'butter' });
    expect(read('butter, 100 g, softened').preparation).toBe('softened');
    expect(read('2 finely chopped pears').preparation).toBe('finely chopped');
    expect(read('Butter melted 2 tbsp')).toMatchObject({ name: 'Butter', preparation: 'melted', certain: true });
    expect(read('2 large apples, peeled, cored and diced').preparation).toBe('peeled, cored and diced');
  });

  test('typedLine(zest of 4 lemons) is four lemons as bought, for their zest', () => {
    expect(read('zest of 4 lemons')).toMatchObject({ quantity: 4, unit: 'each', use: 'zest', name: 'lemons' });
    expect(read('zest of 4 lemons').as).toBe('bought');
    expect(read('Juice of 1 lime')).toMatchObject({ use: 'juice', name: 'lime', certain: true });
    expect(read('4 lemons, finely zested')).toMatchObject({ use: 'zest', name: 'lemons', certain: true });
    expect(read('20 g lemon zest')).toMatchObject({ use: 'zest', name: 'lemon', as: 'prepared', certain: true });
    expect(read('juice 1 lemon')).toMatchObject({ quantity: 1, use: 'juice', name: 'lemon' });
    expect(read('1 lemon (zest)')).toMatchObject({ use: 'zest', certain: true });
    expect(read('400 g pineapple, juice reserved').use).toBeNull();
  });

  test('typedLine(4 large egg yolks) is the yolk of an egg, and large is a size that is counted', () => {
    expect(read('4 large egg yolks')).toMatchObject({ quantity: 4, unit: 'each', name: 'egg', part: 'yolk' });
    expect(read('4 large egg yolks')).toMatchObject({ size: 'large', as: 'prepared', certain: true });
    expect(read('180 g egg white')).toMatchObject({ quantity: 180, unit: 'g', name: 'egg', part: 'white' });
    expect(read('3 whites')).toMatchObject({ name: 'egg', part: 'white' });
    expect(read('1 white onion')).toMatchObject({ name: 'white onion', part: null });
    expect(read('1 vanilla pod, seeds only')).toMatchObject({ part: 'seeds', as: 'prepared', certain: true });
    expect(read('1 vanilla pod (seeds)')).toMatchObject({ part: 'seeds', note: 'seeds', certain: true });
    expect(read('seeds of 1 vanilla pod')).toMatchObject({ name: 'vanilla pod', part: 'seeds' });
    expect(read('2 extra-large eggs')).toMatchObject({ size: 'extra-large', unit: 'each', name: 'eggs' });
  });

  test('typedLine(text, style) reads a comma as the venue writes it', () => {
    const comma = (text: string) => typedLine(text, { measures: 'metric', decimalComma: true });
    expect(comma('1,5 kg Mehl')).toMatchObject({ quantity: 1.5, certain: true });
    expect([comma('1,500 kg Mehl').quantity, read('1,500 g flour').quantity]).toEqual([1.5, 1500]);
    expect([codes(comma('1.500 g Mehl')), codes(read('1,500 g flour'))]).toEqual([['comma'], ['comma']]);
    expect(comma('1.234.567,5 g Mehl').quantity).toBe(1_234_567.5);
  });
});

describe('typedLine: what is asked', () => {
  test.each([
    ['2-3 eggs', ['range']],
    ['2 or 3 eggs', ['range']],
    ['from 30g to 70g of sugar', ['range']],
    ['about 50 g grated chocolate', ['approximate']],
    ['2 heaped tbsp cocoa', ['approximate']],
    ['a few mint tips', ['approximate']],
    ['1-1/2 cups milk', ['mixed-number']],
    ['5/6 figs', ['odd-fraction']],
    ['3 leaves gelatine', ['named-measure']],
    ['a pinch of salt', ['named-measure']],
    ['Pinch of nutmeg', ['named-measure']],
    ['2 tblsp butter', ['unit-spelling']],
    ['2 qts water', ['unit-spelling']],
    ['2 T butter', ['unit-spelling']],
    ['½ pt cream', ['which-unit']],
    ['500 cream', ['no-unit']],
    ['cream 50', ['no-unit']],
    ['1kg/2lb 4oz plums', ['two-quantities']],
    ['1 lb (500 g) plums', ['two-quantities']],
    ['1 g of salt per kg', ['per-portion']],
    ['1 8oz cream cheese', ['pack-size']],
    ['2 x 400 g tins peaches', ['pack-size']],
    ['1 (14 oz) can condensed milk', ['named-measure', 'pack-size']],
    ['250g/9oz plain flour', ['two-quantities']],
    ['1 cup (125 g) flour', ['two-quantities']],
    ['1 cup plus 2 tbsp flour', ['more-quantities']],
    ['2 tbsp lard or butter', ['alternatives']],
    ['3 apples (or 2 pears)', ['alternatives']],
    ['1 tbsp cream and sugar', ['two-things']],
    ['100 g raspberries, blackberries', ['two-things']],
    ['1 lemon, zested and juiced', ['two-uses']],
    ['1 egg (optional)', ['optional']],
    ['2 figs per person', ['per-portion']],
    ['flour 200 g, plus extra for dusting', ['and-more']],
    ['salt to taste', ['no-quantity']],
    ['butter, for greasing', ['no-quantity']],
    ['Chinese 5 Spice', ['no-quantity']],
    ['1/0 cup milk', ['no-quantity']],
    ['0 g salt', ['quantity-size']],
    ['9999999999999 g salt', ['quantity-size']],
    ['250 g', ['no-name']],
    ['2 cloves', ['named-measure', 'no-name']],
    ['', ['nothing-read']],
    [' — ', ['nothing-read']],
  ])('typedLine(%s) asks %j', (text, asked) => {
    const line = read(text);
    expect([...codes(line)].sort()).toEqual([...asked].sort());
    expect(line.certain).toBe(false);
  });

  test('typedLine(2-3 eggs) proposes the lower end and keeps the upper', () => {
    expect(amount(read('2-3 eggs'))).toEqual([2, 3, 'each', 'eggs']);
    expect(amount(read('from 30g to 70g of sugar'))).toEqual([30, 70, 'g', 'sugar']);
    expect(read('2-3 eggs').questions[0]?.facts).toEqual({ from: 2, to: 3 });
  });

  test('typedLine(1 (14 oz) can condensed milk) proposes what the cans hold', () => {
    const line = typedLine('2 (14 oz) cans condensed milk', US);
    expect(amount(line)).toEqual([2, null, 'can', 'condensed milk']);
    expect(line.questions.find(({ code }) => code === 'pack-size')?.proposal).toEqual({ quantity: 28, unit: 'oz' });
    expect(amount(read('2 x 400 g tins peaches'))).toEqual([800, null, 'g', 'peaches']);
  });

  test('typedLine(1 cup plus 2 tbsp) proposes the sum: 1 + 30 / 250 of a metric cup', () => {
    expect(read('1 cup plus 2 tbsp flour').quantity).toBeCloseTo(1.12, 12);
    expect(typedLine('1 cup plus 2 tbsp flour', US).quantity).toBeCloseTo(1.125, 12);
  });

  test('typedLine(salt to taste) leaves the quantity unknown, never one', () => {
    expect(read('salt to taste')).toMatchObject({ quantity: null, unit: null, name: 'salt', note: 'to taste' });
    expect(read('0 g salt').quantity).toBeNull();
  });

  test('typedLine(½ pt cream) asks which pint only where the kitchen is metric', () => {
    expect(typedLine('½ pt cream', US)).toMatchObject({ quantity: 0.5, unit: 'us pt', certain: true });
    expect(read('½ pt cream').questions[0]?.facts).toMatchObject({ read: 'us pt', otherwise: 'imperial pint' });
    expect(read('1 us pint cream').certain).toBe(true);
    expect(read('1 imperial pint cream').certain).toBe(true);
  });

  test('typedLine(12 g gelatine (6 leaves)) goes by the weight and keeps the leaves as a note', () => {
    expect(read('12 g gelatine (6 leaves)')).toMatchObject({
      quantity: 12,
      unit: 'g',
      note: '6 leaves',
      certain: true,
    });
    expect(read('200 g/1 cup sugar')).toMatchObject({ quantity: 200, note: '1 cup', certain: true });
    expect(read('1 cup (200 g, level) sugar')).toMatchObject({ quantity: 1, note: '200 g, level', certain: false });
    expect(read('1 cup (200 g) sugar').questions[0]?.proposal).toEqual({ quantity: 200, unit: 'g' });
  });

  test('typedLine(500 g (1 lb)) asks, for they are a tenth apart; 450 g (1 lb) are not', () => {
    expect(codes(read('500 g (1 lb) plums'))).toEqual(['two-quantities']);
    expect(read('500 g (1 lb) plums').questions[0]?.proposal).toEqual({ quantity: 1, unit: 'lb' });
  });
});

describe('settledLine', () => {
  test('settledLine(3 leaves gelatine, its measures) asks no more, and 3 gelatine leaves is the same', () => {
    const settled = settledLine(read('3 leaves gelatine'), ['Leaf']);
    expect(settled).toMatchObject({ quantity: 3, unit: 'Leaf', measure: true, name: 'gelatine', certain: true });
    expect(settledLine(read('3 gelatine leaves'), ['Leaf'])).toMatchObject({ unit: 'Leaf', name: 'gelatine' });
    expect(settledLine(read('1 vanilla pod, split'), ['pod'])).toMatchObject({ unit: 'pod', name: 'vanilla' });
  });

  test('settledLine(line, other measures) changes nothing', () => {
    for (const text of ['3 leaves gelatine', '250 g cream', '2 bay leaves', '2-3 sheets gelatine']) {
      expect(settledLine(read(text), ['tin'])).toEqual(read(text));
    }
    expect(codes(settledLine(read('2-3 leaves gelatine'), ['leaf']))).toEqual(['range']);
  });
});

const WORDS = ['butter', 'double cream', 'dark chocolate', 'caster sugar', 'vanilla pod', 'pears', 'Crème fraîche'];
const written = fc.record({
  quantity: fc.integer({ min: 1, max: 4_000_000 }).map((thousandths) => thousandths / 1000),
  unit: fc.constantFrom('g', 'kg', 'ml', 'l', 'tbsp', 'tsp', 'cup', 'oz', 'each', 'dozen'),
  name: fc.constantFrom(...WORDS, 'egg'),
  size: fc.constantFrom(null, 'large', 'small', 'medium'),
  use: fc.constantFrom(null, null, 'zest', 'juice'),
  part: fc.constantFrom(null, null, 'yolk', 'white', 'seeds'),
  preparation: fc.constantFrom(null, 'softened', 'finely chopped', 'peeled and diced', 'at room temperature'),
});

describe('typedLine: any text', () => {
  test('typedLine(lineText(line)) is the line again', () => {
    fc.assert(
      fc.property(written, (any) => {
        const line = { ...any, part: any.use === null ? any.part : null };
        const again = typedLine(lineText(line), US);
        expect(again).toMatchObject(line);
        expect(again.certain).toBe(line.unit !== 'each' || line.quantity < 50);
      }),
      { numRuns: 500 },
    );
  });

  test('lineText(line) without a quantity says none', () => {
    expect(lineText({ ...read('salt'), name: 'salt' })).toBe('salt');
    expect(lineText(read('3 leaves gelatine'))).toBe('3 leaves gelatine');
    expect(lineText(read('4 large egg yolks'))).toBe('4 large egg yolk');
    expect(lineText(read('zest of 4 lemons'))).toBe('zest of 4 lemons');
    expect(lineText(read('1/3 cup milk'))).toBe('0.333333333333 cup milk');
  });

  const anything = fc.oneof(
    fc.string({ unit: 'grapheme', maxLength: 80 }),
    fc.string({ unit: 'binary', maxLength: 80 }),
    fc
      .array(
        fc.constantFrom(
          '1',
          '½',
          '2/0',
          '-',
          'to',
          'cup',
          '(',
          ')',
          '[',
          ',',
          'or',
          'g',
          'x',
          'zest of',
          'a',
          '+',
          'eggs',
          '.5',
          '~',
        ),
        {
          maxLength: 14,
        },
      )
      .map((words) => words.join(' ')),
  );

  test('typedLine(any text) throws nothing, keeps the text, and has a positive quantity or none', () => {
    fc.assert(
      fc.property(anything, fc.constantFrom(METRIC, US), (text, style) => {
        const line = typedLine(text, style);
        expect(line.written).toBe(text);
        expect(line.quantity === null || (line.quantity > 0 && Number.isFinite(line.quantity))).toBe(true);
        expect(line.quantity === null).toBe(line.unit === null);
        expect(line.certain).toBe(line.questions.length === 0);
        if (line.certain) expect([line.quantity, line.name]).not.toContain(null);
        if (line.certain) expect(line.name).not.toBe('');
      }),
      { numRuns: 3000 },
    );
  });

  test('typedLine(a long line) takes no time, and one of over 400 characters is not taken apart', () => {
    const begun = performance.now();
    for (const piece of [
      '1 ',
      '(',
      'a, ',
      '1/',
      'or ',
      'chopped ',
      '- ',
      '1-',
      'x',
      '1 lb ',
      '1 g/',
      'zest, ',
      'plus 1 g ',
    ]) {
      const text = piece.repeat(400).slice(0, 400);
      expect(codes(read(text))).not.toContain('line-too-long');
      expect(codes(read(`${text}1`))).toEqual(['line-too-long']);
      expect(read(`${text}1`)).toMatchObject({ written: `${text}1`, quantity: null, name: '' });
    }
    expect(performance.now() - begun).toBeLessThan(2000);
  });
});
