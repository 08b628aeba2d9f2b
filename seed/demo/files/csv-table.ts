/** A cell: blank where nothing is known. */
export type Cell = string | number | undefined;

/** A file of the data folder: its header and its rows, each as long as the header. */
export interface Table {
  readonly file: string;
  readonly columns: readonly string[];
  readonly rows: readonly (readonly Cell[])[];
}

const NEEDS_QUOTES = /[",;\r\n]/;

function cellText(cell: Cell): string {
  if (cell === undefined) return '';
  const text = String(cell);
  return NEEDS_QUOTES.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

/** The table as CSV (RFC 4180, lines ended by a line feed, UTF-8 without BOM). Throws where a row is too short or too long. */
export function csvText(table: Table): string {
  const lines = [table.columns, ...table.rows].map((row) => {
    if (row.length !== table.columns.length) throw new Error(`${table.file}: ${row.length} cells in ${row.join('|')}`);
    return row.map(cellText).join(',');
  });
  return `${lines.join('\n')}\n`;
}
