// A process that writes a dish into the venue of that number and says where it stands: written, committed. It waits for a line before it commits.
import { openDatabase } from '../../lib/db/database';
import { inVenue } from '../../lib/db/in-venue';
import type { VenueId } from '../../lib/model/facts';

const [venue = '', name = ''] = process.argv.slice(2);
const db = await openDatabase();
await inVenue(db, { venue: Number(venue) as VenueId, person: 'ada' }, 'write', async ({ prisma, venue: venueId }) => {
  await prisma.item.create({ data: { venueId, kind: 'dish', name, nameKey: name } });
  console.log('written');
  await new Promise((resolve) => process.stdin.once('data', resolve));
});
console.log('committed');
await new Promise(() => setInterval(() => {}, 1000));
