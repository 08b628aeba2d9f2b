import type { Database } from '@/lib/db/database';
import { inVenue } from '@/lib/db/in-venue';
import { type Stored, stored, venueId } from './stored';

/** What the other tests of loads do not look at, by names instead of numbers and in an order of its own. */
const FACTS: Readonly<Record<string, string>> = {
  lineDetails: `select r.name_key as recipe, v.valid_from, l.position, l.use, l.part, l.choice, l.choice_share, l.channel, l.by_product_credit
    from recipe_line l join recipe_version v on (v.venue_id, v.id) = (l.venue_id, l.version_id)
    join item r on (r.venue_id, r.id) = (v.venue_id, v.item_id) where l.venue_id = $1 order by 1, 2 nulls first, 3`,
  commission: `select i.name_key as item, m.channel, m.valid_from, m.commission from menu_price m
    join item i on (i.venue_id, i.id) = (m.venue_id, m.item_id) where m.venue_id = $1 order by 1, 2, 3 nulls first`,
  labour:
    'select grade, valid_from, cost_per_hour from labour_rate where venue_id = $1 order by grade_key, 2 nulls first',
  exchange: 'select currency, valid_from, rate from exchange_rate where venue_id = $1 order by 1, 2',
  parts: `select i.name_key as item, p.name, p.output_quantity, p.output_unit, p.cost_share
    from part p join item i on (i.venue_id, i.id) = (p.venue_id, p.item_id) where p.venue_id = $1 order by 1, 2`,
  yields: `select i.name_key as item, y.name, y.usable_yield
    from yield_use y join item i on (i.venue_id, i.id) = (y.venue_id, y.item_id) where y.venue_id = $1 order by 1, 2`,
  purchases: `select s.scope, s.day as told, p.line, p.day, p.delivered_on, u.name as supplier, p.invoice, p.kind, o.code, p.packs, p.quantity, p.unit, p.amount
    from load_scope s join purchase_line p on (p.venue_id, p.load_id, p.scope) = (s.venue_id, s.load_id, s.scope)
    join supplier u on (u.venue_id, u.id) = (p.venue_id, p.supplier_id) left join offer o on (o.venue_id, o.id) = (p.venue_id, p.offer_id)
    where s.venue_id = $1 and s.kind = 'purchases' and s.live order by s.scope collate "C", p.line`,
  counts: `select s.scope, s.day as told, c.line, c.day, i.name_key as item, c.part, c.quantity, c.unit, c.place
    from load_scope s join stock_count c on (c.venue_id, c.load_id, c.scope) = (s.venue_id, s.load_id, s.scope)
    join item i on (i.venue_id, i.id) = (c.venue_id, c.item_id) where s.venue_id = $1 and s.kind = 'counts' and s.live order by s.scope collate "C"`,
  moves: `select s.source, m.line, m.day, i.name_key as item, m.quantity, m.unit, m.reason, m.value, m.other_venue
    from load_scope s join stock_move m on (m.venue_id, m.load_id, m.day) = (s.venue_id, s.load_id, s.day)
    join item i on (i.venue_id, i.id) = (m.venue_id, m.item_id) where s.venue_id = $1 and s.kind = 'moves' and s.live order by 1, 3, 2`,
  trials: `select i.name_key as item, t.day, t.hours, t.grade, t.outcome from trial t
    join item i on (i.venue_id, i.id) = (t.venue_id, t.item_id) where t.venue_id = $1 order by 1, 2`,
  trialLines: `select r.name_key as recipe, t.day, l.position, i.name_key as item, l.quantity, l.unit from trial_line l
    join trial t on (t.venue_id, t.id) = (l.venue_id, l.trial_id) join item r on (r.venue_id, r.id) = (t.venue_id, t.item_id)
    join item i on (i.venue_id, i.id) = (l.venue_id, l.item_id) where l.venue_id = $1 order by 1, 2, 3`,
};

/** All facts of a venue, those of deliveries, counts, moves, rates and trials with them. */
export async function everythingStored(db: Database, name: string): Promise<Stored> {
  const venue = await venueId(db, name);
  const more = await inVenue(db, { venue, person: 'owner' }, 'read', async (tx) => {
    const facts: Record<string, Record<string, unknown>[]> = {};
    for (const [thing, query] of Object.entries(FACTS)) {
      const { rows } = await tx.bulk.query<{ row: Record<string, unknown> }>(
        `select to_jsonb(q) as row from (${query}) q`,
        [venue],
      );
      facts[thing] = rows.map(({ row }) => row);
    }
    return facts;
  });
  return { ...(await stored(db, name)), ...more };
}
