import { stringify } from 'csv-stringify/sync';

/** One file of a data folder: its name without the ending, its columns with their types, its rows in the order of the columns. */
export interface DataFile {
  readonly name: string;
  readonly fields: readonly { readonly name: string; readonly type: string }[];
  readonly rows: readonly (readonly string[])[];
}

/** The name under which a data folder says that this program wrote it. */
export const FOLDER_NAME = 'plateworth-data-folder';

/** Rows as CSV (RFC 4180), lines ended by a line feed. */
export function csvOf(rows: readonly (readonly string[])[]): string {
  return stringify([...rows], { record_delimiter: '\n', quoted_match: /[\r\n]/ });
}

/**
 * The file as CSV. Names stand as they were written: a data file is read back, so nothing is put before a cell that a spreadsheet would
 * run.
 */
export function dataCsv({ fields, rows }: DataFile): string {
  return csvOf([fields.map(({ name }) => name), ...rows]);
}

/** What stands in the folder, as a Data Package (version 2, datapackage.org): each file with its columns and types. */
export function dataPackage(title: string, files: readonly DataFile[]): string {
  const resources = files.map(({ name, fields }) => ({
    name,
    type: 'table',
    path: `${name}.csv`,
    scheme: 'file',
    format: 'csv',
    mediatype: 'text/csv',
    encoding: 'utf-8',
    schema: {
      $schema: 'https://datapackage.org/profiles/2.0/tableschema.json',
      fields: fields.map((field) =>
        field.type === 'boolean' ? { ...field, trueValues: ['yes'], falseValues: ['no'] } : field,
      ),
      missingValues: [''],
    },
  }));
  const whole = {
    $schema: 'https://datapackage.org/profiles/2.0/datapackage.json',
    name: FOLDER_NAME,
    title,
    resources,
  };
  return `${JSON.stringify(whole, null, 2)}\n`;
}
