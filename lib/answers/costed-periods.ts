import type { DayRange } from '../core/days';
import type { Database } from '../db/database';
import { inVenue } from '../db/in-venue';
import { loadFacts } from '../db/load-facts';
import type { CostedPeriod } from '../model/costed-period';
import { costPeriod } from '../model/costed-period';
import type { VenueId } from '../model/facts';
import type { Scope } from '../model/things';
import type { Asker } from '../session/asker';

const KEPT = 48;

/** A costed period answers only for the revision of the venue that it was made from. */
interface Kept {
  readonly revision: number;
  readonly costed: readonly CostedPeriod[];
}

// Next loads a module more than once: what must be one in a process stands here.
const shared = globalThis as { plateworthCosted?: Map<string, Kept> };
shared.plateworthCosted ??= new Map();
const kept = shared.plateworthCosted;

/**
 * A venue's periods, costed: read in one transaction, compiled once for each revision of the venue, the last few kept.
 * The ranges are asked for together, so that all of them see one state; facts are read once for the days from the first to the last.
 */
export async function costedPeriods(
  db: Database,
  asker: Asker,
  venue: VenueId,
  ranges: readonly DayRange[],
  scope: Scope = 'offered',
): Promise<{ readonly revision: number; readonly periods: readonly CostedPeriod[] }> {
  const key = [db.pool.options.database ?? '', venue, scope, ...ranges.flatMap(({ from, to }) => [from, to])].join(' ');
  return inVenue(db, { venue, person: asker.person }, 'read', async (tx) => {
    const revision = tx.revision() ?? 0;
    if (ranges.length === 0) return { revision, periods: [] };
    const known = kept.get(key);
    if (known?.revision === revision) {
      kept.delete(key);
      kept.set(key, known); // last asked for, last to go
      return { revision, periods: known.costed };
    }
    const span = { from: Math.min(...ranges.map(({ from }) => from)), to: Math.max(...ranges.map(({ to }) => to)) };
    const facts = await loadFacts(tx, span as DayRange);
    const costed = ranges.map((range) => costPeriod(facts, range, scope));
    kept.set(key, { revision, costed });
    for (const oldest of kept.keys()) {
      if (kept.size <= KEPT) break;
      kept.delete(oldest);
    }
    return { revision, periods: costed };
  });
}
