import { expect, test } from 'vitest';
import { loadFolder } from '@/lib/changes/load-folder';
import { parseDay } from '@/lib/core/days';
import { inVenue } from '@/lib/db/in-venue';
import { salesDays, salesSpan } from '@/lib/db/load-sales';
import { loadWaitingSales } from '@/lib/db/load-waiting-sales';
import { file, folder } from '../changes/folders';
import { venueId } from '../changes/stored';
import { freshDatabase } from '../fresh-database';

const { db } = await freshDatabase();
const day = (text: string) => parseDay(text) ?? expect.unreachable(text);
const october = { from: day('2026-10-01'), to: day('2026-11-01') };

async function waiting() {
  const venue = await venueId(db, 'Marram House');
  return inVenue(db, { venue, person: 'ada' }, 'read', (tx) => loadWaitingSales(tx, october));
}

test('loadWaitingSales(tx, range) gives the sales whose name nobody knows, by day and name, until somebody names them', async () => {
  const sales = [
    'date,item,sold,channel',
    '2026-09-30,Creme brul#,7,',
    '2026-10-01,Plum tart,4,',
    '2026-10-01,Creme brul#,2.5,',
    '2026-10-01, creme BRUL# ,3,takeaway',
    '2026-10-02,Creme brul#,100,',
    '2026-10-02,Tea,1,',
    '2026-10-02,Tea,-1,', // a void: it waits to be mended, not for a name
    '2026-11-01,Tea,9,',
  ];
  const names = ['recipe,kind,valid_from,section,estimated_cost', 'Plum tart,dish,,,2'];
  await loadFolder(
    db,
    folder({ 'venue.csv': ['setting,value', 'name,Marram House'], 'recipes.csv': names, 'sales.csv': sales }),
  );
  expect(await waiting()).toEqual([
    { day: day('2026-10-01'), name: 'Creme brul#', rows: 2, portions: 5.5 },
    { day: day('2026-10-02'), name: 'Creme brul#', rows: 1, portions: 100 },
    { day: day('2026-10-02'), name: 'Tea', rows: 1, portions: 1 },
  ]);
  await loadFolder(db, file('recipes.csv', [...names, 'Creme brul#,dish,,,1.5']), { venue: 'Marram House' });
  expect((await waiting()).map(({ name }) => name)).toEqual(['Tea']);
  // what a later file replaces waits no longer
  await loadFolder(db, file('sales.csv', ['date,item,sold', '2026-10-02,Plum tart,1']), { venue: 'Marram House' });
  expect((await waiting()).map(({ name }) => name)).toEqual([]);
});

test('salesDays(tx) and salesSpan(tx) have the days on which all that was sold waits for a name', async () => {
  const waitingOnly = file('sales.csv', ['date,item,sold', '2026-12-05,Nobody knows it,3', '2026-12-06,Plum tart,-1']);
  await loadFolder(db, waitingOnly, { venue: 'Marram House' });
  const venue = await venueId(db, 'Marram House');
  const [days, span] = await inVenue(db, { venue, person: 'ada' }, 'read', async (tx) => [
    await salesDays(tx),
    await salesSpan(tx),
  ]);
  // what waits to be mended is no sale yet
  expect(days.at(-1)).toBe(day('2026-12-05'));
  expect([...span].at(-1)).toEqual(['2026-12', 1]);
});
