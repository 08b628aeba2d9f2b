import { csvText } from './csv-text';
import type { ReportFile } from './report-file';

/** The first sheet of a report as CSV: the JSON names in snake_case, one line a row. */
export function reportCsv({ sheets: [first] }: ReportFile): string {
  return csvText(
    first.columns.map(({ name }) => name),
    first.rows,
  );
}
