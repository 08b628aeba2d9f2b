import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { priceEditText, readPriceEdit, readStep, readTarget } from '@/lib/format/price-edit-text';
import type { EditTarget, PriceEdit, PriceStep } from '@/lib/model/price-model/edits';

const share = (by: number): PriceStep => ({ how: 'share', by });

describe('priceEditText(edit)', () => {
  const said: readonly [string, PriceEdit][] = [
    ['Double cream:+10%', { target: { of: 'ingredient', name: 'Double cream' }, step: share(0.1) }],
    [
      'Dark couverture 70 %:19.2',
      { target: { of: 'ingredient', name: 'Dark couverture 70 %' }, step: { how: 'flat', to: 19.2 } },
    ],
    ['group:Chocolate:-5%', { target: { of: 'group', name: 'Chocolate' }, step: share(-0.05) }],
    ['supplier:Bay Dairy:+2.5%', { target: { of: 'supplier', name: 'Bay Dairy' }, step: share(0.025) }],
    ['everything:+3%', { target: { of: 'everything-bought', name: null }, step: share(0.03) }],
    ['menu:Dune:14.5', { target: { of: 'item', name: 'Dune' }, step: { how: 'flat', to: 14.5 } }],
    ['section:Plated:+0.5', { target: { of: 'section', name: 'Plated' }, step: { how: 'amount', by: 0.5 } }],
    ['menu:+4%', { target: { of: 'whole-menu', name: null }, step: share(0.04) }],
    ['ingredient:menu:-0.1', { target: { of: 'ingredient', name: 'menu' }, step: { how: 'amount', by: -0.1 } }],
    ['ingredient:group:x:0', { target: { of: 'ingredient', name: 'group:x' }, step: { how: 'flat', to: 0 } }],
  ];
  test.each(said)('%s, and readPriceEdit(text) is the same change', (text, edit) => {
    expect(priceEditText(edit)).toBe(text);
    const read = readPriceEdit(text);
    expect(read?.target).toEqual(edit.target);
    expect(read?.step.how).toBe(edit.step.how);
  });
});

test('readPriceEdit(priceEditText(edit)) is the edit, whatever its name', () => {
  const name = fc
    .string({ minLength: 1, unit: 'grapheme' })
    .map((text) => text.trim())
    .filter((text) => text !== '');
  const target: fc.Arbitrary<EditTarget> = fc.oneof(
    fc.record({
      of: fc.constantFrom(
        'ingredient' as const,
        'group' as const,
        'supplier' as const,
        'item' as const,
        'section' as const,
      ),
      name,
    }),
    fc.constant({ of: 'everything-bought' as const, name: null }),
    fc.constant({ of: 'whole-menu' as const, name: null }),
  );
  const cents = fc.integer({ min: -9999, max: 100_000 });
  const step: fc.Arbitrary<PriceStep> = fc.oneof(
    cents.map((by) => ({ how: 'share', by: by / 10_000 }) as const),
    cents.map((by) => ({ how: 'amount', by: by / 100 }) as const),
    fc.nat({ max: 100_000 }).map((to) => ({ how: 'flat', to: to / 100 }) as const),
  );
  fc.assert(
    fc.property(target, step, (aim, change) => {
      const read = readPriceEdit(priceEditText({ target: aim, step: change }));
      expect(read?.target).toEqual(aim);
      expect(read?.step.how).toBe(change.how);
      const value = (of: PriceStep | undefined) => (of === undefined ? Number.NaN : of.how === 'flat' ? of.to : of.by);
      expect(value(read?.step)).toBeCloseTo(value(change), 12);
    }),
  );
});

test('readStep(text) takes spaces and a typographer’s minus, and refuses what is no change', () => {
  expect(readStep(' \u22125 %')).toEqual(share(-0.05));
  expect(readStep('+0.50')).toEqual({ how: 'amount', by: 0.5 });
  for (const wrong of ['', '10%', '1,5', 'ten', '+', '1e3', '--1', '5 %']) expect(readStep(wrong), wrong).toBeNull();
});

test('readPriceEdit(text) without a name or a change is null; readTarget(text) reads the name alone', () => {
  for (const wrong of ['', 'Double cream', ':+10%', 'group::+10%', 'Double cream:'])
    expect(readPriceEdit(wrong), wrong).toBeNull();
  expect(readTarget(' Double cream ')).toEqual({ of: 'ingredient', name: 'Double cream' });
});
