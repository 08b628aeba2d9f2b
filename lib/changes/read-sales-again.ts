import { Readable } from 'node:stream';
import { createGunzip } from 'node:zlib';
import type { VenueTx } from '../db/in-venue';
import { saveSales } from '../db/save-sales';
import { forgetStampedSales, keptBytes } from '../db/save-sales-again';
import type { VenueBooks } from '../db/save-venue-settings';
import type { RecordsState } from '../intake/file/records';
import { copySales } from './load-sales-file';

/**
 * Reads the kept files of sales with time stamps again, oldest first, by the clock that the venue has now: what they say is the same as if
 * the clock had been set before them.
 */
export async function readStampedSalesAgain(tx: VenueTx, books: VenueBooks): Promise<void> {
  for (const load of await forgetStampedSales(tx)) {
    const bytes = Readable.from(await keptBytes(tx, load.load)).pipe(createGunzip());
    const state: RecordsState = { refusal: null, header: null };
    await copySales(tx, bytes, books, load.days, state, async () => {});
    await saveSales(tx, load, books.closedThrough, 0);
  }
}
