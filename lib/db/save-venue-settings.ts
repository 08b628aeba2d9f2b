import { type Day, parseDay } from '../core/days';
import { nameKey } from '../core/name-key';
import type { VenueTx } from './in-venue';
import { closedFault, fault, type Outcome, type Saved, type Stated } from './plan-keyed';

/** A setting by its name in venue.csv; per cent as a fraction, numbers as exact decimal text. */
export interface StatedSetting {
  readonly setting: string;
  readonly value: string | boolean;
}

/** Where each setting is kept, and how its column is read as the text (or yes and no) that a file states. */
const COLUMNS: Readonly<Record<string, readonly [column: string, type: string, read: string]>> = {
  name: ['name', 'text', 'name'],
  currency: ['currency', 'text', 'currency'],
  locale: ['locale', 'text', 'locale'],
  time_zone: ['time_zone', 'text', 'time_zone'],
  business_day_ends: ['business_day_ends', 'time', `to_char(business_day_ends, 'HH24:MI')`],
  kitchen_measures: ['kitchen_measures', 'kitchen_measures', 'kitchen_measures::text'],
  purchase_tax_recoverable: ['purchase_tax_recoverable', 'boolean', 'purchase_tax_recoverable'],
  popularity_factor: ['popularity_factor', 'numeric', 'trim_scale(popularity_factor)::text'],
  target_food_cost_pct: ['target_food_cost', 'numeric', 'trim_scale(target_food_cost)::text'],
  q_factor_pct: ['q_factor', 'numeric', 'trim_scale(q_factor)::text'],
  variable_cost_pct: ['variable_cost', 'numeric', 'trim_scale(variable_cost)::text'],
  price_step: ['price_step', 'numeric', 'trim_scale(price_step)::text'],
  stock_valuation: ['stock_valuation', 'stock_valuation', 'stock_valuation::text'],
  periods: ['periods', 'period_scheme', 'periods::text'],
};

/** Settings that decide which business day a time stamp belongs to. */
const CLOCK = ['time_zone', 'business_day_ends'];

/** Saves rows of venue.csv. `clockChanged`: what came with time stamps may belong to other days now. */
export async function saveVenueSettings(
  tx: VenueTx,
  rows: readonly Stated<StatedSetting>[],
  closedThrough: Day | null,
): Promise<Saved & { readonly clockChanged: boolean }> {
  const { stated, values } = await currentSettings(tx);
  const said = new Map<string, Stated<StatedSetting>>();
  const change = new Map<string, string | boolean>();
  const outcomes = rows.map(({ line, row }): Outcome => {
    const { setting, value } = row;
    const first = said.get(setting);
    if (first)
      return first.row.value === value ? 'unchanged' : fault('said-twice', 'setting', setting, { line: first.line });
    said.set(setting, { line, row });
    const current = values.get(setting);
    if (setting === 'name' && nameKey(String(value)) !== nameKey(String(current))) {
      return fault('other-venue', 'value', String(value), { venue: String(current) });
    }
    if (stated.includes(setting) && current === value) return 'unchanged';
    const closed = CLOCK.includes(setting) && current !== value ? closedFault(null, closedThrough, 'value') : null;
    if (closed) return closed;
    change.set(setting, value);
    return stated.includes(setting) ? 'changed' : 'taken';
  });
  if (change.size > 0) await writeSettings(tx, change, stated);
  return {
    outcomes,
    withdrawn: 0,
    clockChanged: CLOCK.some((name) => change.has(name) && change.get(name) !== values.get(name)),
  };
}

async function currentSettings(
  tx: VenueTx,
): Promise<{ stated: readonly string[]; values: ReadonlyMap<string, string | boolean> }> {
  const list = Object.entries(COLUMNS).map(([setting, [, , read]]) => `${read} as "${setting}"`);
  const { rows } = await tx.bulk.query<{ stated: string[] } & Record<string, string | boolean | null>>(
    `select stated, ${list.join(', ')} from venue where id = $1`,
    [tx.venue],
  );
  const { stated = [], ...values } = rows[0] ?? {};
  return { stated, values: new Map(Object.entries(values as Record<string, string | boolean>)) };
}

async function writeSettings(
  tx: VenueTx,
  change: ReadonlyMap<string, string | boolean>,
  stated: readonly string[],
): Promise<void> {
  const set = ['stated = $2'];
  const given: unknown[] = [tx.venue, [...new Set([...stated, ...change.keys()])].sort()];
  for (const [setting, value] of change) {
    const [column, type] = COLUMNS[setting] ?? [setting, 'text'];
    given.push(value);
    set.push(`${column} = $${given.length}::${type}`);
  }
  await tx.bulk.query(`update venue set ${set.join(', ')} where id = $1`, given);
}

/** What a load has to know of its venue before it reads and saves. */
export interface VenueBooks {
  /** IANA name. */
  readonly timeZone: string;
  /** Minutes after midnight at which the business day ends. */
  readonly dayEnds: number;
  /** The last closed business day. */
  readonly closedThrough: Day | null;
}

export async function venueBooks(tx: VenueTx): Promise<VenueBooks> {
  const { rows } = await tx.bulk.query<{ timeZone: string; dayEnds: number; closed: string | null }>(
    `select time_zone as "timeZone", (extract(epoch from business_day_ends) / 60)::int as "dayEnds",
            to_char(closed_through, 'YYYY-MM-DD') as closed
     from venue where id = $1`,
    [tx.venue],
  );
  const { timeZone = 'UTC', dayEnds = 0, closed = null } = rows[0] ?? {};
  return { timeZone, dayEnds, closedThrough: closed === null ? null : parseDay(closed) };
}
