import { BEFORE_AFTER } from '@/lib/format/words/before-after';
import { CHANGE_COLUMNS, type ChangeColumn, type ChangeRow, type ChangeTable } from './change-row';

/** The table as a spreadsheet takes it from the clipboard: a line a dish, cells parted by tabs, and the period as the last line. */
export function changeText(
  heads: Readonly<Record<ChangeColumn, readonly [string, string]>>,
  { rows, total }: ChangeTable,
): string {
  const head = [BEFORE_AFTER.dish, ...CHANGE_COLUMNS.map((column) => heads[column].filter(Boolean).join(', '))];
  const foot = [BEFORE_AFTER.total, ...CHANGE_COLUMNS.map((column) => total[column]?.text ?? '')];
  const lines = rows.map((row) => [row.item, ...CHANGE_COLUMNS.map((column) => cellText(row, column))]);
  return [head, ...lines, foot].map((cells) => cells.join('\t')).join('\n');
}

function cellText(row: ChangeRow, column: ChangeColumn): string {
  if (column === 'class')
    return row.classWas === null ? row.classNow : `${row.classNow}, ${BEFORE_AFTER.was(row.classWas)}`;
  const cell = row[column];
  return typeof cell === 'string' ? cell : cell.text;
}
