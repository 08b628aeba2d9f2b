import { resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { askedVenue } from '../answers/asked-venue';
import { openDatabase } from '../db/database';
import { inVenue } from '../db/in-venue';
import { terminalLines } from '../format/terminal-text';
import { exportUsage, exportWords } from '../format/words/export';
import { currentAsker } from '../session/asker';
import { folderFault, writeFolder } from './export-folder';
import { exportedFiles } from './exported-files';
import { complain, run, wrongUse } from './run';

const OPTIONS = { venue: { type: 'string' }, help: { type: 'boolean', short: 'h' } } as const;

async function exportVenue(): Promise<number> {
  const { values, positionals } = parseArgs({ options: OPTIONS, allowPositionals: true });
  if (values.help) {
    process.stdout.write(exportUsage);
    return 0;
  }
  const [path, ...more] = positionals;
  if (path === undefined || more.length > 0) throw wrongUse(exportWords.oneFolder);
  const fault = await folderFault(path);
  if (fault !== null) throw wrongUse(fault);
  const db = await openDatabase();
  const asker = currentAsker();
  const venue = await askedVenue(db, asker, values.venue ?? null);
  if (!venue.ok) return refuse(venue.problem.detail, venue.problem.status === 400 ? 2 : 1);
  const { id, name } = venue.answer;
  const exported = await inVenue(db, { venue: id, person: asker.person }, 'read', (tx) => exportedFiles(tx, name));
  try {
    await writeFolder(path, exported.files);
  } catch (error) {
    if (!(error instanceof Error && 'code' in error)) throw error;
    return refuse(exportWords.noWriting(path, String(error.code)), 1);
  }
  const lines = [
    exportWords.written(name, resolve(path)),
    ...exported.rows.map(({ file, rows }) => exportWords.rows(file, rows)),
    ...(exported.waiting === 0 ? [] : [exportWords.waiting(exported.waiting)]),
  ];
  process.stdout.write(`${terminalLines(lines.join('\n'))}\n`);
  return 0;
}

function refuse(sentence: string, code: number): number {
  complain(sentence);
  return code;
}

await run(exportVenue);
