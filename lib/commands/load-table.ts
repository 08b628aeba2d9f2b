import type { FileReport, LoadReport } from '../changes/load-report-shape';
import { textTable } from '../format/text-table';
import { loadReportWords as words } from '../format/words/loading';

/** How many refused rows of a file are printed. */
const MOST_PRINTED = 20;

/** The report of a load for a terminal: a table of the files, then what was refused and why, then what was not read. */
export function loadTable({ venue, files, notRead }: LoadReport): string {
  const columns = words.heads.map((head, at) => ({ head, side: at === 0 ? ('left' as const) : ('right' as const) }));
  const rows = files.map(({ file, read, taken, changed, unchanged, withdrawn, refusedRows, refusedWhole }) => [
    file,
    ...[read, taken, changed, unchanged, withdrawn].map((count) => (refusedWhole ? '' : String(count))),
    refusedWhole ? words.refusedWhole : String(refusedRows),
  ]);
  const parts = [
    venue === null ? '' : `${words.into(venue)}\n`,
    files.length === 0 ? '' : textTable(columns, rows),
    ...files.map(refusals),
    files.flatMap(remarks).join(''),
    notRead.length === 0 ? '' : `${words.notRead}\n${notRead.map(({ why }) => `  ${why}\n`).join('')}`,
  ];
  return parts.filter((part) => part !== '').join('\n');
}

function refusals({ file, refused, refusedRows }: FileReport): string {
  if (refused.length === 0) return '';
  const lines = refused.slice(0, MOST_PRINTED).map(({ line, column, value, why }) => {
    const place = words.place(line, column, value);
    return `  ${place === '' ? '' : `${place}: `}${why}\n`;
  });
  const left = refusedRows - lines.length;
  return `${words.refusedIn(file)}\n${lines.join('')}${left > 0 ? `  ${words.more(left)}\n` : ''}`;
}

function remarks({ file, unlocked, ignored }: FileReport): readonly string[] {
  return [
    ...(unlocked > 0 ? [`${words.unlocked(unlocked, file)}\n`] : []),
    ...(ignored.length > 0 ? [`${words.ignored(ignored, file)}\n`] : []),
  ];
}
