import { z } from 'zod';
import { issueShape, moneyShape } from './common-shape';

const figures = {
  /** 2026-10, or 2026-P10. */
  period: z.string(),
  from: z.string(),
  to: z.string(),
  tradingDays: z.number(),
  sold: z.number(),
  comps: z.number(),
  revenue: moneyShape.nullable(),
  /** What the costed portions left, before labour; null where it is known of none. */
  contribution: moneyShape.nullable(),
  /** By recipe, of the costed items. */
  foodCostPct: z.number().nullable(),
  /** Portion-weighted mean of a costed portion. */
  margin: moneyShape.nullable(),
  /** Share of the portions whose margin is known; below 0.9 the period is provisional. */
  coverage: z.number().nullable(),
  provisional: z.boolean(),
};

const totalsShape = z.strictObject({
  /** How many periods are in it. */
  periods: z.number(),
  sold: z.number(),
  contribution: moneyShape.nullable(),
  foodCostPct: z.number().nullable(),
  margin: moneyShape.nullable(),
  coverage: z.number().nullable(),
});

/** GET months/{month}/year, `report year --json` and the figures of /menu/year: one shape. */
export const yearShape = z.strictObject({
  venue: z.string(),
  month: z.string(),
  period: z.strictObject({ from: z.string(), to: z.string() }),
  currency: z.string(),
  locale: z.string(),
  section: z.string().nullable(),
  targetFoodCostPct: z.number().nullable(),
  /** Oldest first. */
  periods: z.array(
    z.strictObject({
      ...figures,
      closed: z.boolean(),
      /** Its last business day is not over. */
      running: z.boolean(),
      /** The same period of the year before; null where nothing was sold in it. */
      yearBefore: z.strictObject(figures).nullable(),
      menuChanges: z.array(
        z.strictObject({
          day: z.string(),
          item: z.string(),
          /** Those in which it is alike. */
          channels: z.array(z.string()),
          kind: z.enum(['came', 'went', 'price']),
          /** As on the menu; null where it went. */
          price: moneyShape.nullable(),
          priceBefore: moneyShape.nullable(),
        }),
      ),
    }),
  ),
  /** The last twelve periods (thirteen of four weeks), or as many as there are. */
  last: totalsShape,
  /** The same periods a year before; null unless something was sold in every one of them. */
  lastYearBefore: totalsShape.nullable(),
  issues: z.array(issueShape),
});

export type YearAnswer = z.infer<typeof yearShape>;
export type YearPeriodAnswer = YearAnswer['periods'][number];
