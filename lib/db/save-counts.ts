import { type Day, dayText } from '../core/days';
import type { DecimalText } from '../core/decimal-text';
import { nameKey } from '../core/name-key';
import type { VenueTx } from './in-venue';
import { dayOfFault, fault, planKeyed, type Saved, type Stated } from './plan-keyed';
import { itemId, type KnownItems, knownItems } from './save-items';
import { columnsRead, type FactRow, factTable, insertRows } from './save-rows';

/** What stood in one place at the end of a business day. */
export interface StatedCount {
  readonly day: Day;
  readonly item: string;
  readonly part: string | null;
  readonly quantity: DecimalText;
  readonly unit: string;
  readonly place: string | null;
}

const TABLE = factTable('stock_count', {
  load_id: 'int',
  line: 'int',
  scope: 'text',
  day: 'date',
  item_id: 'int',
  part: 'text',
  quantity: 'numeric',
  unit: 'text',
  place: 'text',
});

type Values = Pick<FactRow<typeof TABLE.columns>, 'part' | 'quantity' | 'unit' | 'place'>;

/** Saves rows of counts.csv, by day, item, part and place: the load that states a count anew speaks for it from now on. */
export async function saveCounts(
  tx: VenueTx,
  rows: readonly Stated<StatedCount>[],
  closedThrough: Day | null,
  by: { readonly load: number; readonly source: string },
): Promise<Saved> {
  const items = await knownItems(tx);
  const stored = await liveCounts(tx);
  const wanted = rows.map((stated) => {
    const { line, row } = stated;
    const { part, quantity, unit, place } = row;
    return (
      uncountable(row, items) ?? {
        line,
        row: stated,
        key: scopeOf(row),
        from: row.day,
        values: () => ({ part, quantity, unit, place }),
      }
    );
  });
  const plan = planKeyed<Stated<StatedCount>, Values>(wanted, stored, closedThrough);
  const fresh = [...plan.create, ...plan.change].map(({ row: { line, row }, values }) => ({
    load_id: by.load,
    line,
    scope: scopeOf(row),
    day: dayText(row.day),
    item_id: itemId(items, row.item),
    ...values,
  }));
  if (fresh.length > 0) await writeCounts(tx, by, fresh);
  return { outcomes: plan.outcomes.map(dayOfFault), withdrawn: 0 };
}

function uncountable(row: StatedCount, items: KnownItems) {
  const there = items.get(nameKey(row.item));
  if (!there) return fault('unknown-item', 'item', row.item);
  const counted = there.kind === 'ingredient' || there.kind === 'component';
  return counted ? null : fault('not-countable', 'item', row.item, { kind: there.kind });
}

/** The day belongs to it: one load brings the counts of many days. */
function scopeOf({ day, item, part, place }: StatedCount): string {
  return [dayText(day), nameKey(item), nameKey(part ?? ''), nameKey(place ?? '')].join('|');
}

async function liveCounts(tx: VenueTx): Promise<ReadonlyMap<string, { id: number; values: Values }>> {
  const { rows } = await tx.bulk.query<FactRow<typeof TABLE.columns>>(
    `select ${columnsRead(TABLE, 'r')} from load_scope s
     join stock_count r on r.venue_id = s.venue_id and r.load_id = s.load_id and r.scope = s.scope
     where s.venue_id = $1 and s.kind = 'counts' and s.live`,
    [tx.venue],
  );
  return new Map(
    rows.map(({ scope, part, quantity, unit, place }) => [
      scope ?? '',
      { id: 0, values: { part, quantity, unit, place } },
    ]),
  );
}

async function writeCounts(
  tx: VenueTx,
  { load, source }: { readonly load: number; readonly source: string },
  counts: readonly FactRow<typeof TABLE.columns>[],
): Promise<void> {
  const given = JSON.stringify(counts.map(({ scope, day }) => ({ scope, day })));
  const stated = 'jsonb_to_recordset($2::jsonb) as r (scope text, day date)';
  await tx.bulk.query(
    `update load_scope s set live = false from ${stated} where s.venue_id = $1 and s.kind = 'counts' and s.live and s.scope = r.scope`,
    [tx.venue, given],
  );
  await tx.bulk.query(
    `insert into load_scope (venue_id, kind, source, day, scope, load_id, live)
     select $1, 'counts', $3, r.day, r.scope, $4, true from ${stated}`,
    [tx.venue, given, source, load],
  );
  await insertRows(tx, TABLE, counts);
}
