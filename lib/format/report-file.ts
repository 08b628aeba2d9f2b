/** A single value of a row: text, money as decimal text, a number, yes or no, or not known. */
export type CellValue = string | number | boolean | null;

/**
 * What the values of a column are, which decides how a spreadsheet shows them: `money` is of the file's currency, in whole coins; `price` is
 * money of one gram or millilitre; `share` is a fraction that is shown in per cent; `date` is ISO text.
 */
export type ColumnKind =
  | 'text'
  | 'portions'
  | 'count'
  | 'number'
  | 'money'
  | 'price'
  | 'share'
  | 'minutes'
  | 'date'
  | 'yesNo';

export interface ReportColumn {
  /** The JSON name. */
  readonly name: string;
  readonly kind: ColumnKind;
}

export interface ReportSheet {
  /** As the tab of a workbook is called: at most 31 letters. */
  readonly name: string;
  readonly columns: readonly ReportColumn[];
  readonly rows: readonly Readonly<Record<string, unknown>>[];
}

/** An answer as files of rows: CSV and XLSX are both made from this, so that each answer states its columns once. */
export interface ReportFile {
  /** Of the file, without its ending. */
  readonly name: string;
  /** ISO 4217 code of the money in it. */
  readonly currency: string;
  /** What the figures are of and stand on: what, and that. */
  readonly basis: readonly (readonly [string, string])[];
  readonly issues: readonly string[];
  /** The first is the CSV; a workbook has all of them. */
  readonly sheets: readonly [ReportSheet, ...ReportSheet[]];
}

type Single<Row> = { [Name in keyof Row]: Row[Name] extends CellValue ? Name : never }[keyof Row];

/** The kind of every column of a row, in the order of the columns: each field that holds a single value has one. */
export type ColumnKinds<Row> = Readonly<Record<Single<Row>, ColumnKind>>;

/** The rows of an answer as a sheet; fields that hold several values stand in the JSON only. */
export function reportSheet<Row extends object>(
  name: string,
  kinds: ColumnKinds<Row>,
  rows: readonly Row[],
): ReportSheet {
  const columns = Object.entries<ColumnKind>(kinds).map(([column, kind]) => ({ name: column, kind }));
  return { name, columns, rows: rows as readonly Readonly<Record<string, unknown>>[] };
}
