import { costPeriod } from '@/lib/model/costed-period';
import type { Facts, ItemId } from '@/lib/model/facts';
import type { Issue } from '@/lib/model/issue';
import { plateCost } from '@/lib/model/plate-cost';
import { segmentOf } from '@/lib/model/segments';
import { day, days } from '../books';

/** What one portion costs on a day of October 2026; null where that is not known. */
export function costOn(facts: Facts, item: ItemId, on = '2026-10-01'): number | null {
  const { complete, total } = plateOn(facts, item, on);
  return complete ? total : null;
}

export function plateOn(facts: Facts, item: ItemId, on = '2026-10-01'): ReturnType<typeof plateCost> {
  const period = costPeriod(facts, days('2026-10'));
  const node = period.nodeOf.get(item);
  if (node === undefined) throw new RangeError('the item is not on the menu');
  return plateCost(period, node, segmentOf(period.segments, day(on)));
}

/** The issues of October 2026. */
export function issuesIn(facts: Facts, month = '2026-10'): readonly Issue[] {
  return costPeriod(facts, days(month)).issues;
}
