import { describe, expect, test } from 'vitest';
import { loadFolder } from '@/lib/changes/load-folder';
import { file, folder } from '../changes/folders';
import { revision, type Stored, stored } from '../changes/stored';
import { freshDatabase } from '../fresh-database';
import { otherProcess } from '../other-process';

const { db, url } = await freshDatabase();

const HOUSE = folder({
  'menu.csv': ['item,valid_from,price,tax_pct,tax_included', 'Tart,,11,10,yes', 'Posset,,8,10,yes'],
  'ingredients.csv': ['ingredient,measure', 'Plums,g'],
  'recipes.csv': ['recipe,kind,valid_from,section', 'Tart,dish,,Plates'],
  'recipe_lines.csv': ['recipe,valid_from,item,quantity,unit', 'Tart,,Plums,250,g', 'Pastry,,Plums,10,g'],
  'sales.csv': [
    'date,item,sold,net_revenue',
    '2026-10-01,Tart,5,50',
    '2026-10-02,Posset,2,14',
    '2026-10-02,Eclair,1,8',
  ],
});

/** Enough rows that they are on their way to the database long before the last one is read. */
const SALES = ['date,item,sold,net_revenue', '2026-10-02,Nobody knows,1,1'];
for (let row = 0; row < 6_000; row++)
  SALES.push(`2026-10-0${1 + (row % 3)},${row % 2 === 0 ? 'Tart' : 'Posset'},1,7.25`);

const LOADS = [
  { name: 'sales', path: file('sales.csv', SALES), points: ['mid-copy', 'before-commit', 'after-commit'] },
  {
    name: 'recipes',
    path: file('recipes.csv', [
      'recipe,kind,valid_from,section',
      'Tart,dish,,Small plates',
      'Pastry,component,,',
      'Eclair,dish,,',
      'Ice,frozen,,',
    ]),
    points: ['mid-save', 'before-commit', 'after-commit'],
  },
  {
    name: 'recipe lines',
    path: file('recipe_lines.csv', ['recipe,valid_from,item,quantity,unit', 'Tart,,Plums,200,g', 'Tart,,Gold,1,leaf']),
    points: ['mid-save', 'before-commit', 'after-commit'],
  },
];

/** A venue with the house in it, and what it holds. */
async function house(venue: string): Promise<{ facts: Stored; at: number }> {
  await loadFolder(db, HOUSE, { venue });
  return { facts: await stored(db, venue), at: await revision(db, venue) };
}

describe.each(LOADS)('loadFolder of $name, killed', ({ name, path, points }) => {
  test.each(points)('at %s, leaves all or none, and the next load gives the full state', async (point) => {
    const whole = `${name} ${point} whole`;
    await house(whole);
    await loadFolder(db, path, { venue: whole });
    const full = await stored(db, whole);

    const venue = `${name} ${point}`;
    const before = await house(venue);
    expect(before.facts).not.toEqual(full);
    const killed = otherProcess('test/faults/killed-loader.ts', [path, venue, point], { env: { DATABASE_URL: url } });
    expect(await killed.end).toBe('SIGKILL');

    const committed = point === 'after-commit';
    expect(await stored(db, venue)).toEqual(committed ? full : before.facts);
    expect(await revision(db, venue)).toBe(before.at + (committed ? 1 : 0));
    const again = await loadFolder(db, path, { venue }); // neither its lock nor its turn is in the way
    expect(again.files.every(({ taken, changed }) => taken + changed > 0)).toBe(!committed);
    expect(await stored(db, venue)).toEqual(full);
  });
});
