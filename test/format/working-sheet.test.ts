import { expect, test } from 'vitest';
import { plainText } from '@/lib/format/phrase';
import { printedSheet, type Sheet, type SheetLine } from '@/lib/format/working-sheet';

const EUR = { currency: 'EUR', locale: 'en-GB' };

function line(item: string, cost: string | null, change: Partial<SheetLine> = {}): SheetLine {
  return {
    ...{ item, kind: 'ingredient', position: 1, quantity: 1, unit: 'g', bought: 1, boughtUnit: 'g', usableYieldPct: 1 },
    ...{
      unitPrice: cost,
      sharePct: null,
      use: null,
      part: null,
      byProduct: null,
      department: 'food',
      estimated: false,
    },
    ...{ offer: null, recipe: null, cost, floor: null, issues: [], closed: false, lines: [] },
    ...change,
  };
}
const sheet = (plateCost: string | null, lines: readonly SheetLine[], floor: string | null = null): Sheet => ({
  ...{ plateCost, floor, recipe: null, lines },
});
const costs = (rows: readonly { readonly cost: string }[]) => rows.map(({ cost }) => cost);

// 0.3334 + 0.3333 + 0.3333 = 1: printed each by itself they would be 0.999
test('printedSheet(sheet) prints lines that sum to the total as printed, at every level', () => {
  const inside = [line('a', '0.11115'), line('b', '0.11115'), line('c', '0.1111')];
  const { rows, total } = printedSheet(
    sheet('1', [
      line('Made', '0.3334', { kind: 'component', lines: inside }),
      line('x', '0.3333'),
      line('y', '0.3333'),
    ]),
    EUR,
  );
  expect(total).toBe('1.000');
  expect(costs(rows)).toEqual(['0.334', '0.333', '0.333']);
  expect(costs(rows[0]?.rows ?? [])).toEqual(['0.112', '0.111', '0.111']);
});

test('printedSheet(sheet).inOneLine is the sum of its largest parts', () => {
  const five = ['0.1', '0.5', '0.2', '0.3', '0.4'].map((cost, index) => line(`Part ${index}`, cost));
  const said = (plateCost: string, lines: readonly SheetLine[]) => {
    const { inOneLine } = printedSheet(sheet(plateCost, lines), EUR);
    return inOneLine && plainText(inOneLine);
  };
  expect(said('1.5', five)).toBe('€1.500 = 0.500 Part 1 + 0.400 Part 4 + 0.300 Part 3 + 0.300 for 2 more');
  expect(said('1.1', five.slice(0, 4))).toBe('€1.100 = 0.500 Part 1 + 0.300 Part 3 + 0.200 Part 2 + 0.100 Part 0');
  expect(said('0.1', five.slice(0, 1))).toBeNull();
  const credit = line('Trimmings', '-0.2', { byProduct: 'made' });
  expect(said('0.3', [line('Dough', '0.5'), credit])).toBe('€0.300 = 0.500 Dough − 0.200 Trimmings');
});

test('printedSheet(what is not known) prints the word, or the part that is known, and what is missing', () => {
  const missing = line('Honey', null, { issues: [{ text: 'No supplier offers Honey.' }] });
  const made = line('Syrup', null, { kind: 'component', floor: '0.2', lines: [missing, line('Cream', '0.2')] });
  const { rows, total, inOneLine } = printedSheet(sheet(null, [made], '0.2'), EUR);
  expect([total, inOneLine]).toEqual(['at least 0.20', null]);
  expect(rows[0]).toMatchObject({ cost: 'at least 0.20', steps: null });
  expect(costs(rows[0]?.rows ?? [])).toEqual(['unknown', '0.200']);
  expect(rows[0]?.rows[0]?.missing).toEqual(['No supplier offers Honey.']);
});
