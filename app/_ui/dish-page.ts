import type { Route } from 'next';

/** The address of the page of a dish; the query says which month, and which venue. */
export function dishPage(item: string, query: string): Route {
  return `/menu/dishes/${encodeURIComponent(item)}?${query}` as Route;
}

/** The query of the page of a dish, leaving out what is not said. */
export function pageQuery(month: string, venue: string | null, follow: string | null = null): string {
  return new URLSearchParams({ month, ...(venue && { venue }), ...(follow && { follow }) }).toString();
}
