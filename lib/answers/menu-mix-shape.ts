import { z } from 'zod';
import type { ModelName } from '../model/mix/mix-model';
import { MIX_MODELS } from '../model/mix/mix-models';
import { issueShape, moneyShape } from './common-shape';

const MODELS = Object.keys(MIX_MODELS) as ModelName[];

export const modelShape = z.enum(MODELS);

/** The classes of all models; each answer has those of its own. */
export const mixClassShape = z.enum(MODELS.flatMap((name) => MIX_MODELS[name].classes));

const fraction = z.number();

/** Conditions, never commands; money net of sales tax. Null where the margin is not known. */
/** What can be said of one item with its condition. */
export const adviceShape = z.strictObject({
  /** Margin less the average margin. */
  againstAverage: moneyShape,
  /** Share of the resamples in which it leaves less than the average. */
  leavesLess: fraction.nullable(),
  /** The rise of its price at which it leaves the average, and the share of its portions that it may then lose. */
  rise: moneyShape.nullable(),
  mayLose: fraction.nullable(),
  /** Taking it off pays only if more than this share of its guests order another. */
  takenOffFrom: fraction.nullable(),
  /** Allergens that nothing in it declares, alone on the menu. It says nothing of cross-contact. */
  onlyWithout: z.array(z.string()),
  mostPlatingMinutes: z.number().nullable(),
});

export type AdviceAnswer = z.infer<typeof adviceShape>;

/** GET months/{month}/menu-mix, `report menu-mix --json` and the figures of /menu: one shape. */
export const menuMixShape = z.strictObject({
  venue: z.string(),
  month: z.string(),
  period: z.strictObject({ from: z.string(), to: z.string() }),
  model: modelShape,
  currency: z.string(),
  /** How the venue writes figures and dates (BCP 47). */
  locale: z.string(),
  section: z.string().nullable(),
  /** Set menus in a section of their own, or spread over their courses. */
  setMenus: z.enum(['section', 'spread']),
  /** Paid set menus of the whole venue, wherever they stand. */
  setMenusSold: z.number(),
  tradingDays: z.number(),
  resamples: z.number().nullable(),
  thresholds: z.strictObject({
    popularity: fraction.nullable(),
    /** Times an item's expected portions: what it has to sell to be popular, also where each item has its own threshold. */
    popularityFactor: fraction,
    margin: moneyShape.nullable(),
    /** Of the models that look at them: the menu’s food-cost %, what an item left as a mean, the menu’s goal value, mean recipe labour. */
    foodCostPct: fraction.nullable(),
    contribution: moneyShape.nullable(),
    goalValue: z.number().nullable(),
    labour: moneyShape.nullable(),
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
      classShares: z.partialRecord(mixClassShape, fraction).nullable(),
      settled: z.boolean().nullable(),
      between: z.tuple([mixClassShape, mixClassShape]).nullable(),
      spread: z.strictObject({ share: fraction, margin: z.number() }).nullable(),
      advice: adviceShape.nullable(),
    }),
  ),
  issues: z.array(issueShape),
});

export type MenuMixAnswer = z.infer<typeof menuMixShape>;
