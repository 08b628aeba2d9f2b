/** What the owner set when the house was opened on these books. */
export const VENUE: readonly (readonly [setting: string, value: string])[] = [
  ['name', 'Marram House'],
  ['currency', 'EUR'],
  ['locale', 'en-IE'],
  ['time_zone', 'Europe/Dublin'],
  ['business_day_ends', '04:00'],
  ['kitchen_measures', 'metric'],
  ['purchase_tax_recoverable', 'yes'],
  ['popularity_factor', '0.70'],
  ['target_food_cost_pct', '25'],
  ['q_factor_pct', '2'],
  ['variable_cost_pct', '30'],
  ['price_step', '0.50'],
  ['stock_valuation', 'weighted_average'],
  ['periods', 'months'],
];

/** An hour of work with on-costs and paid leave; one rise at New Year. */
export const LABOUR: readonly (readonly [grade: string, from: string, costPerHour: number])[] = [
  ['pastry chef', '2025-01-01', 21.4],
  ['commis', '2025-01-01', 16.9],
  ['finisher', '2025-01-01', 16.2],
  ['pastry chef', '2026-01-01', 22.3],
  ['commis', '2026-01-01', 17.7],
  ['finisher', '2026-01-01', 17],
];

/** Every number that follows is drawn from this one. */
export const SEED = 3_819_011;
