import { z } from 'zod';
import { issueShape, moneyShape } from './common-shape';
import { mixClassShape, modelShape } from './menu-mix-shape';

const fraction = z.number();

/** GET months/{month}/models, `report models --json` and the figures of /menu/models: one shape. */
export const menuModelsShape = z.strictObject({
  venue: z.string(),
  month: z.string(),
  period: z.strictObject({ from: z.string(), to: z.string() }),
  currency: z.string(),
  locale: z.string(),
  section: z.string().nullable(),
  tradingDays: z.number(),
  resamples: z.number().nullable(),
  /** In the order of each item's classes. */
  models: z.array(modelShape),
  /** What items are held against; null where it cannot be said. */
  thresholds: z.strictObject({
    popularityFactor: fraction,
    margin: moneyShape.nullable(),
    foodCostPct: fraction.nullable(),
    contribution: moneyShape.nullable(),
    goalValue: z.number().nullable(),
    labour: moneyShape.nullable(),
  }),
  items: z.array(
    z.strictObject({
      item: z.string(),
      section: z.string().nullable(),
      sold: z.number(),
      /** Sold / expected portions. */
      popularity: fraction.nullable(),
      netPrice: moneyShape.nullable(),
      foodCostPct: fraction.nullable(),
      margin: moneyShape.nullable(),
      contribution: moneyShape.nullable(),
      goalValue: z.number().nullable(),
      recipeLabour: moneyShape.nullable(),
      classes: z.array(
        z.strictObject({
          model: modelShape,
          class: mixClassShape.nullable(),
          /** On every axis of its model on the favourable side, on none, or neither. */
          leaning: z.enum(['for', 'mixed', 'against']).nullable(),
          classShares: z.partialRecord(mixClassShape, fraction).nullable(),
          settled: z.boolean().nullable(),
          between: z.tuple([mixClassShape, mixClassShape]).nullable(),
        }),
      ),
      /** Whether all models that can say lean the same way; null where fewer than two can. */
      agree: z.boolean().nullable(),
    }),
  ),
  issues: z.array(issueShape),
});

export type MenuModelsAnswer = z.infer<typeof menuModelsShape>;
export type ModelledItemAnswer = MenuModelsAnswer['items'][number];
