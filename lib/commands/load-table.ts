import type { FileReport, LoadReport } from '../changes/load-report-shape';
import { grouped } from '../core/grouped';
import { terminalText } from '../format/terminal-text';
import { textTable } from '../format/text-table';
import { loadReportWords as words } from '../format/words/loading';

/** How many different refusals of a file are printed. */
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
    line(venue === null ? words.intoNone : words.into(venue)),
    files.length === 0 ? '' : textTable(columns, rows),
    ...files.map(refusals),
    files.flatMap(remarks).map(line).join(''),
    notRead.length === 0 ? '' : `${words.notRead}\n${notRead.map(({ why }) => line(`  ${why}`)).join('')}`,
  ];
  return parts.filter((part) => part !== '').join('\n');
}

const line = (text: string): string => `${terminalText(text)}\n`;

/** The same refusal of many rows is one line: where it is first, and how many rows it is of. */
function refusals({ file, refused, refusedRows }: FileReport): string {
  if (refused.length === 0) return '';
  const alike = [...grouped(refused, ({ column, value, why }) => JSON.stringify([column, value, why])).values()];
  const printed = alike.slice(0, MOST_PRINTED);
  const lines = printed.flatMap(([first, ...others]) => {
    if (!first) return [];
    const place = words.place(first.line, first.column, first.value, others.length);
    return [line(`  ${place === '' ? '' : `${place}: `}${first.why}`)];
  });
  const left = refusedRows - printed.reduce((sum, rows) => sum + rows.length, 0);
  return `${line(words.refusedIn(file))}${lines.join('')}${left > 0 ? line(`  ${words.more(left)}`) : ''}`;
}

function remarks({ file, unlocked, unlockedWithdrawn, ignored }: FileReport): readonly string[] {
  return [
    ...(unlocked > 0 ? [words.unlocked(unlocked, file)] : []),
    ...(unlockedWithdrawn > 0 ? [words.unlockedWithdrawn(unlockedWithdrawn)] : []),
    ...(ignored.length > 0 ? [words.ignored(ignored, file)] : []),
  ];
}
