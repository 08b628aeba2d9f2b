import { z } from 'zod';
import { issueShape, moneyShape } from './common-shape';

/** GET months/{month}/dish-costs and `report dish-costs --json`. One row an item and channel; extras per cover beside them. */
export const dishCostsShape = z.strictObject({
  venue: z.string(),
  month: z.string(),
  period: z.strictObject({ from: z.string(), to: z.string() }),
  currency: z.string(),
  locale: z.string(),
  items: z.array(
    z.strictObject({
      item: z.string(),
      kind: z.enum(['ingredient', 'component', 'dish', 'set_menu', 'extra']),
      section: z.string().nullable(),
      channel: z.string(),
      sold: z.number(),
      netPrice: moneyShape.nullable(),
      plateCost: moneyShape.nullable(),
      floor: moneyShape.nullable(),
      linesMissing: z.number().nullable(),
      linesTotal: z.number().nullable(),
      estimated: z.boolean(),
      recipeLabour: moneyShape.nullable(),
      foodPlusLabour: moneyShape.nullable(),
      smallBatchLoss: moneyShape.nullable(),
      foodCostPct: z.number().nullable(),
      commission: moneyShape.nullable(),
      margin: moneyShape.nullable(),
      platingMinutes: z.number().nullable(),
      marginPerPlatingMinute: moneyShape.nullable(),
    }),
  ),
  extras: z.array(
    z.strictObject({
      item: z.string(),
      covers: z.number(),
      perCover: moneyShape.nullable(),
      cost: moneyShape.nullable(),
    }),
  ),
  issues: z.array(issueShape),
});

export type DishCostsAnswer = z.infer<typeof dishCostsShape>;
