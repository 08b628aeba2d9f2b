import { beforeAll, expect, test } from 'vitest';
import { type Day, dateOfDay, parseDay } from '@/lib/core/days';
import { nameKey } from '@/lib/core/name-key';
import { inVenue } from '@/lib/db/in-venue';
import { loadMoves, loadPurchases } from '@/lib/db/load-stock';
import { createVenue } from '@/lib/db/venues';
import type { VenueId } from '@/lib/model/facts';
import { freshDatabase } from '../fresh-database';

const { db } = await freshDatabase();

const day = (text: string): Day => parseDay(text) ?? expect.unreachable(text);
const october = { from: day('2026-10-01'), to: day('2026-11-01') };

let marram: VenueId;
const read = <T>(of: Parameters<typeof inVenue<T>>[3]) => inVenue(db, { venue: marram, person: 'ada' }, 'read', of);

beforeAll(async () => {
  marram = (await createVenue(db, 'ada', { name: 'Marram House' })).id;
  await inVenue(db, { venue: marram, person: 'ada' }, 'write', async (tx) => {
    const venueId = tx.venue;
    const named = (name: string) => ({ venueId, name, nameKey: nameKey(name) });
    const { id: itemId } = await tx.prisma.item.create({ data: { ...named('Cream'), kind: 'ingredient' } });
    const { id: supplierId } = await tx.prisma.supplier.create({ data: named('Saltmarsh Dairy') });
    const loadOf = async (kind: 'purchases' | 'moves') => {
      const file = { source: 'book', file: `${kind}.csv`, digest: '', person: tx.person };
      return (await tx.prisma.load.create({ data: { venueId, kind, ...file } })).id;
    };
    const scope = (kind: 'purchases' | 'moves', loadId: number, text: string, of: string) => ({
      ...{ venueId, kind, source: 'book', loadId, live: true },
      ...{ day: dateOfDay(day(text)), scope: of },
    });
    const bought = await loadOf('purchases');
    const lines = [
      ['2026-10-20', '2026-10-21', 'A'],
      ['2026-11-03', '2026-10-30', 'B'], // came in October, invoiced in November
      ['2026-11-03', '2026-11-02', 'C'],
      ['2026-10-31', '2026-11-02', 'D'],
      ['2026-11-04', null, 'E'],
    ] as const;
    for (const [at, [on, delivered, invoice]] of lines.entries()) {
      await tx.prisma.loadScope.create({ data: scope('purchases', bought, on, invoice) });
      await tx.prisma.purchaseLine.create({
        data: {
          ...{
            venueId,
            loadId: bought,
            line: at + 2,
            scope: invoice,
            invoice,
            supplierId,
            kind: 'freight',
            amount: '1.5',
          },
          ...{ day: dateOfDay(day(on)), deliveredOn: delivered === null ? null : dateOfDay(day(delivered)) },
        },
      });
    }
    const moved = await loadOf('moves');
    const moves = [
      ['2026-08-04', 'transfer_in'],
      ['2026-08-05', 'spoiled'],
      ['2026-10-05', 'spoiled'],
      ['2026-10-06', 'transfer_out'],
      ['2026-11-05', 'transfer_in'],
    ] as const;
    for (const [at, [on, reason]] of moves.entries()) {
      await tx.prisma.loadScope.create({ data: scope('moves', moved, on, '') });
      await tx.prisma.stockMove.create({
        data: {
          ...{
            venueId,
            loadId: moved,
            line: at + 2,
            day: dateOfDay(day(on)),
            itemId,
            quantity: '0.5',
            unit: 'kg',
            reason,
          },
        },
      });
    }
  });
});

test('loadPurchases(tx, range) has what was delivered or invoiced before its end', async () => {
  const lines = await read((tx) => loadPurchases(tx, october));
  expect(lines.map(({ invoice, deliveredOn, amount }) => [invoice, deliveredOn, amount])).toEqual([
    ['A', day('2026-10-21'), 1.5],
    ['D', day('2026-11-02'), 1.5],
    ['B', day('2026-10-30'), 1.5],
  ]);
});

test('loadMoves(tx, range) has the moves inside it, and transfers from the beginning to its end', async () => {
  const moves = await read((tx) => loadMoves(tx, october));
  expect(moves.map(({ day: on, reason, quantity }) => [on, reason, quantity])).toEqual([
    [day('2026-08-04'), 'transfer_in', 0.5],
    [day('2026-10-05'), 'spoiled', 0.5],
    [day('2026-10-06'), 'transfer_out', 0.5],
  ]);
});
