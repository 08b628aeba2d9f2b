import { z } from 'zod';
import { AT_STAKE_BY } from '../reports/at-stake';
import { issueShape, moneyShape } from './common-shape';

/** GET months/{month}/at-stake?by= and `report at-stake --json`. */
export const atStakeShape = z.strictObject({
  venue: z.string(),
  month: z.string(),
  period: z.strictObject({ from: z.string(), to: z.string() }),
  currency: z.string(),
  locale: z.string(),
  section: z.string().nullable(),
  by: z.enum(AT_STAKE_BY),
  /** The twelve months of onePercentPerYear. */
  year: z.strictObject({ from: z.string(), to: z.string() }),
  /** Food and drink of everything served. */
  foodSpend: moneyShape,
  /** Items of the menu. */
  dishes: z.number(),
  /** The product group that most of the food cost stands on. */
  concentration: z
    .strictObject({
      group: z.string(),
      share: z.number(),
      dishes: z.number(),
      of: z.number(),
      /** At least a quarter of the food cost. */
      carries: z.boolean(),
    })
    .nullable(),
  /** The largest spend first. */
  items: z.array(
    z.strictObject({
      /** Null: of no product group. */
      name: z.string().nullable(),
      spend: moneyShape,
      share: z.number().nullable(),
      onePercentPerYear: moneyShape.nullable(),
      dishes: z.number(),
      dishNames: z.array(z.string()),
    }),
  ),
  /** Each ingredient at the lowest and highest price of eighteen periods: what the period would have left more. The widest first. */
  tornado: z.array(
    z.strictObject({
      ingredient: z.string(),
      unit: z.enum(['kg', 'l', 'piece']),
      lowest: moneyShape,
      highest: moneyShape,
      atLowest: moneyShape,
      atHighest: moneyShape,
    }),
  ),
  /** Ingredients whose price never moved in that time. */
  unmoved: z.array(z.string()),
  issues: z.array(issueShape),
});

export type AtStakeAnswer = z.infer<typeof atStakeShape>;
