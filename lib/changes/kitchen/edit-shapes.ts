import { z } from 'zod';
import { parseDay } from '../../core/days';
import { noSuchDay } from '../../format/words/problems';

/** Cells by the columns of the data folder, as they were typed: per cent as per cent, blank where nothing is known. */
const cells = z.record(z.string().max(60), z.string().max(4000));
const MOST_ROWS = 500;
const rows = z.array(cells).max(MOST_ROWS);

/** A day as ISO text; null where none is named. */
const day = z
  .string()
  .nullable()
  .transform((text, context) => {
    const read = text === null ? null : parseDay(text);
    if (text !== null && (read === null || text < '1900-01-01' || text > '2199-12-31')) {
      context.addIssue({ code: 'custom', message: noSuchDay(text).detail });
      return z.NEVER;
    }
    return read;
  });

const edit = {
  venue: z.string(),
  item: z.string().nullable(),
  /** The revision of the item that the editor read; null: there was none. */
  revision: z.int().nullable(),
  /** The day on which its effects are worked out. */
  date: day.default(null),
  dryRun: z.boolean().default(false),
};

/** A version of an ingredient from a day on (cells.valid_from), with all its measures, parts and yields by use. `name` where it is new. */
export const ingredientEditShape = z.strictObject({
  ...edit,
  name: z.string().nullable().default(null),
  version: cells,
  measures: rows,
  parts: rows,
  yields: rows,
});

/** A version of a recipe from a day on (version.valid_from), with all its lines in their order. `name` where it is new. */
export const recipeEditShape = z.strictObject({
  ...edit,
  name: z.string().nullable().default(null),
  version: cells,
  lines: rows,
});

export const renameShape = z.strictObject({ ...edit, item: z.string(), name: z.string() });

/** The version in force on `of` becomes the first of a new recipe, from `validFrom` on; null: from the first day that is not closed. */
export const duplicateShape = z.strictObject({
  ...edit,
  item: z.string(),
  name: z.string(),
  of: day.default(null),
  validFrom: day.default(null),
});

/** The version that holds from a day; null: the one from the beginning. */
export const versionShape = z.strictObject({ ...edit, item: z.string(), validFrom: day });

export const deleteShape = z.strictObject({ ...edit, item: z.string() });

/** A save, by the number that it was given. */
export const undoShape = z.strictObject({
  venue: z.string(),
  write: z.int(),
  date: day.default(null),
  dryRun: z.boolean().default(false),
});
