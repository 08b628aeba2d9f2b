import fc from 'fast-check';
import { expect, test } from 'vitest';
import { dayText, parseDay } from '@/lib/core/days';
import { compareDecimals, type DecimalText, decimalText, fractionOfPerCent } from '@/lib/core/decimal-text';
import { businessDay } from '@/lib/intake/business-day';
import { CellFault, declaration } from '@/lib/intake/cells';
import { day } from '@/lib/intake/dates';
import { isGtin } from '@/lib/intake/gtin';
import { notNegative, perCent, positive, signed, whole } from '@/lib/intake/numbers';

const comma = { decimalComma: true };
const point = { decimalComma: false };
const rule = (read: unknown) => (read instanceof CellFault ? read.rule : read);

test('decimalText(text) is one text for one number', () => {
  expect(['+012.50', '12.5', '-0.0', '.5', '7.', '0', '00', '-00.10'].map(decimalText)).toEqual([
    '12.5',
    '12.5',
    '0',
    '0.5',
    '7',
    '0',
    '0',
    '-0.1',
  ]);
  expect(['', '.', '-', '1e3', '1,5', '0x1', ' 1', '1 2', 'NaN'].map(decimalText)).toEqual(Array(9).fill(null));
});

test('decimalText(text) of any two texts is the same exactly where the numbers are equal', () => {
  const number = fc.tuple(
    fc.constantFrom('', '-', '+'),
    fc.bigInt({ min: 0n, max: 10n ** 20n }),
    fc.stringMatching(/^\d{0,12}$/),
  );
  const text = number.map(([sign, whole, decimals]) => `${sign}${whole}${decimals === '' ? '' : `.${decimals}`}`);
  fc.assert(
    fc.property(text, text, (a, b) => {
      const [x, y] = [decimalText(a), decimalText(b)] as DecimalText[];
      expect(x === y).toBe(compareDecimals(x ?? ('' as DecimalText), y ?? ('' as DecimalText)) === 0);
    }),
  );
});

test('fractionOfPerCent(perCent) is exact', () => {
  expect(fractionOfPerCent('27.5' as DecimalText)).toBe('0.275');
  expect(fractionOfPerCent('0.0000000000000000001' as DecimalText)).toBe('0.000000000000000000001');
});

test('signed(style)(cell) understands a decimal comma only where the comma does not separate the cells', () => {
  expect(signed(comma)('-1234,50')).toBe('-1234.5');
  expect(signed(comma)('1234.50')).toBe('1234.5');
  expect(signed(point)('\u22123.20')).toBe('-3.2'); // a typographic minus
  expect(rule(signed(point)('12,50'))).toBe('not-a-number');
  expect(rule(signed(comma)('1.234,50'))).toBe('not-a-number');
  expect(['', 'two', '12 g', '1e5', '12%', '1 000'].map((cell) => rule(signed(comma)(cell)))).toEqual(
    Array(6).fill('not-a-number'),
  );
  expect(['12.50 \u20ac', '$3', '\u00a312', 'EUR 4.20', '4,20 EUR'].map((cell) => rule(signed(comma)(cell)))).toEqual(
    Array(5).fill('currency-sign'),
  );
  expect(rule(signed(point)('1234567890123'))).toBe('number-size');
  expect(rule(signed(point)(`0.${'1'.repeat(21)}`))).toBe('number-size');
});

test('positive, notNegative and whole refuse what makes no sense', () => {
  expect(['0', '-1', '0.0001'].map((cell) => rule(positive(point)(cell)))).toEqual([
    'not-positive',
    'not-positive',
    '0.0001',
  ]);
  expect(['0', '-1'].map((cell) => rule(notNegative(point)(cell)))).toEqual(['0', 'negative']);
  expect(['38', '38.0', '38.5'].map((cell) => rule(whole(point)(cell)))).toEqual(['38', '38', 'not-whole']);
});

test('perCent(range)(cell) keeps the ends that belong to it, exactly', () => {
  const usable = perCent({ from: 0, to: 100, open: 'from' }, point);
  expect(['100', '0', '0.001', '100.0000000000000001', '-5'].map((cell) => rule(usable(cell)))).toEqual([
    '1',
    'out-of-range',
    '0.00001',
    'out-of-range',
    'out-of-range',
  ]);
  const lost = perCent({ from: 0, to: 100, open: 'to' }, point);
  expect(['0', '99.9', '100'].map((cell) => rule(lost(cell)))).toEqual(['0', '0.999', 'out-of-range']);
});

test('day(cell) takes ISO days only and says what was probably meant', () => {
  expect(day('2028-02-29')).toBe(parseDay('2028-02-29'));
  expect(rule(day('2026-02-29'))).toBe('no-such-day');
  expect(rule(day('0206-10-01'))).toBe('far-day');
  const iso = (cell: string) => (day(cell) as CellFault).facts.iso;
  expect(iso('31/12/2026')).toEqual(['2026-12-31']);
  expect(iso('12-31-2026')).toEqual(['2026-12-31']);
  expect(iso('1.2.2026')).toEqual(['2026-02-01', '2026-01-02']);
  expect(iso('1.2.26')).toEqual([]);
  expect(iso('26-02-01')).toEqual([]);
  expect(iso('1.2.0026')).toEqual([]);
  expect(iso('2026/12/31')).toEqual(['2026-12-31']);
  expect(iso('20261231')).toEqual(['2026-12-31']);
  expect(iso('46022')).toEqual([]);
  expect(iso('first of May')).toEqual([]);
});

test('businessDay(clock)(stamp) before the hour at which the day ends belongs to the day before', () => {
  const read = businessDay({ timeZone: 'Europe/Dublin', dayEnds: 240 });
  const settled = (stamp: string) => {
    const found = read(stamp);
    return found instanceof CellFault ? found.rule : dayText(found);
  };
  expect(settled('2026-10-03T22:15')).toBe('2026-10-03');
  expect(settled('2026-10-04 03:59:59')).toBe('2026-10-03');
  expect(settled('2026-10-04 04:00')).toBe('2026-10-04');
  // Dublin is an hour ahead of UTC until 2026-10-25, then at UTC
  expect(settled('2026-10-04T02:59:00Z')).toBe('2026-10-03');
  expect(settled('2026-10-04T03:00:00Z')).toBe('2026-10-04');
  expect(settled('2026-10-26T03:30:00.250Z')).toBe('2026-10-25');
  expect(settled('2026-10-04T12:30+09:00')).toBe('2026-10-04'); // 04:30 in Dublin
  expect(settled('2026-10-04T11:30+09')).toBe('2026-10-03'); // 03:30 in Dublin
  expect(
    ['2026-10-04', '2026-10-04T25:00', '2026-10-04T10:61', '10:30', '2026-10-04T10:30+99:00'].map(settled),
  ).toEqual(Array(5).fill('not-a-time'));
  expect(settled('2026-13-04T10:00')).toBe('no-such-day');
});

test('declaration(cell): none is declared, blank parts are nothing', () => {
  expect(declaration('none')).toEqual([]);
  expect(declaration(' Nuts; milk;; MILK ')).toEqual(['milk', 'nuts']);
  expect(rule(declaration('none; milk'))).toBe('none-and-more');
});

// The first is GS1's worked example (from memory); the others made by hand from the weights 3 and 1.
test('isGtin(digits) checks the last digit', () => {
  expect(['6291041500213', '96385074', '123456789012', '10614141000415'].map(isGtin)).toEqual(Array(4).fill(true));
  expect(['6291041500214', '9638507', '', '62910415002131', 'abc'].map(isGtin)).toEqual(Array(5).fill(false));
});
