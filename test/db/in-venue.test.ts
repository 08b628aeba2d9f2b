import { expect, test } from 'vitest';
import { inVenue } from '@/lib/db/in-venue';
import { createVenue, venuesSeenBy } from '@/lib/db/venues';
import { freshDatabase } from '../fresh-database';

const { db } = await freshDatabase();

test('createVenue(db, person, venue) twice at once ends in one venue', async () => {
  const [one, two] = await Promise.all([
    createVenue(db, 'ada', { name: 'Marram House', currency: 'GBP' }),
    createVenue(db, 'bo', { name: ' marram house' }),
  ]);
  expect(one.id).toBe(two.id);
  expect([one.made, two.made].filter(Boolean)).toHaveLength(1);
  expect(await venuesSeenBy(db, 'ada')).toHaveLength(1);
});

test('inVenue(write) raises the revision by one', async () => {
  const { id } = await createVenue(db, 'ada', { name: 'Second' });
  const who = { venue: id, person: 'ada' };
  await inVenue(db, who, 'write', async (tx) => {
    await tx.prisma.item.create({ data: { venueId: id, kind: 'dish', name: 'Tart', nameKey: 'tart' } });
    const { rows } = await tx.bulk.query('select name from item');
    expect(rows).toEqual([{ name: 'Tart' }]);
  });
  expect(await inVenue(db, who, 'read', async (tx) => tx.revision())).toBe(1);
});
