import type { Database } from '@/lib/db/database';
import { inVenue } from '@/lib/db/in-venue';
import { venuesSeenBy } from '@/lib/db/venues';
import type { VenueId } from '@/lib/model/facts';

/** Every fact of a venue by names instead of numbers, in an order of its own: two venues with the same facts give the same. */
const FACTS: Readonly<Record<string, string>> = {
  venue: `select currency, locale, time_zone, business_day_ends, kitchen_measures, purchase_tax_recoverable, popularity_factor, q_factor,
    target_food_cost, variable_cost, price_step, stock_valuation, periods, stated from venue where id = $1`,
  items: 'select kind, name, name_key from item where venue_id = $1 order by name_key',
  suppliers: `select name, name_key, contact, email, order_days, minimum_order, delivery_charge from supplier where venue_id = $1 order by name_key`,
  ingredients: `select i.name_key as item, to_jsonb(v) - 'id' - 'venue_id' - 'item_id' as version
    from ingredient_version v join item i on (i.venue_id, i.id) = (v.venue_id, v.item_id) where v.venue_id = $1 order by 1, v.valid_from nulls first`,
  measures: `select i.name_key as item, m.name, m.name_key, m.quantity, m.unit
    from named_measure m join item i on (i.venue_id, i.id) = (m.venue_id, m.item_id) where m.venue_id = $1 order by 1, 3`,
  offers: `select s.name_key as supplier, o.code, i.name_key as item, o.pack_count, o.pack_size, o.pack_unit, o.description, o.gtin
    from offer o join supplier s on (s.venue_id, s.id) = (o.venue_id, o.supplier_id) join item i on (i.venue_id, i.id) = (o.venue_id, o.item_id)
    where o.venue_id = $1 order by 1, o.code_key`,
  choices: `select i.name_key as item, o.code, c.valid_from from offer_choice c join item i on (i.venue_id, i.id) = (c.venue_id, c.item_id)
    join offer o on (o.venue_id, o.id) = (c.venue_id, c.offer_id) where c.venue_id = $1 order by 1, 3 nulls first`,
  prices: `select o.code, p.kind, p.valid_from, p.valid_to, p.minimum_packs, p.price, p.currency
    from price_point p join offer o on (o.venue_id, o.id) = (p.venue_id, p.offer_id) where p.venue_id = $1 order by 1, 3, 2, 5 nulls first`,
  recipes: `select i.name_key as item, to_jsonb(v) - 'id' - 'venue_id' - 'item_id' as version
    from recipe_version v join item i on (i.venue_id, i.id) = (v.venue_id, v.item_id) where v.venue_id = $1 order by 1, v.valid_from nulls first`,
  lines: `select r.name_key as recipe, v.valid_from, l.position, i.name_key as item, l.quantity, l.unit, l.used_as, l.note
    from recipe_line l join recipe_version v on (v.venue_id, v.id) = (l.venue_id, l.version_id)
    join item r on (r.venue_id, r.id) = (v.venue_id, v.item_id) join item i on (i.venue_id, i.id) = (l.venue_id, l.item_id)
    where l.venue_id = $1 order by 1, 2 nulls first, 3`,
  menu: `select i.name_key as item, m.channel, m.valid_from, m.price, m.tax, m.tax_included
    from menu_price m join item i on (i.venue_id, i.id) = (m.venue_id, m.item_id) where m.venue_id = $1 order by 1, 2, 3 nulls first`,
  sales: `select s.source, s.day, i.name_key as item, d.channel, d.rows, d.sold, d.comps, d.net, d.sold_without_revenue as without, d.discount,
      d.carried_from is not null as carried
    from load_scope s left join sales_day d on (d.venue_id, d.load_id, d.day) = (s.venue_id, s.load_id, s.day)
    left join item i on (i.venue_id, i.id) = (d.venue_id, d.item_id)
    where s.venue_id = $1 and s.kind = 'sales' and s.live order by 1, 2, 3, 4`,
  covers: `select s.source, s.day, d.covers, d.till_total from load_scope s join covers_day d on (d.venue_id, d.load_id, d.day) = (s.venue_id, s.load_id, s.day)
    where s.venue_id = $1 and s.kind = 'covers' and s.live order by 1, 2`,
  waiting: `select kind, source, line, raw, row_key, day, rule, about_column, about_value, facts, status from waiting_row
    where venue_id = $1 and status <> 'superseded' order by kind, source, line, raw::text`,
};

/** Dates as ISO text; exact decimals without spare zeros. */
function plain(_: string, value: unknown): unknown {
  return typeof value === 'string' && /^-?\d+\.\d*0+$/.test(value) ? value.replace(/\.?0+$/, '') : value;
}

export async function venueId(db: Database, name: string): Promise<VenueId> {
  const found = (await venuesSeenBy(db, 'owner')).find((venue) => venue.name === name);
  if (!found) throw new Error(`there is no venue ${name}`);
  return found.id;
}

export type Stored = Readonly<Record<string, readonly Record<string, unknown>[]>>;

/** All facts of a venue. */
export async function stored(db: Database, name: string): Promise<Stored> {
  const venue = await venueId(db, name);
  return inVenue(db, { venue, person: 'owner' }, 'read', async (tx) => {
    const facts: Record<string, Record<string, unknown>[]> = {};
    for (const [thing, query] of Object.entries(FACTS)) {
      const { rows } = await tx.bulk.query<{ row: Record<string, unknown> }>(
        `select to_jsonb(q) as row from (${query}) q`,
        [venue],
      );
      facts[thing] = JSON.parse(
        JSON.stringify(
          rows.map(({ row }) => row),
          plain,
        ),
      );
    }
    return facts;
  });
}

export async function revision(db: Database, name: string): Promise<number> {
  const venue = await venueId(db, name);
  return inVenue(db, { venue, person: 'owner' }, 'read', async (tx) => tx.revision() ?? -1);
}

/** Closes the books of a venue through a day. */
export async function close(db: Database, name: string, through: string | null): Promise<void> {
  const venue = await venueId(db, name);
  await inVenue(db, { venue, person: 'owner' }, 'write', (tx) =>
    tx.bulk.query('update venue set closed_through = $2 where id = $1', [venue, through]),
  );
}

/** How often each table of loads has rows: the record of what was brought. */
export async function loads(db: Database, name: string): Promise<readonly Record<string, unknown>[]> {
  const venue = await venueId(db, name);
  return inVenue(db, { venue, person: 'owner' }, 'read', async (tx) => {
    const { rows } = await tx.bulk.query(
      `select kind, file, digest, rows_read, taken, changed, unchanged, refused, withdrawn,
         (select count(*) from load_file f where (f.venue_id, f.load_id) = (l.venue_id, l.id))::int as chunks
       from load l where venue_id = $1 order by id`,
      [venue],
    );
    return rows;
  });
}
