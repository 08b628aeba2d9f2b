import { type Day, dayText } from '../core/days';
import type { DecimalText } from '../core/decimal-text';
import { nameKey } from '../core/name-key';
import type { MoveReason } from '../model/facts';
import type { VenueTx } from './in-venue';
import { fault, type Saved, type Stated } from './plan-keyed';
import { knownItems } from './save-items';
import { factTable } from './save-rows';
import { type SpokenBy, saveSpoken } from './save-spoken';
import type { SpokenKind } from './save-spoken-scopes';

/** What left a place, or came, other than by sale and delivery. */
export interface StatedMove {
  readonly day: Day;
  readonly item: string;
  readonly quantity: DecimalText;
  readonly unit: string;
  readonly reason: MoveReason;
  readonly value: DecimalText | null;
  readonly otherVenue: string | null;
}

const MOVES: SpokenKind = {
  kind: 'moves',
  table: factTable('stock_move', {
    day: 'date',
    item_id: 'int',
    quantity: 'numeric',
    unit: 'text',
    reason: 'move_reason',
    value: 'numeric',
    other_venue: 'text',
  }),
  names: ({ item_id, reason }) => `${item_id}|${reason}`,
};

/** Saves rows of moves.csv: the file is the whole truth for its source on each day in it. A name that nothing knows waits. */
export async function saveMoves(tx: VenueTx, rows: readonly Stated<StatedMove>[], by: SpokenBy): Promise<Saved> {
  const items = await knownItems(tx);
  const wanted = rows.map(({ line, row }) => {
    const scope = dayText(row.day);
    const item = items.get(nameKey(row.item));
    if (!item) return { line, scope, says: fault('unknown-item', 'item', row.item) };
    const { quantity, unit, reason, value, otherVenue } = row;
    return {
      line,
      scope,
      says: { day: scope, item_id: item.id, quantity, unit, reason, value, other_venue: otherVenue },
    };
  });
  return saveSpoken(tx, MOVES, wanted, by);
}
