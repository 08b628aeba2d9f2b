import { MIX_COLUMNS, type MixColumn } from '@/lib/format/words/mix-table';
import type { MixRow } from './mix-rows';
import type { MixTotal } from './mix-total';

/** The table as a spreadsheet takes it from the clipboard: a line a row, cells parted by tabs, every column, in the order shown. */
export function tableText(
  heads: Readonly<Record<MixColumn, readonly [string, string]>>,
  rows: readonly MixRow[],
  total: MixTotal,
): string {
  const head = MIX_COLUMNS.map((column) => heads[column].filter(Boolean).join(', '));
  const body = rows.map((row) => MIX_COLUMNS.map((column) => (column === 'item' ? row.item : row.cells[column].text)));
  const foot = MIX_COLUMNS.map((column) => (column === 'item' ? total.label : (total.cells[column] ?? '')));
  return [head, ...body, foot].map((cells) => cells.join('\t')).join('\n');
}
