import { z } from 'zod';
import { issueShape, moneyShape } from './common-shape';

export const mixClassShape = z.enum(['star', 'plowhorse', 'puzzle', 'dog']);

const fraction = z.number();

/** GET months/{month}/menu-mix, `report menu-mix --json` and the figures of /menu: one shape. */
export const menuMixShape = z.strictObject({
  venue: z.string(),
  month: z.string(),
  period: z.strictObject({ from: z.string(), to: z.string() }),
  model: z.literal('kasavana-smith'),
  currency: z.string(),
  /** How the venue writes figures and dates (BCP 47). */
  locale: z.string(),
  section: z.string().nullable(),
  tradingDays: z.number(),
  resamples: z.number().nullable(),
  thresholds: z.strictObject({
    popularity: fraction.nullable(),
    /** Times an item's expected portions: what it has to sell to be popular, also where each item has its own threshold. */
    popularityFactor: fraction,
    margin: moneyShape.nullable(),
  }),
  totals: z.strictObject({
    sold: z.number(),
    comps: z.number(),
    /** As far as it is known; null where it is known of no portion. */
    revenue: moneyShape.nullable(),
    costedSold: z.number(),
    costedRevenue: moneyShape,
    /** Of the costed portions, those with an owner's estimate in their cost. */
    estimatedSold: z.number(),
    plateCost: moneyShape.nullable(),
    foodCostPct: fraction.nullable(),
    margin: moneyShape.nullable(),
  }),
  coverage: fraction.nullable(),
  /** Sold under names that nobody knows, whatever the section: in no other figure. The names with the most portions first, three at most. */
  waiting: z.strictObject({ rows: z.number(), portions: z.number(), names: z.number(), largest: z.array(z.string()) }),
  /** Whether any stock was counted in the period. */
  stockCounted: z.boolean(),
  costNext: z.array(z.strictObject({ item: z.string(), share: fraction })),
  items: z.array(
    z.strictObject({
      item: z.string(),
      section: z.string().nullable(),
      sold: z.number(),
      comps: z.number(),
      share: fraction,
      expected: z.number(),
      daysOnSale: z.number(),
      netPrice: moneyShape.nullable(),
      revenue: moneyShape.nullable(),
      plateCost: moneyShape.nullable(),
      floor: moneyShape.nullable(),
      linesMissing: z.number().nullable(),
      linesTotal: z.number().nullable(),
      estimated: z.boolean(),
      foodCostPct: fraction.nullable(),
      margin: moneyShape.nullable(),
      contribution: moneyShape.nullable(),
      class: mixClassShape.nullable(),
      classShares: z.record(mixClassShape, fraction).nullable(),
      settled: z.boolean().nullable(),
      between: z.tuple([mixClassShape, mixClassShape]).nullable(),
      spread: z.strictObject({ share: fraction, margin: z.number() }).nullable(),
    }),
  ),
  issues: z.array(issueShape),
});

export type MenuMixAnswer = z.infer<typeof menuMixShape>;
