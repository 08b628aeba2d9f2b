import { addDays, type Day, parseDay } from '../core/days';
import { periodNamed } from '../core/periods';
import type { VenueTx } from './in-venue';
import { salesSpan } from './load-sales';

/**
 * The day on which the kitchen's costs are looked at where nobody names one: the last of the latest month with sales; of a venue that
 * has sold nothing yet, the business day that it is there now.
 */
export async function kitchenDay(tx: VenueTx): Promise<Day> {
  const latest = [...(await salesSpan(tx)).keys()].at(-1);
  const { period } = latest === undefined ? { period: null } : periodNamed(latest);
  if (period) return addDays(period.range.to, -1);
  const { rows } = await tx.bulk.query<{ day: string }>(
    `select to_char((now() at time zone time_zone) - business_day_ends::interval, 'YYYY-MM-DD') as day from venue where id = $1`,
    [tx.venue],
  );
  const day = parseDay(rows[0]?.day ?? '');
  if (day === null) throw new Error('the database says no day');
  return day;
}
