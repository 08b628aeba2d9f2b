import { dayText } from '../core/days';
import { type Period, periodNamed } from '../core/periods';
import { openDatabase } from '../db/database';
import { inVenue } from '../db/in-venue';
import { salesSpan } from '../db/load-sales';
import { loadClosedThrough, loadVenue } from '../db/load-venue';
import { type MenuMix, menuMix } from '../reports/menu-mix';
import type { Asker } from '../session/asker';
import { askedVenue } from './asked-venue';
import { costedPeriods } from './costed-periods';
import type { PeriodsAnswer } from './periods-shape';
import { type Answered, answered } from './problem';
import { type Standing, standingOf } from './standing';

/** The calendar months in which a venue sold something, each with its food cost by recipe: what the period ribbon stands on. */
export async function periodsAnswer(
  asker: Asker,
  asked: { readonly venue: string | null },
): Promise<Answered<PeriodsAnswer>> {
  const db = await openDatabase();
  const venue = await askedVenue(db, asker, asked.venue);
  if (!venue.ok) return venue;
  const who = { venue: venue.answer.id, person: asker.person };
  const { settings, closedThrough, months } = await inVenue(db, who, 'read', async (tx) => ({
    settings: await loadVenue(tx),
    closedThrough: await loadClosedThrough(tx),
    months: [...(await salesSpan(tx)).keys()].flatMap((name) => periodNamed(name).period ?? []),
  }));
  const { periods } = await costedPeriods(
    db,
    asker,
    venue.answer.id,
    months.map(({ range }) => range),
  );
  const standing = standingOf(settings, closedThrough);
  return answered({
    venue: settings.name,
    currency: settings.currency,
    locale: settings.locale,
    targetFoodCostPct: settings.targetFoodCost,
    months: months.flatMap((month, at) => {
      const costed = periods[at];
      return costed ? [written(month, menuMix(costed, { section: null, resamples: 0 }), standing(month.range))] : [];
    }),
  });
}

function written(
  { name, range }: Period,
  { totals, coverage, waiting }: MenuMix,
  standing: Standing,
): PeriodsAnswer['months'][number] {
  return {
    month: name,
    from: dayText(range.from),
    to: dayText(range.to),
    sold: totals.sold,
    foodCostPct: totals.foodCost,
    coverage,
    waiting: waiting.rows,
    ...standing,
  };
}
