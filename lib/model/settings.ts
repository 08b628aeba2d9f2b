import type { VenueSettings } from './facts';
import type { Issue } from './issue';

/** Settings that nobody stated, by the names that venue.csv gives them, and what stands in. */
const STANDS_IN: Readonly<Record<string, (venue: VenueSettings) => string | number | null>> = {
  name: (venue) => venue.name,
  currency: (venue) => venue.currency,
  locale: (venue) => venue.locale,
  time_zone: (venue) => venue.timeZone,
  kitchen_measures: (venue) => venue.kitchenMeasures,
  popularity_factor: (venue) => venue.popularityFactor,
  q_factor_pct: (venue) => venue.qFactor * 100,
  target_food_cost_pct: (venue) => (venue.targetFoodCost === null ? null : venue.targetFoodCost * 100),
};

/** An issue for each setting on whose default the figures stand. */
export function settingIssues(venue: VenueSettings): readonly Issue[] {
  return venue.defaulted.map((setting) => ({
    code: 'setting-defaulted',
    about: setting,
    facts: { setting, value: STANDS_IN[setting]?.(venue) ?? null },
  }));
}
