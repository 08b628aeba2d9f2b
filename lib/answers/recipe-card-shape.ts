import { z } from 'zod';
import { issueShape } from './common-shape';
import { recipeShape, whatsInItShape } from './kitchen-shape';

const text = z.string().nullable();
const unit = z.enum(['g', 'ml', 'each']).nullable();

/** report recipe-card --json: a recipe scaled to portions or batches. */
export const recipeCardShape = z.strictObject({
  venue: z.string(),
  date: z.string(),
  currency: z.string(),
  locale: z.string(),
  item: z.string(),
  kind: z.enum(['component', 'dish', 'set_menu', 'extra']),
  /** Portions of what is plated, batches of a component. */
  times: z.number(),
  recipe: recipeShape.shape.cost.shape.recipe,
  gives: z.number().nullable(),
  /** What of it can be served: without its breakage. */
  serves: z.number().nullable(),
  lines: z.array(
    z.strictObject({
      position: z.number(),
      item: z.string(),
      kind: z.enum(['ingredient', 'component', 'dish', 'set_menu', 'extra']),
      /** In the unit in which it is written. */
      quantity: z.number(),
      unit: z.string(),
      as: z.enum(['prepared', 'bought']),
      use: text,
      part: text,
      choice: text,
      sharePct: z.number().nullable(),
      channel: text,
      byProduct: z.boolean(),
      usableYieldPct: z.number().nullable(),
      taken: z.number().nullable(),
      takenUnit: unit,
      note: text,
    }),
  ),
  handsOnMinutes: z.number().nullable(),
  grade: text,
  platingMinutes: z.number().nullable(),
  platingGrade: text,
  shelfLifeDays: z.number().nullable(),
  thrownAtClose: z.boolean(),
  smallestBatch: z.strictObject({ quantity: z.number(), unit: z.string() }).nullable(),
  whatsInIt: whatsInItShape,
  issues: z.array(issueShape),
});

export type RecipeCardAnswer = z.infer<typeof recipeCardShape>;
