import { inVenue, type VenueTx } from '../db/in-venue';
import { isFault } from '../db/plan-keyed';
import { beginLoad, finishLoad, type LoadCounts } from '../db/save-load';
import { type VenueBooks, venueBooks } from '../db/save-venue-settings';
import { replaceWaiting } from '../db/save-waiting';
import type { RecordsState } from '../intake/file/records';
import type { FileRefusal } from '../model/refusal';
import { type Kept, KeptCopy } from './kept-copy';
import { KEYED_KINDS, type KeyedKind, type ReadFile, type SavedRows } from './keyed-kinds';
import { MOST_LISTED } from './load-report-shape';
import type { LoadedFile, OneLoad } from './one-load';
import { readStampedSalesAgain } from './read-sales-again';
import { RolledBack } from './rolled-back';
import { NOTHING_UNLOCKED, type Unlocked, unlockWaiting } from './unlock-waiting';

/** A file of edited facts that was read and is sound as a file. */
export interface SoundFile {
  readonly kind: KeyedKind;
  readonly read: ReadFile;
  readonly kept: Kept;
  readonly ignored: readonly string[];
}

/** Reads a file of edited facts; nothing is saved. */
export async function readKeyedFile(
  kind: KeyedKind,
  bytes: AsyncIterable<Uint8Array>,
): Promise<SoundFile | FileRefusal> {
  const state: RecordsState = { refusal: null, header: null };
  const copy = new KeptCopy();
  const read = await KEYED_KINDS[kind].read(copy.of(bytes), state);
  return state.refusal ?? { kind, read, kept: await copy.whole(), ignored: state.header?.ignored ?? [] };
}

/**
 * Saves a file of edited facts in one transaction: its rows, the ones that it refuses, and the rows of earlier loads that had waited for
 * it. Where nothing altered only the record of the load is written.
 */
export async function loadKeyedFile(load: OneLoad, file: SoundFile): Promise<LoadedFile> {
  const loaded = await inVenue(load.db, load.who, 'write', async (tx) => {
    const saved = await saveFile(tx, load, file);
    await load.reached('before-commit');
    if (load.dryRun) throw new RolledBack(saved);
    return saved;
  });
  await load.reached('after-commit');
  return loaded;
}

async function saveFile(tx: VenueTx, load: OneLoad, { kind, read, kept, ignored }: SoundFile): Promise<LoadedFile> {
  const books = await venueBooks(tx);
  const id = await beginLoad(tx, { kind, source: load.source, file: load.file, days: null, stamped: false });
  const speaksFor = new Set(read.rows.flatMap(({ key }) => (key === null ? [] : [key])));
  const { closedThrough } = books;
  const saved = await read.save(tx, { load: id, source: load.source, closedThrough, speaksFor });
  await load.reached('mid-save');
  const file = { load: id, kind, source: load.source, speaksFor, rows: read.rows };
  const waitingAltered = await replaceWaiting(tx, file, saved.refused);
  const counts = countsOf(saved);
  const altered = counts.taken + counts.changed + counts.withdrawn > 0 || waitingAltered;
  const { unlocked, unlockedWithdrawn } = altered ? await afterwards(tx, kind, saved, books) : NOTHING_UNLOCKED;
  await finishLoad(tx, id, counts, kept.digest, altered ? kept.chunks : []);
  if (!altered) tx.nothingChanged();
  const refusals = saved.refused.slice(0, MOST_LISTED).map(({ line, fault }) => ({ line, ...fault }));
  return { refusedWhole: null, ...counts, refusals, unlocked, unlockedWithdrawn, ignored };
}

/** What the new facts make possible: rows that had waited for them, sales whose day follows another clock now. */
async function afterwards(tx: VenueTx, kind: KeyedKind, saved: SavedRows, before: VenueBooks): Promise<Unlocked> {
  if (saved.clockChanged) {
    const now = await venueBooks(tx);
    if (now.timeZone !== before.timeZone || now.dayEnds !== before.dayEnds) await readStampedSalesAgain(tx, now);
  }
  return unlockWaiting(tx, kind, before.closedThrough);
}

function countsOf({ outcomes, withdrawn }: SavedRows): LoadCounts {
  const count = (outcome: string) => outcomes.filter((each) => each === outcome).length;
  return {
    read: outcomes.length,
    taken: count('taken'),
    changed: count('changed'),
    unchanged: count('unchanged'),
    refused: outcomes.filter(isFault).length,
    withdrawn,
  };
}
