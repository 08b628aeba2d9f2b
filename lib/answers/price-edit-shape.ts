import { z } from 'zod';
import { readPriceEdit } from '../format/price-edit-text';
import type { PriceEdit } from '../model/price-model/edits';

/** A number, also as decimal text. */
const amount = z.union([z.number(), z.string().regex(/^[+-]?\d{1,12}(\.\d{1,10})?$/)]).transform(Number);
const step = {
  /** 0.1 is 10 % more. */
  changePct: amount.optional(),
  /** So much more a kilogram, litre or piece; on the menu, as it stands there. */
  by: amount.optional(),
  /** At this price on every day. */
  to: amount.optional(),
};
const named = z.strictObject({
  of: z.enum(['ingredient', 'group', 'supplier', 'item', 'section']),
  name: z.string().trim().min(1),
  ...step,
});
const all = z.strictObject({ of: z.enum(['everything-bought', 'whole-menu']), ...step });

/**
 * One change of prices, as fields ({of: 'ingredient', name: 'Double cream', changePct: 0.1}, with one of changePct, by and to) or as an
 * address writes it: `Double cream:+10%`.
 */
export const priceEditShape = z.union([z.string(), named, all]);

/** The body of POST months/{month}/price-change. Demand none: guests order what they ordered. */
export const priceChangeBodyShape = z.strictObject({
  edits: z.array(priceEditShape),
  demand: z.enum(['none']).optional(),
});

/** The change that is written; null where the text, or the set of fields, says none or several. */
export function priceEditOf(written: z.output<typeof priceEditShape>): PriceEdit | null {
  if (typeof written === 'string') return readPriceEdit(written);
  const { changePct, by, to } = written;
  const target = 'name' in written ? { of: written.of, name: written.name } : { of: written.of, name: null };
  const steps = [
    ...(changePct === undefined ? [] : [{ how: 'share', by: changePct } as const]),
    ...(by === undefined ? [] : [{ how: 'amount', by } as const]),
    ...(to === undefined ? [] : [{ how: 'flat', to } as const]),
  ];
  const [only, another] = steps;
  return only === undefined || another !== undefined ? null : { target, step: only };
}
