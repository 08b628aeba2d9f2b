import type { DayRange } from '../core/days';
import type { Database } from '../db/database';
import { inVenue } from '../db/in-venue';
import { loadFacts } from '../db/load-facts';
import type { CostedPeriod } from '../model/costed-period';
import { costPeriod } from '../model/costed-period';
import type { VenueId } from '../model/facts';
import type { Scope } from '../model/things';
import type { Asker } from '../session/asker';

/** Flat lines and unit costs kept in all, some 200 MB of them: a year of a large book, or everything of a small one. */
const MOST_KEPT = 4_000_000;

/** A costed period answers only for the revision of the venue that it was made from. */
interface Kept {
  readonly revision: number;
  readonly costed: CostedPeriod;
}

// Next loads a module more than once: what must be one in a process stands here.
const shared = globalThis as { plateworthCosted?: Map<string, Kept> };
shared.plateworthCosted ??= new Map();
const kept = shared.plateworthCosted;

/**
 * A venue's periods, costed: read in one transaction, each compiled once for a revision of the venue, the last ones kept.
 * The ranges are asked for together, so that all of them see one state; facts are read once, for the days from the first to the last of
 * those that are not kept.
 */
export async function costedPeriods(
  db: Database,
  asker: Asker,
  venue: VenueId,
  ranges: readonly DayRange[],
  scope: Scope = 'offered',
): Promise<{ readonly revision: number; readonly periods: readonly CostedPeriod[] }> {
  const keyOf = ({ from, to }: DayRange) => [db.pool.options.database ?? '', venue, scope, from, to].join(' ');
  return inVenue(db, { venue, person: asker.person }, 'read', async (tx) => {
    const revision = tx.revision() ?? 0;
    const isKept = (range: DayRange) => kept.get(keyOf(range))?.revision === revision;
    const missing = ranges.filter((range) => !isKept(range));
    if (missing.length > 0) {
      const span = { from: Math.min(...missing.map(({ from }) => from)), to: Math.max(...missing.map(({ to }) => to)) };
      const facts = await loadFacts(tx, span as DayRange);
      for (const range of missing) kept.set(keyOf(range), { revision, costed: costPeriod(facts, range, scope) });
    }
    const periods = ranges.flatMap((range) => touched(keyOf(range)));
    forgetOldest(new Set(ranges.map(keyOf)));
    return { revision, periods };
  });
}

/** What is kept under a key, which becomes the last to go. */
function touched(key: string): readonly CostedPeriod[] {
  const known = kept.get(key);
  if (!known) return [];
  kept.delete(key);
  kept.set(key, known);
  return [known.costed];
}

function sizeOf({ costed: { lines, costs } }: Kept): number {
  return lines.amount.length + costs.food.length;
}

/** Lets go of what was asked for longest ago while too much is kept, never of what is asked for now. */
function forgetOldest(asked: ReadonlySet<string>): void {
  let size = [...kept.values()].reduce((sum, each) => sum + sizeOf(each), 0);
  for (const [key, each] of kept) {
    if (size <= MOST_KEPT) return;
    if (asked.has(key)) continue;
    kept.delete(key);
    size -= sizeOf(each);
  }
}
