import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { loadFolder } from '../changes/load-folder';
import type { DayRange } from '../core/days';
import { monthOf, type Period, periodsUpTo } from '../core/periods';
import { closeDatabase, openDatabase } from '../db/database';
import { inVenue } from '../db/in-venue';
import { loadFacts } from '../db/load-facts';
import { salesDays } from '../db/load-sales';
import { venuesSeenBy } from '../db/venues';
import { costPeriod } from '../model/costed-period';
import type { Facts } from '../model/facts';
import { type MenuMix, menuMix } from '../reports/menu-mix';
import { currentAsker } from '../session/asker';

const MONTHS = 12;

/** The demo restaurant's facts for its last twelve months and the one before them, from a new embedded database that is gone afterwards. */
export async function demoYear(): Promise<{ readonly facts: Facts; readonly months: readonly Period[] }> {
  const folder = mkdtempSync(join(tmpdir(), 'plateworth-bench-'));
  delete process.env.DATABASE_URL;
  process.env.DATA_DIR = folder;
  try {
    const db = await openDatabase();
    await loadFolder(db, 'seed/demo-house');
    const { person } = currentAsker();
    const [venue] = await venuesSeenBy(db, person);
    if (!venue) throw new Error('the demo has been loaded');
    return await inVenue(db, { venue: venue.id, person }, 'read', async (tx) => {
      const latest = (await salesDays(tx)).at(-1);
      if (latest === undefined) throw new Error('the demo has sales');
      const months = periodsUpTo(monthOf(latest), MONTHS + 1, 'months');
      const span = { from: months[0]?.range.from, to: months.at(-1)?.range.to } as DayRange;
      return { facts: await loadFacts(tx, span), months };
    });
  } finally {
    await closeDatabase();
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Compiles every month and answers its menu mix with its certainty, each beside the month before, as the Menu room does. */
export function mixesOfYear({ facts, months }: Awaited<ReturnType<typeof demoYear>>): readonly MenuMix[] {
  const mixes: MenuMix[] = [];
  for (const { range } of months) {
    const previous = mixes.at(-1);
    mixes.push(menuMix(costPeriod(facts, range), { section: null, ...(previous ? { previous } : {}) }));
  }
  return mixes.slice(1);
}
