import type { Calendar } from '../core/calendar';
import type { Day } from '../core/days';
import type { VenueSettings } from '../model/facts';
import type { PeriodScheme } from './client/enums';
import { dayIn, numberIn } from './columns';
import { NoSuchVenue, type VenueTx } from './in-venue';

/** Settings, by their names in venue.csv, whose default is worth a word where nobody stated them. */
const WITH_DEFAULT = ['name', 'currency', 'time_zone', 'kitchen_measures', 'q_factor_pct'] as const;

/** The calendars by the names that the database client gives them. */
const CALENDARS: Readonly<Record<PeriodScheme, Calendar>> = {
  months: 'months',
  fourFourFive: '4-4-5',
  thirteenFour: '13x4',
};

/** The venue's settings; `defaulted` names those that nobody stated. */
export async function loadVenue(tx: VenueTx): Promise<VenueSettings> {
  const venue = await tx.prisma.venue.findUnique({
    where: { id: tx.venue },
    select: {
      name: true,
      currency: true,
      locale: true,
      timeZone: true,
      kitchenMeasures: true,
      popularityFactor: true,
      qFactor: true,
      targetFoodCost: true,
      variableCost: true,
      priceStep: true,
      periods: true,
      stated: true,
    },
  });
  if (!venue) throw new NoSuchVenue(`no venue has the number ${tx.venue}`);
  const { stated, ...settings } = venue;
  return {
    ...settings,
    id: tx.venue,
    popularityFactor: numberIn(venue.popularityFactor),
    qFactor: numberIn(venue.qFactor),
    targetFoodCost: numberIn(venue.targetFoodCost),
    variableCost: numberIn(venue.variableCost),
    priceStep: numberIn(venue.priceStep),
    periods: CALENDARS[venue.periods],
    defaulted: WITH_DEFAULT.filter((setting) => !stated.includes(setting)),
  };
}

/** The last business day that is closed; null while none is. Periods close in order, so everything before it is closed too. */
export async function loadClosedThrough(tx: VenueTx): Promise<Day | null> {
  const venue = await tx.prisma.venue.findUnique({ where: { id: tx.venue }, select: { closedThrough: true } });
  return dayIn(venue?.closedThrough ?? null);
}
