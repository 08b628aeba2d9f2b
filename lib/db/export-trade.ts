import { day, number } from './export-cells';

/*
 * What stands in the files about what was sold, delivered, counted, moved and tried: one query a file, as in the catalogue. Of what loads bring
 * only what speaks now is written, over all sources.
 */

const byItem = 'i.name_key collate "C"';
const item = (of: string) => `join item i on (i.venue_id, i.id) = (${of}.venue_id, ${of}.item_id)`;

const live = (kind: string, table: string, of: string): string => `from ${table} r
  join load l on l.venue_id = r.venue_id and l.id = r.load_id and l.undone_at is null
  join load_scope s on s.venue_id = r.venue_id and s.kind = '${kind}' and s.load_id = r.load_id and s.live and s.${of} = r.${of}`;

/** Day sums; portions that came without a revenue have a row of their own, whose revenue is blank. */
export const SALES = `with sums as (
    select r.day, i.name, i.name_key, r.channel, sum(r.sold) as sold, sum(r.comps) as comps, sum(r.net) as net,
           sum(r.sold_without_revenue) as bare, sum(r.discount) as discount
    ${live('sales', 'sales_day', 'day')} ${item('r')} where r.venue_id = $1 group by r.day, i.name, i.name_key, r.channel)
  select ${day('i.day')} as date, i.name as item, i.channel, ${number('p.sold')} as sold, ${number('p.comps')} as comps,
         ${number('p.net')} as net_revenue, null as gross_revenue, null as tax_pct, ${number('p.discount')} as discount
  from sums i cross join lateral (
    select 1 as place, i.sold - i.bare as sold, i.comps, i.net, i.discount where i.bare = 0 or i.sold <> i.bare or i.net <> 0
    union all
    select 2, i.bare, case when i.sold = i.bare and i.net = 0 then i.comps else 0 end, null,
           case when i.sold = i.bare and i.net = 0 then i.discount end where i.bare <> 0) p
  order by i.day, ${byItem}, i.channel collate "C", p.place`;

export const COVERS = `select ${day('r.day')} as date, ${number('sum(r.covers)')} as covers, ${number('sum(r.till_total)')} as till_total
  ${live('covers', 'covers_day', 'day')} where r.venue_id = $1 group by r.day order by r.day`;

// A line that was carried over from the load before has the negative of the line at which it stood there.
export const PURCHASES = `select ${day('r.day')} as date, p.name as supplier, r.invoice, r.kind::text as kind, o.code,
    ${number('r.packs')} as packs, ${number('r.quantity')} as quantity, r.unit, ${number('r.amount')} as amount,
    ${day('r.delivered_on')} as delivered_on
  ${live('purchases', 'purchase_line', 'scope')} join supplier p on (p.venue_id, p.id) = (r.venue_id, r.supplier_id)
  left join offer o on (o.venue_id, o.id) = (r.venue_id, r.offer_id)
  where r.venue_id = $1 order by r.day, p.name_key collate "C", r.scope collate "C", abs(r.line), r.line`;

export const COUNTS = `select ${day('r.day')} as date, i.name as item, r.part, ${number('r.quantity')} as quantity, r.unit, r.place
  ${live('counts', 'stock_count', 'scope')} ${item('r')} where r.venue_id = $1 order by r.day, r.scope collate "C"`;

export const MOVES = `select ${day('r.day')} as date, i.name as item, ${number('r.quantity')} as quantity, r.unit, r.reason::text as reason,
    ${number('r.value')} as value, r.other_venue
  ${live('moves', 'stock_move', 'day')} ${item('r')} where r.venue_id = $1
  order by r.day, ${byItem}, r.reason, abs(r.line), r.line, s.source collate "C"`;

export const TRIALS = `select i.name as recipe, ${day('t.day')} as date, ${number('t.hours')} as hours, t.grade, t.outcome
  from trial t ${item('t')} where t.venue_id = $1 order by ${byItem}, t.day`;

export const TRIAL_LINES = `select d.name as recipe, ${day('t.day')} as date, i.name as item, ${number('l.quantity')} as quantity, l.unit
  from trial_line l join trial t on (t.venue_id, t.id) = (l.venue_id, l.trial_id) join item d on (d.venue_id, d.id) = (t.venue_id, t.item_id)
  ${item('l')} where l.venue_id = $1 order by d.name_key collate "C", t.day, l.position`;
