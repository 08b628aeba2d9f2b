import { stringify } from 'csv-stringify/sync';

type Cell = string | number | boolean | null;

/** A spreadsheet runs a cell that begins like this; a leading apostrophe makes it text. Money and numbers are left alone. */
const RUNS_AS_FORMULA = /^[=+\-@\t\r]/;
const NUMBER = /^-?\d+(\.\d+)?$/;

function snakeCase(name: string): string {
  return name.replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`);
}

function cellText(name: string, cell: Cell): string {
  if (cell === null) return '';
  if (typeof cell === 'boolean') return cell ? 'yes' : 'no';
  if (typeof cell === 'number') return String(name.endsWith('Pct') ? Number((cell * 100).toPrecision(15)) : cell);
  return RUNS_AS_FORMULA.test(cell) && !NUMBER.test(cell) ? `'${cell}` : cell;
}

/**
 * Rows as CSV: the JSON names in snake_case, fractions as per cent where the name ends in Pct, unknown as an empty cell.
 * Fields that are not single values (lists, shares by class) are left out: they stand in the JSON.
 */
export function csvText(columns: readonly string[], rows: readonly Readonly<Record<string, unknown>>[]): string {
  const cells = rows.map((row) => columns.map((name) => cellText(name, row[name] as Cell)));
  return stringify([columns.map(snakeCase), ...cells], { record_delimiter: '\r\n' });
}
