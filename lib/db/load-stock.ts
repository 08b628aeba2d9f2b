import { type Day, type DayRange, dayText } from '../core/days';
import type { ItemId, OfferId, PurchaseLine, StockCount, StockMove } from '../model/facts';
import type { VenueTx } from './in-venue';

/*
 * Deliveries, counts and moves belong to the load that brought them; those of the load that speaks for an invoice, a count or a day count.
 * Days come as whole numbers, quantities and money leave as doubles.
 */

/** The rows of a table of a load that speak, with a range and an order of their own. */
const live = (kind: string, table: string, columns: string, joins: string, span: string, order: string): string => `
  select ${columns} from ${table} r
  join load l on l.venue_id = r.venue_id and l.id = r.load_id and l.undone_at is null
  join load_scope s on s.venue_id = r.venue_id and s.kind = '${kind}' and s.source = l.source and s.load_id = r.load_id and s.live
    and ${kind === 'moves' ? 's.day = r.day' : 's.scope = r.scope'}
  ${joins}
  where r.venue_id = $1 and ${span} order by ${order}`;

const epoch = (column: string, as: string): string => `r.${column} - date '1970-01-01' as "${as}"`;

/** Deliveries up to the end of a range, also those invoiced after it, by day, supplier, invoice and line. */
export async function loadPurchases(tx: VenueTx, range: DayRange): Promise<PurchaseLine[]> {
  const columns = `${epoch('day', 'day')}, ${epoch('delivered_on', 'deliveredOn')}, p.name as supplier, r.invoice, r.kind, r.offer_id as offer,
    r.packs::float8, r.quantity::float8, r.unit, r.amount::float8`;
  const joins = 'join supplier p on p.venue_id = r.venue_id and p.id = r.supplier_id';
  const order = 'r.day, p.name_key collate "C", r.invoice collate "C" nulls last, r.line';
  const { rows } = await tx.bulk.query<PurchaseLine & { day: Day; offer: OfferId | null }>(
    live('purchases', 'purchase_line', columns, joins, 'least(r.day, r.delivered_on) < $2', order),
    [tx.venue, dayText(range.to)],
  );
  return rows;
}

/** Counts up to the end of a range, by day, item, part and place. */
export async function loadCounts(tx: VenueTx, range: DayRange): Promise<StockCount[]> {
  const columns = `${epoch('day', 'day')}, r.item_id as item, r.part, r.quantity::float8, r.unit, r.place`;
  const joins = 'join item i on i.venue_id = r.venue_id and i.id = r.item_id';
  const order =
    'r.day, i.name_key collate "C", r.part collate "C" nulls first, r.place collate "C" nulls first, r.line';
  const { rows } = await tx.bulk.query<StockCount & { item: ItemId }>(
    live('counts', 'stock_count', columns, joins, 'r.day < $2', order),
    [tx.venue, dayText(range.to)],
  );
  return rows;
}

/** Moves inside a range, and transfers from the beginning to its end, by day, item, reason and line. */
export async function loadMoves(tx: VenueTx, range: DayRange): Promise<StockMove[]> {
  const columns = `${epoch('day', 'day')}, r.item_id as item, r.quantity::float8, r.unit, r.reason, r.value::float8, r.other_venue as "otherVenue"`;
  const joins = 'join item i on i.venue_id = r.venue_id and i.id = r.item_id';
  const span = `(r.day >= $2 or r.reason in ('transfer_in', 'transfer_out')) and r.day < $3`;
  const order = 'r.day, i.name_key collate "C", r.reason, r.line';
  const { rows } = await tx.bulk.query<StockMove & { item: ItemId }>(
    live('moves', 'stock_move', columns, joins, span, order),
    [tx.venue, dayText(range.from), dayText(range.to)],
  );
  return rows;
}
