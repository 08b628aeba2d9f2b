import type { Calendar } from '../core/calendar';
import { type Period, periodNamed } from '../core/periods';

/** The period of the same number in the year before: October of the last year, week 41, P10; null where there is none, as of a 53rd week. */
export function yearBefore({ name }: Period, calendar: Calendar): Period | null {
  const parts = /^(\d{4})-(.+)$/.exec(name);
  if (!parts || name.includes('..')) return null;
  const year = String(Number(parts[1]) - 1).padStart(4, '0');
  return periodNamed(`${year}-${parts[2]}`, calendar).period;
}
