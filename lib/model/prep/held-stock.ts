import { addDays, type Day } from '../../core/days';
import { grouped } from '../../core/grouped';
import type { CostedPeriod } from '../costed-period';
import type { StockCount } from '../facts';
import { inBase, unitReader } from '../measure';
import { inSegment, segmentOf } from '../segments';
import { keptDays } from '../small-batch/batch-terms';

/** What of something made here can still be used on a day, in its base units, and when it was counted. */
export interface Held {
  readonly quantity: number;
  readonly countedOn: Day;
  /** Counted, but older than it keeps (or not the evening before, where nobody said how long it keeps): nothing of it is held. */
  readonly tooOld: boolean;
}

/**
 * What the last count before a day holds of each component, all places together, by node. A count is of the end of its day. What was made
 * that day at the latest keeps L days, that day being the first: it can be used up to L - 1 days later.
 */
export function heldStock(period: CostedPeriod, counts: readonly StockCount[], day: Day): ReadonlyMap<number, Held> {
  const units = unitReader(period.venue.kitchenMeasures);
  const segment = segmentOf(period.segments, day);
  const before = grouped(
    counts.filter((count) => count.day < day),
    ({ item }) => item,
  );
  const held = new Map<number, Held>();
  for (const [item, ofItem] of before) {
    const node = period.nodeOf.get(item);
    const measure = node === undefined ? null : (inSegment(period.measures[node] ?? [], segment)?.measure ?? null);
    const piece = node === undefined ? null : inSegment(period.recipes[node] ?? [], segment);
    if (node === undefined || measure === null || piece === null || period.things[node]?.kind !== 'component') continue;
    const countedOn = Math.max(...ofItem.map((count) => count.day)) as Day;
    const last = ofItem.filter((count) => count.day === countedOn);
    const quantities = last.map(({ quantity, unit }) => inBase(measure, quantity, unit, units));
    const lastGood = addDays(countedOn, (keptDays(piece) ?? 2) - 1);
    const tooOld = day > lastGood;
    const sum = quantities.reduce((total: number, each) => total + (typeof each === 'number' ? each : 0), 0);
    held.set(node, { quantity: tooOld ? 0 : sum, countedOn, tooOld });
  }
  return held;
}
