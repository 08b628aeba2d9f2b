import { type DayRange, dateOfDay } from '../core/days';
import type { ItemId, Trial } from '../model/facts';
import { dayIn, numberIn } from './columns';
import type { VenueTx } from './in-venue';

/** The trials before the end of a range, by dish and day, with the ingredients that they used as written. */
export async function loadTrials(
  tx: VenueTx,
  range: DayRange,
  byItem: (a: number, b: number) => number,
): Promise<Trial[]> {
  const rows = await tx.prisma.trial.findMany({
    where: { venueId: tx.venue, day: { lt: dateOfDay(range.to) } },
    select: {
      itemId: true,
      day: true,
      hours: true,
      grade: true,
      outcome: true,
      lines: { select: { itemId: true, quantity: true, unit: true }, orderBy: { position: 'asc' } },
    },
  });
  rows.sort((a, b) => byItem(a.itemId, b.itemId) || a.day.getTime() - b.day.getTime());
  return rows.map(({ itemId, day, hours, grade, outcome, lines }) => ({
    item: itemId as ItemId,
    day: dayIn(day),
    hours: numberIn(hours),
    grade,
    outcome,
    lines: lines.map((line) => ({ item: line.itemId as ItemId, quantity: numberIn(line.quantity), unit: line.unit })),
  }));
}
