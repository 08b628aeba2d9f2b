import writeWorkbook, { type Cell, type Sheet } from 'write-excel-file/node';
import { dateOfDay, parseDay } from '../core/days';
import { currencyDigits } from './currency-digits';
import type { CellValue, ColumnKind, ReportFile, ReportSheet } from './report-file';
import { columnHead, REPORT_FILE } from './words/report-file';

/** Number formats in the notation of ECMA-376 (18.8.31); a reader shows them with the signs of its own locale. */
function numberFormat(kind: ColumnKind, currency: string, isWhole: boolean): string | undefined {
  const coins = '0'.repeat(currencyDigits(currency) ?? 2);
  if (kind === 'money') return coins === '' ? '#,##0' : `#,##0.${coins}`;
  if (kind === 'price') return `#,##0.${coins}0000`;
  if (kind === 'share') return '0.0%';
  if (kind === 'portions' || kind === 'count') return isWhole ? '#,##0' : '#,##0.00';
  return kind === 'minutes' ? '0.0' : undefined;
}

const WIDEST = 60;
const NARROWEST = 9;
/** Letters of a figure, whatever its decimals. */
const FIGURE = 12;
/** The longest text that a cell may hold. */
const LONGEST = 32_767;

const HEAD = { fontWeight: 'bold', wrap: true, alignVertical: 'bottom', bottomBorderStyle: 'thin' } as const;

function cell(value: CellValue, kind: ColumnKind, currency: string): Cell {
  if (value === null) return null;
  if (typeof value === 'boolean') return value ? REPORT_FILE.yes : REPORT_FILE.no;
  if (kind === 'text') return { type: String, value: String(value).slice(0, LONGEST) };
  if (kind === 'date') {
    const day = parseDay(String(value));
    return day === null ? String(value) : { type: Date, value: dateOfDay(day), format: 'yyyy-mm-dd' };
  }
  const number = Number(value);
  const format = numberFormat(kind, currency, Number.isInteger(number));
  return { type: Number, value: number, ...(format !== undefined && { format }) };
}

function rowsSheet({ name, columns, rows }: ReportSheet, currency: string): Sheet<Buffer> {
  const heads = columns.map(({ name: column, kind }) => columnHead(column, kind, currency));
  const cells = rows.map((row) => columns.map((column) => cell(row[column.name] as CellValue, column.kind, currency)));
  const widths = columns.map(({ kind, name: column }, at) => {
    const texts = kind === 'text' ? rows.map((row) => String(row[column] ?? '').length) : [FIGURE];
    const words = (heads[at] ?? '').split(' ').map(({ length }) => length);
    return {
      width: Math.min(
        WIDEST,
        texts.concat(words).reduce((most, each) => Math.max(most, each + 2), NARROWEST),
      ),
    };
  });
  const isText = (at: number) => columns[at]?.kind === 'text' || columns[at]?.kind === 'yesNo';
  const head = heads.map((value, at) => ({
    ...HEAD,
    value,
    align: isText(at) ? ('left' as const) : ('right' as const),
  }));
  return { sheet: name, data: [head, ...cells], columns: widths, stickyRowsCount: 1 };
}

/** The sheet that says what the others are of and stand on, and what is missing. */
function basisSheet({ basis, issues }: ReportFile): Sheet<Buffer> {
  const facts = basis.map(([what, that]) => [
    { value: what, fontWeight: 'bold' as const },
    { type: String, value: that },
  ]);
  const missing = issues.map((text, at) => [
    at === 0 ? { value: REPORT_FILE.missing, fontWeight: 'bold' as const } : null,
    { type: String, value: text.slice(0, LONGEST), wrap: true, alignVertical: 'top' as const },
  ]);
  return { sheet: REPORT_FILE.basis, data: [...facts, ...missing], columns: [{ width: 18 }, { width: 110 }] };
}

/**
 * A report as a workbook (Office Open XML): a sheet for each of its tables, numbers as numbers and dates as dates with the unit in the head,
 * and one for venue, period, basis and issues. What is not known is an empty cell.
 */
export function reportXlsx(file: ReportFile): Promise<Uint8Array> {
  const sheets = [...file.sheets.map((sheet) => rowsSheet(sheet, file.currency)), basisSheet(file)];
  return writeWorkbook(sheets, { fontFamily: 'Calibri', fontSize: 11 }).toBuffer();
}
