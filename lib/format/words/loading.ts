const listed = (names: readonly string[]): string =>
  names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;

const KNOWN_NAMES =
  'venue.csv, labour.csv, exchange_rates.csv, ingredients.csv, measures.csv, parts.csv, yields.csv, suppliers.csv, offers.csv, offer_prices.csv, recipes.csv, recipe_lines.csv, menu.csv, sales.csv, covers.csv, purchases.csv, counts.csv, moves.csv, trials.csv or trial_lines.csv';

/** Why a load is not tried, or a file of it not read, and what to do. */
export const loadingWords = {
  noSuchPath: (path: string) =>
    `There is nothing at ${path}. Name a folder of CSV files, a ZIP of it, a workbook, or one CSV file.`,
  closedFolder: (path: string) => `The folder ${path} cannot be opened. Check that you may read it.`,
  emptyFolder: (path: string) => `There is no CSV file in ${path}. Bring ${KNOWN_NAMES}.`,
  archive: (file: string) =>
    `${file} lies among other files, so it is not opened. Load it by itself: npm run load -- ${file}.`,
  oldWorkbook: (file: string) =>
    `${file} is a workbook or an archive of a kind that is not read. Save it as XLSX or ZIP, or each sheet as “CSV UTF-8” under the name of its file.`,
  emptyArchive: (file: string) => `There is no CSV file in ${file}. Bring ${KNOWN_NAMES}.`,
  damaged: (file: string, reason: string) =>
    `${file} cannot be opened (${reason}). Pack or save it again, or bring a folder of CSV files.`,
  tooLarge: (file: string, megabytes: number, limit: number) =>
    `${file} unpacks to ${megabytes} MB or more, and at most ${limit} MB are opened. Bring it in parts, or as a folder of CSV files.`,
  unknownSheet: (file: string, sheet: string) =>
    `What the sheet “${sheet}” of ${file} holds cannot be told from its name. Name it as a file of the data folder: sales, recipes …`,
  notCsv: (path: string) =>
    `${path} is neither a folder nor a CSV, ZIP or XLSX file. Name a folder of CSV files, a ZIP of it, a workbook, or one CSV file.`,
  noFile: (path: string) => `${path} is a folder, a pipe or a device, not a file. Put the file itself there.`,
  demoOnly: (demo: string) =>
    `There is only the demo, ${demo}, and a file of your own does not belong into it. Name your venue with --venue NAME: it is made if there is none of that name.`,
  unknownName: (file: string) =>
    `What ${file} holds cannot be told from its name. Begin the name with that of a file of the data folder: ${KNOWN_NAMES}.`,
  whichVenue: (known: readonly string[]) => `There are several venues: ${listed(known)}. Name one with --venue.`,
  noVenueName: (limit: number) => `A venue needs a name of 1 to ${limit} characters. Name it with --venue.`,
  noSourceName: (limit: number) => `A source needs a name of 1 to ${limit} characters. Name it with --source.`,
  noSuchDays: (text: string) =>
    `“${text}” are no days. Write the first and the last day, both included: --days 2026-10-01..2026-10-31.`,
  whichFile: (known: readonly string[]) =>
    `Which file of the data folder is it? Say so in the address, such as ?file=sales. There is ${listed(known)}.`,
  uploadTooLarge: (limit: number) => `The file is larger than ${limit} MB. Send it in parts.`,
  tryOneFile:
    'A trial run is of one file: what a later file needs of an earlier one would not be there. Send the files one by one, or without dryRun.',
  onePath: 'Name one folder of CSV files, one ZIP of it, one workbook, or one CSV file.',
} as const;

export const loadUsage = `npm run load -- FOLDER | ZIP | XLSX | CSV [options]

Brings in a data folder, or one file of it. Files: venue.csv, labour.csv, exchange_rates.csv, ingredients.csv, measures.csv,
parts.csv, yields.csv, suppliers.csv, offers.csv, offer_prices.csv, recipes.csv, recipe_lines.csv, menu.csv, sales.csv, covers.csv,
purchases.csv, counts.csv, moves.csv, trials.csv, trial_lines.csv (and names that begin so, sales-2026-10.csv).
The order does not matter, and what was loaded before is not taken twice. A ZIP is read like the folder that was packed; of a workbook each
sheet is a file, named as the file is (sales, recipes); per cent are written as 43 there too, in a cell without a per cent format.
A row that cannot be taken is refused by itself and kept until a later file mends it.

  --venue NAME     which venue; made if there is none of that name. Left out: the one in venue.csv, else the only
                   one beside the demo, else, of a folder, one named after it
  --source NAME    on whose word the sales, covers and moves are (book)
  --days A..B      sales.csv is the whole truth for these days, both included, also where it has no row for one
  --json           the report as JSON

Exit code: 0 nothing refused, 3 some rows refused, 1 nothing could be kept, 2 wrong use.
`;

/** Heads and words of the report in a terminal. */
export const loadReportWords = {
  into: (venue: string) => `Loaded into ${venue}.`,
  intoNone: 'Nothing was loaded.',
  heads: ['file', 'read', 'taken', 'changed', 'unchanged', 'withdrawn', 'refused'],
  refusedWhole: 'whole',
  refusedIn: (file: string) => `Refused in ${file}:`,
  place: (line: number | null, column: string | null, value: string | null, others: number): string => {
    const more = others === 0 ? '' : ` and ${others} more ${others === 1 ? 'row' : 'rows'}`;
    const where = line === null ? '' : `line ${line}${more}`;
    const what = column === null || column === '' ? '' : `${column}${value ? ` “${value}”` : ''}`;
    return [where, what].filter((part) => part !== '').join(', ');
  },
  more: (count: number) => `… and ${count} more. --json lists them.`,
  unlocked: (count: number, file: string) =>
    `${count} ${count === 1 ? 'row' : 'rows'} of earlier files had waited for ${file} and ${count === 1 ? 'is' : 'are'} taken now.`,
  unlockedWithdrawn: (count: number) =>
    `${count} ${count === 1 ? 'row' : 'rows'} of files before those, kept only as long as they waited, ${count === 1 ? 'is' : 'are'} withdrawn with that.`,
  ignored: (columns: readonly string[], file: string) => `Not read in ${file}: ${listed(columns)}.`,
  notRead: 'Not read:',
} as const;
