import { z } from 'zod';

/** How many refused rows a report lists of each file; `refusedRows` counts them all. */
export const MOST_LISTED = 10_000;

export const refusedShape = z.strictObject({
  /** Line of the file, the header being 1; null where no line is at fault. */
  line: z.int().nullable(),
  column: z.string().nullable(),
  value: z.string().nullable(),
  /** What is wrong, and how to mend it. */
  why: z.string(),
});

/** What became of the rows of one file: read = taken + changed + unchanged + refusedRows; withdrawn stands apart. */
export const fileReportShape = z.strictObject({
  file: z.string(),
  /** Which file of the data folder it is. */
  kind: z.string(),
  /** On whose word, for sales and covers. */
  source: z.string(),
  read: z.int(),
  taken: z.int(),
  changed: z.int(),
  unchanged: z.int(),
  /** Rows of earlier loads that this one took out. */
  withdrawn: z.int(),
  /** The refused rows, of very many the first; a file refused whole counts as one. */
  refused: z.array(refusedShape),
  refusedRows: z.int(),
  /** Whether the file was refused whole, so that nothing of it was taken. */
  refusedWhole: z.boolean(),
  /** Rows of earlier loads that had waited for this file and are taken now. */
  unlocked: z.int(),
  /** Rows that had stood in only until those came, and are taken out with them. */
  unlockedWithdrawn: z.int(),
  /** Columns that were not read, as the file names them. */
  ignored: z.array(z.string()),
});

export const loadReportShape = z.strictObject({
  /** Name of the venue that was loaded into; null where nothing was. */
  venue: z.string().nullable(),
  files: z.array(fileReportShape),
  /** Files that are not read, with the reason. */
  notRead: z.array(z.strictObject({ file: z.string(), why: z.string() })),
  /** Why nothing was even tried; null where it was. */
  wrongUse: z.string().nullable(),
});

export type LoadReport = z.infer<typeof loadReportShape>;
export type FileReport = z.infer<typeof fileReportShape>;

/** The exit code of a load: 0 nothing refused, 3 some rows refused, 1 nothing could be kept or read, 2 wrong use. */
export function loadExitCode({ files, wrongUse }: LoadReport): 0 | 1 | 2 | 3 {
  if (wrongUse !== null) return 2;
  if (files.length === 0) return 1;
  if (files.every(({ refusedRows }) => refusedRows === 0)) return 0;
  return files.some(({ taken, changed, unchanged }) => taken + changed + unchanged > 0) ? 3 : 1;
}
