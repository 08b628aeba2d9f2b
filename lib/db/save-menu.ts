import type { Day } from '../core/days';
import type { DecimalText } from '../core/decimal-text';
import { nameKey } from '../core/name-key';
import type { VenueTx } from './in-venue';
import { isFault, isoDay, kept, planKeyed, type Saved, type Stated } from './plan-keyed';
import { itemId, knownItems, makeItems } from './save-items';
import { type FactRow, factTable, insertRows, storedRows, updateRows } from './save-rows';

/** The price of an item in a channel from a day on; price null: off the menu from then. */
export interface StatedMenuPrice {
  readonly item: string;
  readonly channel: string;
  readonly validFrom: Day | null;
  readonly price: DecimalText | null;
  readonly tax: DecimalText;
  readonly taxIncluded: boolean;
  /** Null: not known; undefined: not said. */
  readonly commission: DecimalText | null | undefined;
}

const TABLE = factTable('menu_price', {
  item_id: 'int',
  channel: 'text',
  valid_from: 'date',
  price: 'numeric',
  tax: 'numeric',
  tax_included: 'boolean',
  commission: 'numeric',
});

type Values = Pick<FactRow<typeof TABLE.columns>, 'price' | 'tax' | 'tax_included' | 'commission'>;

/** Saves rows of menu.csv, by item, channel and valid_from. A name that nothing else knows becomes a dish. */
export async function saveMenu(
  tx: VenueTx,
  rows: readonly Stated<StatedMenuPrice>[],
  closedThrough: Day | null,
): Promise<Saved> {
  const known = await knownItems(tx);
  const names = new Map([...known].map(([key, { id }]) => [id, key]));
  const stored = new Map(
    (await storedRows(tx, TABLE)).map(({ id, item_id, channel, valid_from, ...values }) => [
      `${names.get(item_id ?? 0)}|${channel}|${valid_from ?? ''}`,
      { id, values },
    ]),
  );
  const wanted = rows.map(({ line, row }) => ({
    line,
    row,
    key: `${nameKey(row.item)}|${row.channel}|${isoDay(row.validFrom) ?? ''}`,
    from: row.validFrom,
    values: (before: Values | null) => ({
      price: row.price,
      tax: row.tax,
      tax_included: row.taxIncluded,
      commission: kept(row.commission, before?.commission, null),
    }),
  }));
  const plan = planKeyed<StatedMenuPrice, Values>(wanted, stored, closedThrough);
  const sound = rows.filter((_, place) => !isFault(plan.outcomes[place] ?? 'unchanged'));
  const items = await makeItems(
    tx,
    known,
    sound.map(({ row }) => ({ name: row.item, kind: 'dish' as const })),
  );
  const fresh = plan.create.map(({ row, values }) => ({
    item_id: itemId(items, row.item),
    channel: row.channel,
    valid_from: isoDay(row.validFrom),
    ...values,
  }));
  await insertRows(tx, TABLE, fresh);
  await updateRows(
    tx,
    TABLE,
    plan.change.map(({ id, values }) => ({ id, ...values })),
  );
  return { outcomes: plan.outcomes, withdrawn: 0 };
}
