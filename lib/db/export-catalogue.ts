import { day, list, number, perCent, yesNo } from './export-cells';

/*
 * What stands in the files about the house, what it buys and what it makes: one query a file, its columns named as the file's, each cell a
 * text as the files write it, null where it is blank. $1 is the venue.
 */

const item = (alias: string, of: string) =>
  `join item ${alias} on (${alias}.venue_id, ${alias}.id) = (${of}.venue_id, ${of}.item_id)`;
const byName = (alias: string) => `${alias}.name_key collate "C"`;

export const VENUE = `select s.setting, s.value from venue v cross join lateral (values
    (1, 'name', v.name), (2, 'currency', v.currency), (3, 'locale', v.locale), (4, 'time_zone', v.time_zone),
    (5, 'business_day_ends', to_char(v.business_day_ends, 'HH24:MI')), (6, 'kitchen_measures', v.kitchen_measures::text),
    (7, 'purchase_tax_recoverable', ${yesNo('v.purchase_tax_recoverable')}), (8, 'popularity_factor', ${number('v.popularity_factor')}),
    (9, 'target_food_cost_pct', ${perCent('v.target_food_cost')}), (10, 'q_factor_pct', ${perCent('v.q_factor')}),
    (11, 'variable_cost_pct', ${perCent('v.variable_cost')}), (12, 'price_step', ${number('v.price_step')}),
    (13, 'stock_valuation', v.stock_valuation::text), (14, 'periods', v.periods::text)) s (place, setting, value)
  where v.id = $1 and s.setting = any(v.stated) order by s.place`;

export const LABOUR = `select r.grade, ${day('r.valid_from')} as valid_from, ${number('r.cost_per_hour')} as cost_per_hour
  from labour_rate r where r.venue_id = $1 order by r.grade_key collate "C", r.valid_from nulls first`;

export const EXCHANGE_RATES = `select r.currency, ${day('r.valid_from')} as valid_from, ${number('r.rate')} as rate
  from exchange_rate r where r.venue_id = $1 order by r.currency collate "C", r.valid_from`;

export const INGREDIENTS = `select i.name as ingredient, v.measure::text as measure, ${day('v.valid_from')} as valid_from, v.product_group,
    v.department::text as department, ${number('v.density_g_per_ml')} as density_g_per_ml, ${number('v.grams_each')} as grams_each,
    ${perCent('v.usable_yield')} as usable_yield_pct, case when v.contains_declared then ${list('v.contains')} end as contains,
    case when v.may_contain_declared then ${list('v.may_contain')} end as may_contain, ${yesNo('v.counted')} as counted, v.storage_place
  from ingredient_version v ${item('i', 'v')} where v.venue_id = $1 order by ${byName('i')}, v.valid_from nulls first`;

export const MEASURES = `select i.name as ingredient, m.name, ${number('m.quantity')} as quantity, m.unit
  from named_measure m ${item('i', 'm')} where m.venue_id = $1 order by ${byName('i')}, ${byName('m')}`;

export const PARTS = `select i.name as ingredient, p.name as part, ${number('p.output_quantity')} as output_quantity, p.output_unit,
    ${perCent('p.cost_share')} as cost_share_pct
  from part p ${item('i', 'p')} where p.venue_id = $1 order by ${byName('i')}, ${byName('p')}`;

export const YIELDS = `select i.name as ingredient, y.name as use, ${perCent('y.usable_yield')} as usable_yield_pct
  from yield_use y ${item('i', 'y')} where y.venue_id = $1 order by ${byName('i')}, ${byName('y')}`;

export const SUPPLIERS = `select s.name as supplier, s.contact, s.email, s.order_days, ${number('s.minimum_order')} as minimum_order,
    ${number('s.delivery_charge')} as delivery_charge
  from supplier s where s.venue_id = $1 order by ${byName('s')}`;

const supplier = (of: string) => `join supplier s on (s.venue_id, s.id) = (${of}.venue_id, ${of}.supplier_id)`;

/** An offer that was chosen more than once has a row for each. */
export const OFFERS = `select s.name as supplier, o.code, i.name as ingredient, ${number('o.pack_count')} as pack_count,
    ${number('o.pack_size')} as pack_size, o.pack_unit, o.description, o.gtin, ${yesNo('c.id is not null')} as chosen,
    ${day('c.valid_from')} as chosen_from
  from offer o ${supplier('o')} ${item('i', 'o')} left join offer_choice c on (c.venue_id, c.offer_id) = (o.venue_id, o.id)
  where o.venue_id = $1 order by ${byName('s')}, o.code_key collate "C", c.valid_from nulls first`;

export const OFFER_PRICES = `select s.name as supplier, o.code, ${day('p.valid_from')} as valid_from, ${number('p.price')} as price,
    p.kind::text as kind, ${day('p.valid_to')} as valid_to, ${number('p.minimum_packs')} as minimum_packs, p.currency
  from price_point p join offer o on (o.venue_id, o.id) = (p.venue_id, p.offer_id) ${supplier('o')}
  where p.venue_id = $1 order by ${byName('s')}, o.code_key collate "C", p.valid_from, p.kind, p.minimum_packs nulls first`;

export const RECIPES = `select i.name as recipe, i.kind::text as kind, ${day('v.valid_from')} as valid_from, v.section,
    v.department::text as department, ${number('v.yield_quantity')} as yield_quantity, v.yield_unit,
    ${number('v.also_quantity')} as also_quantity, v.also_unit, ${perCent('v.overrun')} as overrun_pct, ${number('v.batch_loss_g')} as batch_loss_g,
    ${perCent('v.breakage')} as breakage_pct, ${number('v.hands_on_minutes')} as hands_on_minutes, v.grade,
    ${number('v.plating_minutes')} as plating_minutes, v.plating_grade, v.shelf_life_days::text as shelf_life_days,
    ${number('v.smallest_batch')} as smallest_batch, ${yesNo('v.thrown_at_close')} as thrown_at_close,
    nullif(array_to_string(v.cautions, ';'), '') as cautions, ${number('v.estimated_cost')} as estimated_cost
  from recipe_version v ${item('i', 'v')} where v.venue_id = $1 order by ${byName('i')}, v.valid_from nulls first`;

export const RECIPE_LINES = `select r.name as recipe, ${day('v.valid_from')} as valid_from, i.name as item, ${number('l.quantity')} as quantity,
    l.unit, l.used_as::text as "as", l.use, l.part, l.choice, ${perCent('l.choice_share')} as choice_share_pct, l.channel,
    ${number('l.by_product_credit')} as by_product_credit, l.note
  from recipe_line l join recipe_version v on (v.venue_id, v.id) = (l.venue_id, l.version_id) ${item('r', 'v')} ${item('i', 'l')}
  where l.venue_id = $1 order by ${byName('r')}, v.valid_from nulls first, l.position`;

export const MENU = `select i.name as item, m.channel, ${day('m.valid_from')} as valid_from, ${number('m.price')} as price,
    ${perCent('m.tax')} as tax_pct, ${yesNo('m.tax_included')} as tax_included, ${perCent('m.commission')} as commission_pct,
    case when m.price is null then 'yes' end as off_menu
  from menu_price m ${item('i', 'm')} where m.venue_id = $1 order by ${byName('i')}, m.channel collate "C", m.valid_from nulls first`;
