import type { Database } from '../db/database';
import { inVenue } from '../db/in-venue';
import { type VenueName, venuesSeenBy } from '../db/venues';
import { currentAsker } from '../session/asker';
import { folderFiles } from './folder-files';

/**
 * The demo, where the program was stopped before it had loaded all files of its folder; null where it was not, or where there is none.
 * A file is loaded whole or not at all, so that loading the folder again takes what is missing.
 */
export async function demoUnfinished(db: Database, folder: string): Promise<VenueName | null> {
  const { person } = currentAsker();
  const demo = (await venuesSeenBy(db, person)).find((venue) => venue.demo);
  const found = demo ? await folderFiles(folder) : null;
  if (!demo || !found || 'wrong' in found) return null;
  const loads = await inVenue(db, { venue: demo.id, person }, 'read', (tx) =>
    tx.prisma.load.findMany({ where: { venueId: tx.venue }, select: { kind: true }, distinct: ['kind'] }),
  );
  const loaded = new Set(loads.map(({ kind }) => kind));
  return found.files.every(({ kind }) => loaded.has(kind)) ? null : demo;
}
