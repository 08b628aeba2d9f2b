import type { Route } from 'next';
import { cache } from 'react';
import { yearAnswer } from '@/lib/answers/year';
import { currentAsker } from '@/lib/session/asker';
import type { Asked } from '../asked';

/** The answer of a request, asked for once however many panels need it. */
export const yearOf = cache((venue: string | null, month: string, section: string | null) =>
  yearAnswer(currentAsker(), { venue, month, section }),
);

/** The address of the year up to a month, leaving out what is not said. */
export function yearHref({ venue, month, section }: Asked): Route {
  const query = new URLSearchParams({ month, ...(venue && { venue }), ...(section && { section }) });
  return `/menu/year?${query}` as Route;
}
