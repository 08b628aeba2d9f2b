import { z } from 'zod';

/** The months with sales, as the ribbon shows them. */
export const periodsShape = z.strictObject({
  venue: z.string(),
  currency: z.string(),
  locale: z.string(),
  targetFoodCostPct: z.number().nullable(),
  months: z.array(
    z.strictObject({
      month: z.string(),
      from: z.string(),
      to: z.string(),
      sold: z.number(),
      /** By recipe, of the costed items of the whole menu. */
      foodCostPct: z.number().nullable(),
      coverage: z.number().nullable(),
      /** Rows of sales under names that nobody knows: in no figure. */
      waiting: z.number(),
      closed: z.boolean(),
      /** Its last business day is not over. */
      running: z.boolean(),
    }),
  ),
});

export type PeriodsAnswer = z.infer<typeof periodsShape>;
