import { writeFile } from 'node:fs/promises';
import { resolve } from 'node:path';
import type { ReportFile } from '../format/report-file';
import { reportXlsx } from '../format/report-xlsx';
import { terminalLines } from '../format/terminal-text';
import { noWorkbook, workbookThere, workbookWritten } from '../format/words/commands';
import { complain } from './run';

/** Writes a report as a workbook to a new file, to the exit code; what is there already is left as it is. */
export async function writeReport(report: ReportFile, path: string): Promise<number> {
  const bytes = await reportXlsx(report);
  try {
    await writeFile(path, bytes, { flag: 'wx' });
  } catch (error) {
    if (!(error instanceof Error && 'code' in error)) throw error;
    complain(error.code === 'EEXIST' ? workbookThere(path) : noWorkbook(path, String(error.code)));
    return 1;
  }
  process.stdout.write(`${terminalLines(workbookWritten(resolve(path)))}\n`);
  return 0;
}
