import type { VenueTx } from './in-venue';

/** What an item is used by. `in`: the other thing's name, or the day, that says where. */
export interface ItemUse {
  readonly kind: 'recipe' | 'offer' | 'menu' | 'sales' | 'count' | 'move' | 'trial' | 'trial-line';
  readonly in: string;
  /** Rows of that kind there. */
  readonly times: number;
}

/** Each way in which an item can be used, with where: what cannot be there without it. Its own versions and lines are no use of it. */
const USES: Readonly<Record<ItemUse['kind'], string>> = {
  recipe: `select r.name as "in" from recipe_line x join recipe_version v on (v.venue_id, v.id) = (x.venue_id, x.version_id)
    join item r on (r.venue_id, r.id) = (v.venue_id, v.item_id) where x.venue_id = $1 and x.item_id = $2 and v.item_id <> $2`,
  offer: `select s.name || ', ' || x.code as "in" from offer x join supplier s on (s.venue_id, s.id) = (x.venue_id, x.supplier_id)
    where x.venue_id = $1 and x.item_id = $2`,
  menu: 'select x.channel as "in" from menu_price x where x.venue_id = $1 and x.item_id = $2',
  sales: `select to_char(x.day, 'YYYY-MM') as "in" from sales_day x where x.venue_id = $1 and x.item_id = $2`,
  count: `select to_char(x.day, 'YYYY-MM-DD') as "in" from stock_count x where x.venue_id = $1 and x.item_id = $2`,
  move: `select to_char(x.day, 'YYYY-MM-DD') as "in" from stock_move x where x.venue_id = $1 and x.item_id = $2`,
  trial: `select to_char(x.day, 'YYYY-MM-DD') as "in" from trial x where x.venue_id = $1 and x.item_id = $2`,
  'trial-line': `select r.name as "in" from trial_line x join trial t on (t.venue_id, t.id) = (x.venue_id, x.trial_id)
    join item r on (r.venue_id, r.id) = (t.venue_id, t.item_id) where x.venue_id = $1 and x.item_id = $2`,
};

/** Everything that uses an item, in the order of the kinds, then of what it is used in. */
export async function itemUses(tx: VenueTx, item: number): Promise<readonly ItemUse[]> {
  const all = Object.entries(USES).map(
    ([kind, query], place) =>
      `select ${place} as place, '${kind}' as kind, "in", count(*)::int as times from (${query}) u group by "in"`,
  );
  const { rows } = await tx.bulk.query<ItemUse>(
    `select kind, "in", times from (${all.join(' union all ')}) a order by place, "in" collate "C"`,
    [tx.venue, item],
  );
  return rows;
}
