import type { Route } from 'next';
import { cache } from 'react';
import { pricedPeriod } from '@/lib/answers/priced-period';
import { currentAsker } from '@/lib/session/asker';
import { type Asked, type Query, viewHref } from '../asked';

/** Every value that the query gives a name, in its order. */
export function allAsked(query: Query, name: string): readonly string[] {
  const value = query[name];
  return value === undefined ? [] : typeof value === 'string' ? [value] : value;
}

export const pricesHref = (asked: Asked): Route => viewHref('/menu/prices', asked);

export const pricedOf = cache((venue: string | null, month: string) =>
  pricedPeriod(currentAsker(), { venue, month, section: null }),
);
