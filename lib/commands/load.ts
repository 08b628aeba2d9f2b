import { parseArgs } from 'node:util';
import { loadFolder } from '../changes/load-folder';
import { loadExitCode } from '../changes/load-report-shape';
import { type Day, parseDay } from '../core/days';
import { openDatabase } from '../db/database';
import { terminalJson } from '../format/terminal-text';
import { loadingWords, loadUsage } from '../format/words/loading';
import { currentAsker } from '../session/asker';
import { loadTable } from './load-table';
import { run, wrongUse } from './run';

const OPTIONS = {
  venue: { type: 'string' },
  source: { type: 'string' },
  days: { type: 'string' },
  json: { type: 'boolean' },
  help: { type: 'boolean', short: 'h' },
} as const;

/** A..B, both included; one day alone is a range of one. */
function daysIn(text: string): { readonly from: Day; readonly to: Day } {
  const [from = '', to = from, ...more] = text.split('..');
  const [first, last] = [parseDay(from), parseDay(to)];
  if (first === null || last === null || first > last || more.length > 0) throw wrongUse(loadingWords.noSuchDays(text));
  return { from: first, to: last };
}

await run(async () => {
  const { values, positionals } = parseArgs({ options: OPTIONS, allowPositionals: true });
  if (values.help) {
    process.stdout.write(loadUsage);
    return 0;
  }
  const [path, ...more] = positionals;
  if (path === undefined || more.length > 0) throw wrongUse(loadingWords.onePath);
  const days = values.days === undefined ? undefined : daysIn(values.days);
  const { venue, source } = values;
  const report = await loadFolder(await openDatabase(), path, { venue, source, days, person: currentAsker().person });
  if (values.json) process.stdout.write(terminalJson(report));
  if (report.wrongUse !== null) throw wrongUse(report.wrongUse);
  if (!values.json) process.stdout.write(loadTable(report));
  return loadExitCode(report);
});
