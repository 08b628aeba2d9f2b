/** What the caption of every table holds at its right end. */
export const TABLE_OUT = {
  allColumns: 'all columns',
  fewerColumns: 'fewer columns',
  copy: 'Copy',
  csv: 'CSV',
  xlsx: 'XLSX',
  copyFailed: 'This browser does not let the page copy. The CSV holds the same rows.',
} as const;

export function copied(rows: number): string {
  return rows === 1 ? 'Copied 1 row.' : `Copied ${rows} rows.`;
}
