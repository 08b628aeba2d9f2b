import { type Day, dayText } from '../core/days';
import { nameKey } from '../core/name-key';
import type { Database } from '../db/database';
import { PeriodClosed } from '../db/in-venue';
import { inTurn } from '../db/save-turn';
import { loadingWords } from '../format/words/loading';
import { NAME_LIMIT } from '../intake/cells';
import type { RecordsState } from '../intake/file/records';
import { readRows } from '../intake/read-rows';
import { ROW_KINDS } from '../intake/row-kinds';
import type { FileRefusal } from '../model/refusal';
import { currentAsker } from '../session/asker';
import { fileReport } from './file-report';
import { type FolderFile, type FolderFiles, folderFiles } from './folder-files';
import { loadKeyedFile, readKeyedFile } from './load-keyed-file';
import type { FileReport, LoadReport } from './load-report-shape';
import { loadSalesFile } from './load-sales-file';
import type { LoadedFile, LoadPoint, OneLoad } from './one-load';
import { RolledBack } from './rolled-back';
import { type VenueOfLoad, venueOfLoad } from './venue-of-load';

export interface LoadOptions {
  /** Name of the venue; made if there is none of that name. */
  readonly venue?: string | undefined;
  /** On whose word sales and covers are. */
  readonly source?: string | undefined;
  /** The days for which sales.csv is the whole truth, both included. */
  readonly days?: { readonly from: Day; readonly to: Day } | undefined;
  readonly person?: string | undefined;
  /** Whether a venue that it makes is the program's own demo. */
  readonly demo?: boolean | undefined;
  /** Says what would become of one file in a venue that is there, and keeps nothing. */
  readonly dryRun?: boolean | undefined;
  /** Called at the named points of every file; what it throws ends the load there. */
  readonly reached?: ((point: LoadPoint, file: string) => Promise<void> | void) | undefined;
}

const USUAL_SOURCE = 'book';

/**
 * Loads a folder of CSV files, or one CSV file, into a venue: each file in one transaction, in an order in which each
 * finds what it refers to. Bad files and rows are in the report with the way to mend them, wrong use is in `wrongUse`;
 * only bugs and a database that fails throw.
 */
export async function loadFolder(db: Database, path: string, options: LoadOptions = {}): Promise<LoadReport> {
  const wrong = wrongName(options);
  if (wrong) return wrongUse(wrong);
  const found = await folderFiles(path);
  if ('wrong' in found) return wrongUse(found.wrong);
  const notRead = [...found.notRead];
  if (found.files.length === 0) return { venue: null, files: [], notRead, wrongUse: null };
  if (options.dryRun && found.files.length > 1) return wrongUse(loadingWords.tryOneFile);
  const person = options.person ?? currentAsker().person;
  const inFile = await nameInFile(found);
  const venue = await venueOfLoad(db, person, {
    asked: options.venue?.trim() ?? null,
    inFile,
    folder: found.folder.slice(0, NAME_LIMIT),
    oneFile: found.oneFile,
    demo: options.demo ?? false,
  });
  if ('wrong' in venue) return wrongUse(venue.wrong);
  const files = await inTurn(db, venue.name, () => loadFiles(db, person, venue, found, options));
  const loaded = files.some(({ refusedWhole }) => !refusedWhole);
  return { venue: loaded ? venue.name : null, files, notRead, wrongUse: null };
}

function wrongUse(sentence: string): LoadReport {
  return { venue: null, files: [], notRead: [], wrongUse: sentence };
}

function wrongName({ venue, source }: LoadOptions): string | null {
  const fits = (name: string | undefined) =>
    name === undefined || (nameKey(name) !== '' && nameKey(name).length <= NAME_LIMIT && !name.includes('\0'));
  if (!fits(venue)) return loadingWords.noVenueName(NAME_LIMIT);
  return fits(source) ? null : loadingWords.noSourceName(NAME_LIMIT);
}

/** The name that the folder's venue.csv states, if it can be read. */
async function nameInFile({ files }: FolderFiles): Promise<string | null> {
  const file = files.find(({ kind }) => kind === 'venue');
  if (!file) return null;
  const state: RecordsState = { refusal: null, header: null };
  const clock = { timeZone: 'UTC', dayEnds: 0 };
  let name: string | null = null;
  for await (const { row } of readRows(file.open(), ROW_KINDS.venue, clock, state)) {
    if (row?.setting === 'name') name ??= String(row.value);
  }
  return state.refusal ? null : name;
}

async function loadFiles(
  db: Database,
  person: string,
  venue: VenueOfLoad,
  { files }: FolderFiles,
  options: LoadOptions,
): Promise<FileReport[]> {
  const source = options.source?.trim() ?? USUAL_SOURCE;
  const reports: FileReport[] = [];
  for (const file of files) {
    const loading = async (): Promise<OneLoad> => ({
      db,
      who: { venue: (await venue.get()).id, person },
      ...file,
      source,
      days: options.days ?? null,
      dryRun: options.dryRun ?? false,
      reached: async (point) => options.reached?.(point, file.file),
    });
    reports.push(fileReport(file, source, await loadOne(file, venue, loading)));
  }
  return reports;
}

/** A venue that is not there yet is made only for a file that is sound: a file refused whole leaves nothing behind. */
async function loadOne(file: FolderFile, venue: VenueOfLoad, loading: () => Promise<OneLoad>): Promise<LoadedFile> {
  try {
    if (file.kind === 'sales') {
      const refusal = venue.exists ? null : await refusalOfSales(file);
      return refusal ? { refusedWhole: refusal } : await loadSalesFile(await loading());
    }
    const read = await readKeyedFile(file.kind, file.open());
    return 'rule' in read ? { refusedWhole: read } : await loadKeyedFile(await loading(), read);
  } catch (error) {
    if (error instanceof RolledBack) return error.loaded;
    if (!(error instanceof PeriodClosed)) throw error;
    const through = error.closedThrough === null ? null : dayText(error.closedThrough);
    return { refusedWhole: { rule: 'period-closed', line: null, column: null, value: null, facts: { through } } };
  }
}

async function refusalOfSales(file: FolderFile): Promise<FileRefusal | null> {
  const state: RecordsState = { refusal: null, header: null };
  for await (const _ of readRows(file.open(), ROW_KINDS.sales, { timeZone: 'UTC', dayEnds: 0 }, state));
  return state.refusal;
}
