import { z } from 'zod';
import { issueShape } from './common-shape';

const day = z.string();
const unit = z.enum(['g', 'ml', 'each']).nullable();

/** report prep-sheet --json: what to make for a day. Quantities in base units. */
export const prepSheetShape = z.strictObject({
  venue: z.string(),
  date: day,
  currency: z.string(),
  locale: z.string(),
  /** The days of the same weekday that the expectations are means of, latest first. */
  like: z.array(day),
  expectedCovers: z.number().nullable(),
  covers: z.number().nullable(),
  items: z.array(
    z.strictObject({
      item: z.string(),
      channel: z.string(),
      /** The mean of so many days like it. */
      expected: z.number(),
      days: z.number(),
      portions: z.number(),
    }),
  ),
  /** In an order in which they can be made. */
  components: z.array(
    z.strictObject({
      item: z.string(),
      unit,
      /** Used, its breakage with it. */
      needed: z.number(),
      held: z.number().nullable(),
      countedOn: day.nullable(),
      /** Counted, but older than it keeps. */
      tooOld: z.boolean(),
      make: z.number(),
      smallest: z.number().nullable(),
      batch: z.number().nullable(),
      batches: z.number().nullable(),
      /** How many hours ahead of the day it can be made, and so from which day on; null: nobody said how long it keeps. */
      leadHours: z.number().nullable(),
      earliest: day.nullable(),
      minutes: z.number().nullable(),
      grade: z.string().nullable(),
      cautions: z.array(z.string()),
    }),
  ),
  /** To be taken from the store, as bought; wholes: of a part, so many of the whole give it. */
  ingredients: z.array(
    z.strictObject({
      item: z.string(),
      quantity: z.number(),
      unit,
      productGroup: z.string().nullable(),
      wholes: z.number().nullable(),
    }),
  ),
  work: z.array(
    z.strictObject({ grade: z.string().nullable(), handsOnMinutes: z.number(), platingMinutes: z.number() }),
  ),
  withoutMinutes: z.array(z.string()),
  /** What is missing of the quantities: where there is any, the sheet is short. */
  issues: z.array(issueShape),
});

export type PrepSheetAnswer = z.infer<typeof prepSheetShape>;
