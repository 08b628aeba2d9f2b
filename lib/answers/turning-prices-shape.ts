import { z } from 'zod';
import { PRICED_MODELS } from '../model/price-model/class-axes';
import { issueShape, moneyShape } from './common-shape';
import { mixClassShape } from './menu-mix-shape';

/** GET months/{month}/turning-prices?ingredient= and `report turning-prices --json`. Prices are of a kilogram, litre or piece. */
export const turningPricesShape = z.strictObject({
  venue: z.string(),
  month: z.string(),
  period: z.strictObject({ from: z.string(), to: z.string() }),
  currency: z.string(),
  locale: z.string(),
  section: z.string().nullable(),
  model: z.enum(PRICED_MODELS),
  ingredient: z.string(),
  unit: z.enum(['kg', 'l', 'piece']),
  priceNow: moneyShape.nullable(),
  /** By name. */
  items: z.array(
    z.strictObject({
      item: z.string(),
      section: z.string().nullable(),
      ingredient: z.string(),
      unit: z.enum(['kg', 'l', 'piece']),
      priceNow: moneyShape.nullable(),
      turningPrice: moneyShape.nullable(),
      classNow: mixClassShape.nullable(),
      classBeyond: mixClassShape.nullable(),
    }),
  ),
  issues: z.array(issueShape),
});

export type TurningPricesAnswer = z.infer<typeof turningPricesShape>;
