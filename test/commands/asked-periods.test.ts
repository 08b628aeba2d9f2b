import { appendFileSync, rmSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { menuMixShape } from '@/lib/answers/menu-mix-shape';
import { freshDatabase } from '../fresh-database';
import { publishedFolder, SIX_ITEMS } from '../published-folders';
import { command } from './command';

const { url } = await freshDatabase();
const folders: string[] = [];
afterAll(() => {
  for (const folder of folders) rmSync(dirname(folder), { recursive: true });
});

/** A venue that sold something on 14 September 2026, with a calendar of its own. */
async function venueWith(calendar: string): Promise<string> {
  const venue = `Kept in ${calendar}`;
  const folder = publishedFolder({ ...SIX_ITEMS, venue });
  folders.push(folder);
  appendFileSync(join(folder, 'venue.csv'), `periods,${calendar}\n`);
  expect((await command(url, 'load', folder, '--json')).code).toBe(0);
  return venue;
}
const asked = (venue: string, month: string) =>
  command(url, 'report', 'menu-mix', '--venue', venue, '--month', month, '--json');

// Hand-worked: weeks 37 to 40 of 2026 run from 7 September, weeks 35 to 39 from 24 August.
describe.each([
  { calendar: '13x4', month: '2026-P10', from: '2026-09-07', to: '2026-10-05', none: '2026-P14' },
  { calendar: '4-4-5', month: '2026-P09', from: '2026-08-24', to: '2026-09-28', none: '2026-P13' },
])('a venue whose periods are $calendar', ({ calendar, month, from, to, none }) => {
  test(`report menu-mix --month ${month} answers for the days of its calendar`, async () => {
    const venue = await venueWith(calendar);
    const report = await asked(venue, month);
    expect(report.stderr).toBe('');
    const mix = menuMixShape.parse(JSON.parse(report.stdout));
    expect([mix.month, mix.period, mix.totals.sold]).toEqual([
      month,
      { from, to },
      SIX_ITEMS.items.reduce((sum, { sold }) => sum + sold, 0),
    ]);
    const refused = await asked(venue, none);
    expect([refused.code, refused.stderr]).toEqual([2, expect.stringContaining(`“${none}” is a period that a year`)]);
  });
});

test('report menu-mix --month 2026-P10 of a venue that keeps months says so', async () => {
  const venue = await venueWith('months');
  const refused = await asked(venue, '2026-P10');
  expect([refused.code, refused.stderr]).toEqual([2, expect.stringContaining('this venue keeps calendar months')]);
});
