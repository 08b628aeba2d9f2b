import { afterAll, expect, test } from 'vitest';
import { demoUnfinished } from '@/lib/changes/demo-unfinished';
import { loadFolder } from '@/lib/changes/load-folder';
import { closeDatabase } from '@/lib/db/database';
import { freshDatabase } from '../fresh-database';

const { db } = await freshDatabase();
afterAll(closeDatabase);
const BOOK = 'seed/small';

test('demoUnfinished(db, folder) is the demo whose loading was cut short, until it is loaded to its end', async () => {
  expect(await demoUnfinished(db, BOOK)).toBeNull();
  const killed = loadFolder(db, BOOK, {
    demo: true,
    reached: (_, file) => {
      if (file === 'sales.csv') throw new Error('killed');
    },
  });
  await expect(killed).rejects.toThrow('killed');
  const demo = await demoUnfinished(db, BOOK);
  expect(demo?.name).toBe('Marram House');

  const { files } = await loadFolder(db, BOOK, { demo: true, venue: demo?.name });
  const took = (name: string) => files.find(({ file }) => file === name);
  expect(took('recipes.csv')).toMatchObject({ taken: 0, refused: [] });
  expect(took('sales.csv')?.taken).toBe(took('sales.csv')?.read);
  expect(await demoUnfinished(db, BOOK)).toBeNull();
});

test('demoUnfinished(db, folder) leaves a venue of the owner’s own as it is', async () => {
  const own = await freshDatabase();
  await loadFolder(own.db, `${BOOK}/recipes.csv`, { venue: 'Own house' });
  expect(await demoUnfinished(own.db, BOOK)).toBeNull();
});
