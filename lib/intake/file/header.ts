import { CsvError, parse } from 'csv-parse/sync';
import { nameKey } from '../../core/name-key';
import type { FileRefusal } from '../../model/refusal';

/** The columns that a kind of file can have. */
export interface Columns {
  /** Each must be there; of several in one entry, one of them. */
  readonly needed: readonly (string | readonly string[])[];
  readonly optional: readonly string[];
  /** Known, and nothing that is shown depends on them yet. */
  readonly later: readonly string[];
  /** A column that asks for others when it is there: gross_revenue means nothing without tax_pct. */
  readonly together?: Readonly<Record<string, { readonly needs: string; readonly unless: string }>>;
}

export type Separator = ',' | ';' | '\t';

/** How the cells of a file are to be understood, by its first line. */
export interface Header {
  readonly separator: Separator;
  /** Name of the column at each place; null where it has none. */
  readonly names: readonly (string | null)[];
  /** Columns whose cells are not read, as they are written in the file. */
  readonly ignored: readonly string[];
}

const SEPARATORS: readonly Separator[] = [',', ';', '\t'];

/** Column names match without regard to case, surrounding space and whether words are joined by _, - or a space. */
export function columnKey(cell: string): string {
  return nameKey(cell).replace(/[\s_-]+/g, '_');
}

/** The header in the first line of a file, or why the file has none that will do. The separator is the one that finds most columns. */
export function readHeader(firstLine: string, columns: Columns): Header | FileRefusal {
  const read = new Set([...columns.needed.flat(), ...columns.optional]);
  const known = (cells: readonly string[]) => cells.filter((cell) => read.has(columnKey(cell))).length;
  const candidates = SEPARATORS.flatMap((separator) => {
    const cells = cellsOf(firstLine, separator);
    return cells ? [{ separator, cells }] : [];
  });
  const open = candidates.length < SEPARATORS.length;
  if (open && candidates.every(({ cells }) => known(cells) === 0)) {
    return { rule: 'open-quote', line: 1, column: null, value: null, facts: {} };
  }
  const best = candidates.reduce((a, b) => (known(b.cells) > known(a.cells) ? b : a));
  const names = best.cells.map((cell) => columnKey(cell) || null);
  const found = best.cells.map((cell) => cell.trim()).filter((cell) => cell !== '');
  const twice = names.find((name, place) => name !== null && read.has(name) && names.indexOf(name) !== place);
  if (twice) {
    const at = names.flatMap((name, place) => (name === twice ? [String(place + 1)] : []));
    return { rule: 'column-twice', line: 1, column: twice, value: null, facts: { at } };
  }
  const missing = missingColumns(names, columns);
  if (missing.length > 0) {
    const none = known(best.cells) === 0;
    const facts = { missing, found: found.slice(0, 20).map((name) => name.slice(0, 60)) };
    return {
      rule: none ? 'no-header' : 'lacks-column',
      line: 1,
      column: none ? null : (missing[0] ?? null),
      value: null,
      facts,
    };
  }
  const ignored = best.cells
    .filter((cell) => cell.trim() !== '' && !read.has(columnKey(cell)))
    .map((cell) => cell.trim());
  return { separator: best.separator, names, ignored };
}

function missingColumns(names: readonly (string | null)[], columns: Columns): readonly string[] {
  const missing = columns.needed
    .filter((entry) => ![entry].flat().some((name) => names.includes(name)))
    .map((entry) => [entry].flat().join(' or '));
  const alone = Object.entries(columns.together ?? {})
    .filter(([name, { needs, unless }]) => names.includes(name) && !names.includes(needs) && !names.includes(unless))
    .map(([, { needs }]) => needs);
  return [...missing, ...alone];
}

/** Null where a quote stays open. */
function cellsOf(line: string, separator: Separator): readonly string[] | null {
  try {
    const rows: string[][] = parse(line, { delimiter: separator, relax_quotes: true, relax_column_count: true, to: 1 });
    return rows[0] ?? [];
  } catch (error) {
    if (error instanceof CsvError) return null;
    throw error;
  }
}
