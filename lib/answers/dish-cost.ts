import { addDays, type Day, dayText } from '../core/days';
import { byText } from '../core/grouped';
import { type Period, periodNamed } from '../core/periods';
import { type Database, openDatabase } from '../db/database';
import { inVenue } from '../db/in-venue';
import { salesSpan } from '../db/load-sales';
import type { VenueName } from '../db/venues';
import { eitherDateOrMonth, noSalesForDay, noSuchChannel, notOnSale } from '../format/words/problems';
import type { CostedPeriod } from '../model/costed-period';
import type { Thing } from '../model/things';
import { usualChannel } from '../model/usual-channel';
import { type CostOverPeriod, costOverPeriod } from '../reports/cost-over-period';
import { costWorking } from '../reports/cost-working';
import type { Asker } from '../session/asker';
import { askedPeriod } from './asked-period';
import { askedVenue } from './asked-venue';
import { costedPeriods } from './costed-periods';
import { dayNamed } from './day-named';
import type { DishCostAnswer } from './dish-cost-shape';
import { writtenCost, writtenSpans } from './dish-cost-written';
import { askedThing, thingNamed } from './named-thing';
import { type Answered, answered, refused } from './problem';

/** A question about one cost: on a date, or on the last day of a period on which the item was on sale. Null: the latest month. */
export interface DishCostAsked {
  readonly venue: string | null;
  /** Name or id. */
  readonly item: string;
  readonly date: string | null;
  readonly month: string | null;
  /** In which channel; null: dine_in, where it is sold there. */
  readonly channel: string | null;
  /** The section whose mix of the month shows the figure; null is the whole menu. */
  readonly section: string | null;
}

/** The working of one cost, the same for page, command and HTTP: always that of one day, whatever period led to it. */
export async function dishCostAnswer(asker: Asker, asked: DishCostAsked): Promise<Answered<DishCostAnswer>> {
  if (asked.date !== null && asked.month !== null) return refused(400, eitherDateOrMonth);
  const db = await openDatabase();
  const venue = await askedVenue(db, asker, asked.venue);
  if (!venue.ok) return venue;
  if (asked.month !== null) return inMonth(db, asker, venue.answer, { ...asked, month: asked.month });
  const date = await askedDay(db, asker, venue.answer, asked.date);
  if (!date.ok) return date;
  return onDate(db, asker, venue.answer, asked, date.answer, null);
}

/** The day named, or where none is the last one of the latest month with sales. */
async function askedDay(db: Database, asker: Asker, venue: VenueName, date: string | null): Promise<Answered<Day>> {
  if (date !== null) return dayNamed(date);
  const months = await inVenue(db, { venue: venue.id, person: asker.person }, 'read', (tx) => salesSpan(tx));
  const latest = [...months.keys()].at(-1);
  const { period } = latest === undefined ? { period: null } : periodNamed(latest);
  return period ? answered(addDays(period.range.to, -1)) : refused(404, noSalesForDay);
}

async function inMonth(
  db: Database,
  asker: Asker,
  venue: VenueName,
  asked: DishCostAsked & { readonly month: string },
): Promise<Answered<DishCostAnswer>> {
  const found = await askedPeriod(db, asker, venue, asked.month);
  if (!found.ok) return found;
  const { period, before } = found.answer;
  // the same two periods as the menu mix asks for, so that both stand on one costing
  const ranges = [period.range, before.range];
  const [costed] = (await costedPeriods(db, asker, venue.id, ranges)).periods;
  if (!costed) throw new Error('two periods were asked for');
  const thing = thingNamed(costed, asked.item);
  const over = thing && costOverPeriod(costed, thing.id, asked.section);
  if (over) return onDate(db, asker, venue, asked, over.lastDay, { period, over });
  const anyDay = await onDate(db, asker, venue, asked, addDays(period.range.to, -1), null);
  return anyDay.ok ? refused(404, notOnSale(anyDay.answer.item, asked.month)) : anyDay;
}

async function onDate(
  db: Database,
  asker: Asker,
  venue: VenueName,
  { item, channel }: DishCostAsked,
  day: Day,
  within: { readonly period: Period; readonly over: CostOverPeriod } | null,
): Promise<Answered<DishCostAnswer>> {
  const range = { from: day, to: addDays(day, 1) };
  const [costed] = (await costedPeriods(db, asker, venue.id, [range], 'everything')).periods;
  if (!costed) throw new Error('a period was asked for');
  const found = askedThing(costed, item);
  if (!found.ok) return found;
  const thing = found.answer;
  const channels = channelsOf(costed, thing);
  if (channel !== null && !channels.includes(channel))
    return refused(404, noSuchChannel(channel, thing.name, channels));
  const working = costWorking(costed, thing.id, day, channel ?? usualChannel(thing, day));
  if (!working) throw new Error('everything that has a name has a working');
  return answered({ ...writtenCost(working), period: within && writtenPeriod(within, costed.venue.currency) });
}

function writtenPeriod(
  { period, over }: { readonly period: Period; readonly over: CostOverPeriod },
  currency: string,
): DishCostAnswer['period'] {
  const { from, to } = period.range;
  return { month: period.name, from: dayText(from), to: dayText(to), ...writtenSpans(over, currency) };
}

/** Channels on whose menu an item ever was up to then, or for which it is packed. */
function channelsOf({ nodeOf, packings }: CostedPeriod, { id, menu, sales }: Thing): readonly string[] {
  const packed = packings.get(nodeOf.get(id) ?? -1)?.keys() ?? [];
  return [...new Set([...[...menu, ...sales].map(({ channel }) => channel), ...packed])].sort(byText);
}
