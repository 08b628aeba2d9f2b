import type { Route } from 'next';
import { cache } from 'react';
import { yearAnswer } from '@/lib/answers/year';
import { currentAsker } from '@/lib/session/asker';
import { type Asked, periodsOf } from '../asked';

/** The answer of a request, asked for once however many panels need it: after the ribbon's, whose months it then need not cost again. */
export const yearOf = cache(async (venue: string | null, month: string, section: string | null) => {
  await periodsOf(venue);
  return yearAnswer(currentAsker(), { venue, month, section });
});

/** The address of the year up to a month, leaving out what is not said. */
export function yearHref({ venue, month, section }: Asked): Route {
  const query = new URLSearchParams({ month, ...(venue && { venue }), ...(section && { section }) });
  return `/menu/year?${query}` as Route;
}
