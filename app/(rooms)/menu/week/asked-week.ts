import type { Route } from 'next';
import { cache } from 'react';
import { weekAnswer } from '@/lib/answers/week';
import { addDays, dayText, parseDay } from '@/lib/core/days';
import { currentAsker } from '@/lib/session/asker';

/** The answer of a request, asked for once however many panels need it. `month` names a week, or a month for its last one. */
export const weekOf = cache((venue: string | null, month: string | null) =>
  weekAnswer(currentAsker(), { venue, month }),
);

/** The address of a week, or of the last one of a month. */
export function weekHref(venue: string | null, month: string): Route {
  const name = /-W\d{2}$/.test(month) ? 'week' : 'month';
  return `/menu/week?${new URLSearchParams({ [name]: month, ...(venue && { venue }) })}` as Route;
}

/** The month that a week is counted to, by its Thursday, as its year is. */
export function monthOfWeek(monday: string): string {
  const day = parseDay(monday);
  return day === null ? monday.slice(0, 7) : dayText(addDays(day, 3)).slice(0, 7);
}
