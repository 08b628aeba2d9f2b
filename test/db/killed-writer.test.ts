import { expect, test } from 'vitest';
import { inVenue } from '@/lib/db/in-venue';
import { createVenue } from '@/lib/db/venues';
import { freshDatabase } from '../fresh-database';
import { otherProcess } from '../other-process';

const { db, url } = await freshDatabase();
const { id: venue } = await createVenue(db, 'ada', { name: 'Marram House' });
const who = { venue, person: 'ada' };

const writer = (name: string) =>
  otherProcess('test/db/writer.ts', [String(venue), name], { env: { DATABASE_URL: url } });
const state = () =>
  inVenue(db, who, 'read', async (tx) => {
    const items = await tx.prisma.item.findMany({ orderBy: { name: 'asc' } });
    return { names: items.map(({ name }) => name), revision: tx.revision() };
  });

test('inVenue(write) of a process that is killed before it commits leaves nothing, and its lock to the next', async () => {
  const killed = writer('plum');
  expect(await killed.line()).toBe('written');
  killed.child.kill('SIGKILL');
  expect(await killed.end).toBe('SIGKILL');
  expect(await state()).toEqual({ names: [], revision: 0 });
  await inVenue(db, who, 'write', ({ prisma }) =>
    prisma.item.create({ data: { venueId: venue, kind: 'dish', name: 'fig', nameKey: 'fig' } }),
  );
  expect(await state()).toEqual({ names: ['fig'], revision: 1 });
});

test('inVenue(write) of a process that is killed after it committed is kept whole', async () => {
  const killed = writer('pear');
  expect(await killed.line()).toBe('written');
  killed.child.stdin?.write('go\n');
  expect(await killed.line()).toBe('committed');
  killed.child.kill('SIGKILL');
  await killed.end;
  expect(await state()).toEqual({ names: ['fig', 'pear'], revision: 2 });
});
