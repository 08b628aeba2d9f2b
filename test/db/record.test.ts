import { expect, test } from 'vitest';
import { inVenue, type VenueTx } from '@/lib/db/in-venue';
import { createVenue } from '@/lib/db/venues';
import { freshDatabase } from '../fresh-database';

const { db } = await freshDatabase();
const { id: venue } = await createVenue(db, 'ada', { name: 'Marram House', currency: 'GBP' });

const write = <T>(person: string, work: (tx: VenueTx) => Promise<T>) => inVenue(db, { venue, person }, 'write', work);
const recordOf = (thing: string) =>
  inVenue(db, { venue, person: 'ada' }, 'read', ({ prisma }) =>
    prisma.change.findMany({
      where: { thing },
      orderBy: { id: 'asc' },
      select: { person: true, thingId: true, before: true, after: true },
    }),
  );

test('createVenue(db, person, venue) is the first entry in its record', async () => {
  expect(await recordOf('venue')).toMatchObject([
    { person: 'ada', thingId: venue, before: null, after: { name: 'Marram House', currency: 'GBP' } },
  ]);
});

test('inVenue(write) records who changed what, before and after', async () => {
  const item = await write('ada', ({ prisma, venue: venueId }) =>
    prisma.item.create({ data: { venueId, kind: 'dish', name: 'Tart', nameKey: 'tart' } }),
  );
  const key = { venueId_id: { venueId: venue, id: item.id } };
  await write('bo', ({ prisma }) =>
    prisma.item.update({ where: key, data: { name: 'Plum tart', nameKey: 'plum tart' } }),
  );
  await write('bo', ({ prisma }) => prisma.item.update({ where: key, data: { name: 'Plum tart' } })); // the same as it was
  await write('cy', ({ prisma }) => prisma.item.delete({ where: key }));
  const about = { thingId: item.id };
  expect(await recordOf('item')).toMatchObject([
    { ...about, person: 'ada', before: null, after: { name: 'Tart' } },
    { ...about, person: 'bo', before: { name: 'Tart' }, after: { name: 'Plum tart', name_key: 'plum tart' } },
    { ...about, person: 'cy', before: { name: 'Plum tart' }, after: null },
  ]);
});

test('inVenue(write) that is undone leaves nothing in the record', async () => {
  const undone = write('ada', async ({ prisma, venue: venueId }) => {
    await prisma.supplier.create({ data: { venueId, name: 'Hill Farm', nameKey: 'hill farm' } });
    throw new Error('changed my mind');
  });
  await expect(undone).rejects.toThrow('changed my mind');
  expect(await recordOf('supplier')).toEqual([]);
});

test('raising the revision is no change of the venue', async () => {
  expect(await recordOf('venue')).toHaveLength(1);
  await write('bo', ({ prisma }) => prisma.venue.update({ where: { id: venue }, data: { qFactor: '0.03' } }));
  expect(await recordOf('venue')).toMatchObject([
    {},
    { person: 'bo', before: { q_factor: 0 }, after: { q_factor: 0.03 } },
  ]);
});

test.each([
  `insert into change (venue_id, person, thing, thing_id) values (${venue}, 'eve', 'item', 1)`,
  `update change set person = 'eve'`,
  'delete from change',
  'truncate change',
])('%s is refused: the record is only ever added to, and by the trigger alone', async (statement) => {
  await expect(write('eve', ({ bulk }) => bulk.query(statement))).rejects.toMatchObject({ code: '42501' });
});
