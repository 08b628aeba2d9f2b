import { spawnSync } from 'node:child_process';
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { loadFolder } from '@/lib/changes/load-folder';
import { loadExitCode } from '@/lib/changes/load-report-shape';
import { venuesSeenBy } from '@/lib/db/venues';
import { freshDatabase } from '../fresh-database';
import { file, folder } from './folders';
import { stored } from './stored';

const MENU = ['item,valid_from,price,tax_pct,tax_included', 'Tart,,11,10,yes'];
const SALES = ['date,item,sold', '2026-10-01,Tart,2'];
const DEMO = { 'venue.csv': ['setting,value', 'name,Marram House'], 'menu.csv': MENU, 'sales.csv': SALES };

test('loadFolder(db, folder) beside the demo goes to a venue of its own, and leaves the demo as it is', async () => {
  const { db } = await freshDatabase();
  await loadFolder(db, folder(DEMO), { demo: true });
  expect((await venuesSeenBy(db, 'owner')).map(({ name, demo }) => [name, demo])).toEqual([['Marram House', true]]);
  const before = await stored(db, 'Marram House');

  const single = await loadFolder(db, file('sales.csv', SALES));
  expect([single.venue, single.files, loadExitCode(single)]).toEqual([null, [], 2]);
  expect(single.wrongUse).toMatch(/^There is only the demo, Marram House, .* Name your venue with --venue NAME/);
  const namesake = await loadFolder(db, folder({ 'menu.csv': MENU }, 'marram house'));
  expect(namesake.wrongUse).toBe(single.wrongUse);

  const own = { 'menu.csv': MENU, 'sales.csv': ['date,item,sold', '2026-10-01,Tart,9'] };
  expect((await loadFolder(db, folder(own, 'Quay'))).venue).toBe('Quay');
  expect((await loadFolder(db, file('sales.csv', SALES))).venue).toBe('Quay'); // the only one beside the demo
  expect((await venuesSeenBy(db, 'owner')).map(({ name, demo }) => [name, demo])).toEqual([
    ['Marram House', true],
    ['Quay', false],
  ]);
  expect(await stored(db, 'Marram House')).toEqual(before);

  const named = await loadFolder(db, file('sales.csv', SALES), { venue: 'Marram House' });
  expect([named.venue, named.files[0]?.unchanged]).toEqual(['Marram House', 1]);
  expect((await loadFolder(db, folder(DEMO))).venue).toBe('Marram House');
});

test('loadFolder(db, folder) of what holds no file that is known loads nothing, says so and ends with 1', async () => {
  const { db } = await freshDatabase();
  await loadFolder(db, folder(DEMO));
  const path = folder({ 'budget.csv': 'x' });
  mkdirSync(join(path, 'sales.csv'));
  mkdirSync(join(path, 'photographs'));
  const report = await loadFolder(db, path);
  expect([report.venue, report.files, report.wrongUse, loadExitCode(report)]).toEqual([null, [], null, 1]);
  expect(report.notRead.map(({ file: name }) => name)).toEqual(['budget.csv', 'sales.csv']);
  expect(report.notRead[1]?.why).toBe(
    'sales.csv is a folder, a pipe or a device, not a file. Put the file itself there.',
  );
});

test.skipIf(process.platform === 'win32')('loadFolder(db, path) does not wait for a pipe', async () => {
  const { db } = await freshDatabase();
  const path = folder({ 'menu.csv': MENU });
  expect(spawnSync('mkfifo', [join(path, 'sales.csv')]).status).toBe(0);
  const report = await loadFolder(db, path);
  expect(report.files.map(({ file: name }) => name)).toEqual(['menu.csv']);
  expect(report.notRead.map(({ file: name }) => name)).toEqual(['sales.csv']);
  expect((await loadFolder(db, join(path, 'sales.csv'))).wrongUse).toMatch(/is a folder, a pipe or a device/);
});

test('loadFolder(db, file) says how many rows go when what stood in for waiting rows is no longer needed', async () => {
  const { db } = await freshDatabase();
  const venue = 'Quay';
  await loadFolder(db, folder({ 'menu.csv': MENU, 'sales.csv': SALES }), { venue });
  // the Eclair is not known, so the Tart of the file before is carried over
  await loadFolder(db, file('sales.csv', ['date,item,sold', '2026-10-01,Eclair,3']), { venue });
  const unlocking = await loadFolder(db, file('menu.csv', [...MENU, 'Eclair,,6,10,yes']), { venue });
  expect(unlocking.files).toMatchObject([{ taken: 1, withdrawn: 0, unlocked: 1, unlockedWithdrawn: 1 }]);
});
