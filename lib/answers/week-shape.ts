import { z } from 'zod';
import { issueShape, moneyShape } from './common-shape';

const figures = {
  /** A mean where it is of several weeks. */
  tradingDays: z.number(),
  covers: z.number().nullable(),
  /** Net revenue at the tables over covers, of the days of which both are known. */
  spendPerCover: moneyShape.nullable(),
  sold: z.number(),
  revenue: moneyShape.nullable(),
  contribution: moneyShape.nullable(),
  /** By recipe, of the costed items. */
  foodCostPct: z.number().nullable(),
  coverage: z.number().nullable(),
  provisional: z.boolean(),
};

const dayFigures = {
  covers: z.number().nullable(),
  spendPerCover: moneyShape.nullable(),
  sold: z.number(),
  contribution: moneyShape.nullable(),
};

/** GET months/{2026-W41}/week, `report week --json` and the figures of /menu/week: one shape. */
export const weekShape = z.strictObject({
  venue: z.string(),
  month: z.string(),
  period: z.strictObject({ from: z.string(), to: z.string() }),
  currency: z.string(),
  locale: z.string(),
  closed: z.boolean(),
  running: z.boolean(),
  /** The nearest weeks with sales on either side. */
  previous: z.string().nullable(),
  next: z.string().nullable(),
  week: z.strictObject(figures),
  /** A mean week of those of the four before that traded. */
  before: z.strictObject({ weeks: z.number(), ...figures }).nullable(),
  /** The week of the same number in the year before, where it traded. */
  yearBefore: z.strictObject({ month: z.string(), ...figures }).nullable(),
  days: z.array(
    z.strictObject({
      day: z.string(),
      ...dayFigures,
      /** Mean of the same weekday in the four weeks before, where it traded. */
      usual: z.strictObject(dayFigures).nullable(),
      yearBefore: z.strictObject(dayFigures).nullable(),
    }),
  ),
  /** On sale on trading days without a portion sold. */
  unsold: z.array(
    z.strictObject({
      item: z.string(),
      section: z.string().nullable(),
      sold: z.number(),
      daysOnSale: z.number(),
      daysWithoutSale: z.number(),
    }),
  ),
  issues: z.array(issueShape),
});

export type WeekAnswer = z.infer<typeof weekShape>;
