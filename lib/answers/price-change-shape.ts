import { z } from 'zod';
import { issueShape, moneyShape } from './common-shape';
import { mixClassShape } from './menu-mix-shape';

const standShape = z.strictObject({
  /** Of the items whose margin is known. */
  revenue: moneyShape,
  plateCost: moneyShape,
  foodCostPct: z.number().nullable(),
  contribution: moneyShape.nullable(),
  /** Portion-weighted mean. */
  margin: moneyShape.nullable(),
});

/** POST months/{month}/price-change and `report price-change --json`. Money net of sales tax, per portion; menu prices as the menu has them. */
export const priceChangeShape = z.strictObject({
  venue: z.string(),
  month: z.string(),
  period: z.strictObject({ from: z.string(), to: z.string() }),
  currency: z.string(),
  locale: z.string(),
  section: z.string().nullable(),
  model: z.literal('kasavana-smith'),
  /** As an address writes them. */
  edits: z.array(z.string()),
  demand: z.literal('none'),
  before: standShape,
  after: standShape,
  contributionChange: moneyShape.nullable(),
  /** The largest change of contribution first. */
  items: z.array(
    z.strictObject({
      item: z.string(),
      section: z.string().nullable(),
      sold: z.number(),
      estimated: z.boolean(),
      menuPrice: moneyShape.nullable(),
      netPriceBefore: moneyShape.nullable(),
      netPrice: moneyShape.nullable(),
      plateCostBefore: moneyShape.nullable(),
      plateCost: moneyShape.nullable(),
      foodCostBeforePct: z.number().nullable(),
      foodCostPct: z.number().nullable(),
      marginBefore: moneyShape.nullable(),
      margin: moneyShape.nullable(),
      contributionChange: moneyShape.nullable(),
      classBefore: mixClassShape.nullable(),
      classAfter: mixClassShape.nullable(),
      /** What would stand on the menu to leave as much a portion, or as high a food-cost %. */
      holdMarginPrice: moneyShape.nullable(),
      holdPctPrice: moneyShape.nullable(),
      /** Fraction of today's portions. */
      breakEvenSalesChange: z.number().nullable(),
    }),
  ),
  issues: z.array(issueShape),
});

export type PriceChangeAnswer = z.infer<typeof priceChangeShape>;
