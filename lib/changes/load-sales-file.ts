import { type Day, dayText } from '../core/days';
import { nameKey } from '../core/name-key';
import { inVenue, type VenueTx } from '../db/in-venue';
import { beginLoad, finishLoad } from '../db/save-load';
import { saveSales } from '../db/save-sales';
import { clearIncoming, copyIncoming, type IncomingSale } from '../db/save-sales-incoming';
import { type VenueBooks, venueBooks } from '../db/save-venue-settings';
import type { RecordsState } from '../intake/file/records';
import { type FileRow, readRows, shortened } from '../intake/read-rows';
import { ROW_KINDS } from '../intake/row-kinds';
import { USUAL_CHANNEL } from '../intake/rows/channel';
import { keyOfName } from '../intake/rows/row-kind';
import type { SaleRow } from '../intake/rows/sales';
import type { RowFault } from '../model/refusal';
import { type Kept, KeptCopy } from './kept-copy';
import { MOST_LISTED } from './load-report-shape';
import type { LoadedFile, OneLoad } from './one-load';
import { RolledBack } from './rolled-back';

/**
 * Loads a file of sales in one transaction: its rows are copied into a temporary table as they are read, with bounded memory, and made into
 * exact day sums there. Other writes to the venue wait only from then on. Where no day differs only the record of the load is written.
 */
export async function loadSalesFile(load: OneLoad): Promise<LoadedFile> {
  const loaded = await inVenue(
    load.db,
    load.who,
    'write',
    async (tx) => {
      const saved = await saveFile(tx, load);
      await load.reached('before-commit');
      if (load.dryRun) throw new RolledBack(saved);
      return saved;
    },
    { lockLater: true },
  );
  await load.reached('after-commit');
  return loaded;
}

async function saveFile(tx: VenueTx, load: OneLoad): Promise<LoadedFile> {
  const { state, kept, books } = await copyFile(tx, load);
  const refusal = state.refusal ?? daysClosed(load.days, books.closedThrough);
  if (refusal || !kept) {
    tx.nothingChanged();
    return { refusedWhole: refusal ?? { rule: 'empty-file', line: null, column: null, value: null, facts: {} } };
  }
  const stamped = state.header?.names.includes('sold_at') ?? false;
  const id = await beginLoad(tx, { kind: 'sales', source: load.source, file: load.file, days: load.days, stamped });
  const by = { load: id, source: load.source, days: load.days };
  const { refusals, altered, ...counts } = await saveSales(tx, by, books.closedThrough, MOST_LISTED);
  await finishLoad(tx, id, counts, kept.digest, altered ? kept.chunks : []);
  if (!altered) tx.nothingChanged();
  return {
    refusedWhole: null,
    ...counts,
    refusals,
    unlocked: 0,
    unlockedWithdrawn: 0,
    ignored: state.header?.ignored ?? [],
  };
}

/** Fills incoming_sale with the file and takes the venue's lock; once more where the venue's clock was set meanwhile. */
async function copyFile(
  tx: VenueTx,
  load: OneLoad,
): Promise<{ readonly state: RecordsState; readonly kept: Kept | null; readonly books: VenueBooks }> {
  for (;;) {
    const books = await venueBooks(tx);
    const state: RecordsState = { refusal: null, header: null };
    const copy = new KeptCopy();
    await copySales(tx, copy.of(load.open()), books, load.days, state, async () => load.reached('mid-copy'));
    if (state.refusal) return { state, kept: null, books };
    const kept = await copy.whole();
    await tx.lock();
    const now = await venueBooks(tx);
    if (now.timeZone === books.timeZone && now.dayEnds === books.dayEnds) return { state, kept, books: now };
  }
}

/** Reads sales and copies them into incoming_sale. */
export async function copySales(
  tx: VenueTx,
  bytes: AsyncIterable<Uint8Array>,
  books: VenueBooks,
  days: OneLoad['days'],
  state: RecordsState,
  midway: () => Promise<void>,
): Promise<void> {
  await clearIncoming(tx);
  await copyIncoming(tx, incoming(readRows(bytes, ROW_KINDS.sales, books, state), days), midway);
}

async function* incoming(rows: AsyncIterable<FileRow<SaleRow>>, days: OneLoad['days']): AsyncGenerator<IncomingSale> {
  for await (const { line, raw, day, row, fault } of rows) {
    const outside = day !== null && days !== null && (day < days.from || day > days.to) ? outsideDays(raw, days) : null;
    const place = { line, raw, day };
    if (row && !outside) yield { ...place, itemKey: nameKey(row.item), channel: row.channel, sale: row, fault: null };
    else {
      const channel = keyOfName(raw.channel) ?? USUAL_CHANNEL;
      const why = outside ?? fault;
      if (why) yield { ...place, itemKey: keyOfName(raw.item) ?? '', channel, sale: null, fault: why };
    }
  }
}

function outsideDays(raw: FileRow<SaleRow>['raw'], { from, to }: NonNullable<OneLoad['days']>): RowFault {
  const column = raw.date?.trim() ? 'date' : 'sold_at';
  const facts = { from: dayText(from), to: dayText(to) };
  return { rule: 'outside-days', column, value: shortened(raw[column] ?? ''), facts };
}

function daysClosed(days: OneLoad['days'], closedThrough: Day | null) {
  if (days === null || closedThrough === null || days.from > closedThrough) return null;
  return {
    rule: 'days-closed' as const,
    line: null,
    column: null,
    value: null,
    facts: { through: dayText(closedThrough) },
  };
}
