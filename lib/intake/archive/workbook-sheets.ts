import readWorkbook from 'read-excel-file/node';
import { shortestDouble } from '../../core/decimal-text';
import { csvOf } from '../../format/data-folder';
import { type ArchiveFault, DamagedArchive } from './damaged-archive';
import { zipFiles } from './zip-files';

/** A sheet of a workbook as a CSV file: rows keep their numbers. */
export interface WorkbookSheet {
  readonly name: string;
  readonly csv: string;
}

/**
 * The sheets of an XLSX workbook, or why it is not read. A workbook is a ZIP archive, held in memory whole: every part of it is unpacked once
 * before to see that it is as large as it says, and no more than `mostBytes` all together.
 */
export async function workbookSheets(
  path: string,
  mostBytes: number,
): Promise<readonly WorkbookSheet[] | ArchiveFault> {
  const parts = await zipFiles(path, mostBytes);
  if ('fault' in parts) return parts;
  try {
    for (const part of parts) for await (const _ of part.open());
    const sheets = await readWorkbook(path, { parseNumber: (text) => shortestDouble(text) ?? text });
    return sheets.map(({ sheet, data }) => ({ name: sheet, csv: csvOf(data.map((row) => row.map(cellText))) }));
  } catch (error) {
    if (error instanceof DamagedArchive || error instanceof Error) return { fault: 'damaged', reason: error.message };
    throw error;
  }
}

/** A cell as the files write it: days and times by ISO 8601, yes and no for true and false. */
function cellText(cell: unknown): string {
  if (cell === null || cell === undefined) return '';
  if (typeof cell === 'boolean') return cell ? 'yes' : 'no';
  if (!(cell instanceof Date)) return String(cell);
  const [day = '', time = ''] = cell.toISOString().split(/[T.]/);
  if (cell.getUTCFullYear() < 1900) return time.slice(0, 5); // a time of day alone
  return time === '00:00:00' ? day : `${day}T${time}`;
}
